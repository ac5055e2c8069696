package org.evenhand.model;

import java.util.Map;

/**
 * Where the fields of a record stand in its file.
 *
 * <p>A field is named by its path inside the document: {@code "ambient"}, {@code "measurands/energy/unit"},
 * {@code "levels/0"}.
 *
 * @param file the place of the document as a whole
 * @param byPath the place of each field's value
 */
public record Places(Place file, Map<String, Place> byPath) {

    public Places {
        byPath = Map.copyOf(byPath);
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
