package org.evenhand.read;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Files with their SHA-256, in the form that the usual tools check: digest, two spaces, path. */
public final class DigestList {

    private static final int LENGTH = 64;
    private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{" + LENGTH + "}");

    private DigestList() {}

    /**
     * Reads a list.
     *
     * @return digests by path, in bytewise order of the paths
     * @throws IOException if it cannot be read, or is no such list
     */
    public static SortedMap<String, String> read(Path file) throws IOException {
        return parse(
                Files.readAllLines(file, StandardCharsets.UTF_8),
                file.getFileName().toString());
    }

    private static SortedMap<String, String> parse(List<String> lines, String name) throws IOException {
        SortedMap<String, String> digests = new TreeMap<>();
        for (String line : lines) {
            boolean wellFormed = line.length() > LENGTH + 2
                    && line.startsWith("  ", LENGTH)
                    && DIGEST.matcher(line.substring(0, LENGTH)).matches();
            if (!wellFormed) {
                throw new IOException(name + " holds a line that is none of a list of digests: " + line);
            }
            digests.put(line.substring(LENGTH + 2), line.substring(0, LENGTH));
        }
        return digests;
    }

    /** Writes a list, one line a file. */
    public static String write(SortedMap<String, String> digests) {
        StringBuilder text = new StringBuilder();
        for (Map.Entry<String, String> entry : digests.entrySet()) {
            text.append(entry.getValue()).append("  ").append(entry.getKey()).append('\n');
        }
        return text.toString();
    }
}
