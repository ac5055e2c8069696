package org.evenhand.command.preview;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Optional;

/** Which file of a site the path of a request means. Source: RFC 3986, 2.1 and 3.3. */
final class SitePath {

    private static final String INDEX = "index.html";

    private SitePath() {}

    /**
     * Reads a path; a folder means its index.
     *
     * @param raw as it was sent, beginning with "/", without the query
     * @return from the site's root; nothing if no file of a site could be meant: the parts hold no separator, no control
     *     character, and none of them is empty, "." or ".."
     */
    static Optional<String> of(String raw) {
        String[] parts = raw.substring(1).split("/", -1);
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < parts.length; i++) {
            boolean isLast = i == parts.length - 1;
            Optional<String> part = isLast && parts[i].isEmpty()
                    ? Optional.of(INDEX)
                    : decoded(parts[i]).filter(SitePath::isName);
            if (part.isEmpty()) {
                return Optional.empty();
            }
            path.append(part.get()).append(isLast ? "" : "/");
        }
        return Optional.of(path.toString());
    }

    private static boolean isName(String part) {
        return !part.isEmpty()
                && !part.equals(".")
                && !part.equals("..")
                && part.chars().noneMatch(c -> c == '/' || c == '\\' || Character.isISOControl(c));
    }

    private static Optional<String> decoded(String part) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int i = 0; i < part.length(); i++) {
            char c = part.charAt(i);
            if (c != '%') {
                bytes.writeBytes(String.valueOf(c).getBytes(StandardCharsets.UTF_8));
                continue;
            }
            boolean isByte = i + 2 < part.length()
                    && HexFormat.isHexDigit(part.charAt(i + 1))
                    && HexFormat.isHexDigit(part.charAt(i + 2));
            if (!isByte) {
                return Optional.empty();
            }
            bytes.write(HexFormat.fromHexDigits(part, i + 1, i + 3));
            i += 2;
        }
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes.toByteArray()))
                    .toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }
}
