package org.evenhand.model;

import java.util.Map;
import java.util.Optional;

/**
 * Where the fields of a record stand in its file.
 *
 * <p>A field is named by its path inside the document: {@code "ambient"}, {@code "measurands/energy/unit"},
 * {@code "levels/0"}.
 *
 * @param file the place of the document as a whole
 * @param byPath the place of each field's value
 * @param spellings by path, where the characters of a value stand that is not written character by character
 */
public record Places(Place file, Map<String, Place> byPath, Map<String, Spelling> spellings) {

    public Places {
        byPath = Map.copyOf(byPath);
        spellings = Map.copyOf(spellings);
    }

    public Places(Place file, Map<String, Place> byPath) {
        this(file, byPath, Map.of());
    }

    /** How a field's value is written; nothing if it is written character by character, or nobody knows. */
    public Optional<Spelling> spelling(String path) {
        return Optional.ofNullable(spellings.get(path));
    }

    /** The place of a field; of what it stands in, if the field itself is absent. */
    public Place of(String path) {
        String at = path;
        while (true) {
            Place place = byPath.get(at);
            if (place != null) {
                return place;
            }
            int slash = at.lastIndexOf('/');
            if (slash < 0) {
                return file;
            }
            at = at.substring(0, slash);
        }
    }
}
