package org.evenhand.prose;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The address of a link that is bound to a figure.
 *
 * @param address without the choice of a form
 * @param form how an empty link is to be written
 */
record EvidenceLink(String address, Form form) {

    static final String EVIDENCE = "evidence:";
    static final String GIVEN = "given:";

    /** What the generator writes where an author leaves the text of a link empty. */
    enum Form {
        /** The number and its unit. */
        VALUE,
        /** The same, with its interval. */
        INTERVAL,
        /** A ratio as "21 % less". */
        PERCENT,
        /** A ratio turned over. */
        INVERSE,
        /** The same as a percentage: "27 % more". */
        INVERSE_PERCENT,
        /** What may be said, with its base. */
        WORDS;

        String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        boolean isInverse() {
            return this == INVERSE || this == INVERSE_PERCENT;
        }

        boolean isPercent() {
            return this == PERCENT || this == INVERSE_PERCENT;
        }
    }

    /** Says what is wrong with an address. */
    static final class MalformedException extends Exception {
        private static final long serialVersionUID = 1L;
        private final String remedy;

        MalformedException(String message, String remedy) {
            super(message, null, false, false);
            this.remedy = remedy;
        }

        String remedy() {
            return remedy;
        }
    }

    static boolean isBound(String destination) {
        return destination.startsWith(EVIDENCE) || destination.startsWith(GIVEN);
    }

    /** @throws MalformedException if a form is asked for that there is none of */
    static EvidenceLink parse(String destination) throws MalformedException {
        int mark = destination.indexOf('?');
        if (mark < 0) {
            return new EvidenceLink(destination, Form.VALUE);
        }
        String query = destination.substring(mark + 1);
        for (Form form : Form.values()) {
            if (query.equals("as=" + form.word())) {
                return new EvidenceLink(destination.substring(0, mark), form);
            }
        }
        throw new MalformedException(
                "“?" + query + "” chooses no form that there is",
                "write ?as=value, interval, percent, inverse, inverse-percent or words");
    }

    /** The parts between the slashes, with %20 and the like decoded; nothing if that is not text in UTF-8. */
    static Optional<List<String>> parts(String path) {
        List<String> parts = new ArrayList<>();
        for (String part : path.split("/", -1)) {
            Optional<String> decoded = decode(part);
            if (decoded.isEmpty()) {
                return Optional.empty();
            }
            parts.add(decoded.get());
        }
        return Optional.of(parts);
    }

    private static Optional<String> decode(String part) {
        ByteBuffer bytes = ByteBuffer.allocate(part.length() * 4);
        for (int i = 0; i < part.length(); ) {
            if (part.charAt(i) == '%') {
                String hex = part.substring(Math.min(i + 1, part.length()), Math.min(i + 3, part.length()));
                if (!hex.matches("[0-9A-Fa-f]{2}")) {
                    return Optional.empty();
                }
                bytes.put((byte) Integer.parseInt(hex, 16));
                i += 3;
            } else {
                int end = part.offsetByCodePoints(i, 1);
                bytes.put(part.substring(i, end).getBytes(StandardCharsets.UTF_8));
                i = end;
            }
        }
        bytes.flip();
        try {
            return Optional.of(StandardCharsets.UTF_8.newDecoder().decode(bytes).toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }
}
