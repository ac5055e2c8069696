package org.evenhand.command.start;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The schemas that this program carries, by which an editor completes and marks the fields of a file. */
final class Schemas {

    static final String FOLDER = ".schema";

    private static final String PACKED = "/org/evenhand/schema/";

    private final SortedMap<String, String> texts = new TreeMap<>();

    /** Those of the six kinds of file, as far as the program carries them. */
    Schemas() {
        for (String kind : new String[] {"publication", "item", "instrument", "method", "study", "run"}) {
            for (String name : new String[] {kind + ".schema.json", kind + ".json"}) {
                packed(name).ifPresent(text -> texts.put(name, text));
            }
        }
    }

    /** Their texts by file name. */
    SortedMap<String, String> texts() {
        return texts;
    }

    /**
     * Where a file finds its schema.
     *
     * @param kind of the file
     * @param depth how many folders lie between it and the results folder
     * @return a relative path; absent if there is no schema
     */
    Optional<String> from(String kind, int depth) {
        return texts.keySet().stream()
                .filter(name -> name.startsWith(kind + "."))
                .findFirst()
                .map(name -> "../".repeat(depth) + FOLDER + "/" + name);
    }

    private static Optional<String> packed(String name) {
        try (InputStream in = Schemas.class.getResourceAsStream(PACKED + name)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
