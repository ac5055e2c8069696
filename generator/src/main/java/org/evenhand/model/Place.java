package org.evenhand.model;

import java.util.Comparator;
import java.util.Objects;

/**
 * Where something stands in a file of the results folder.
 *
 * @param file relative to the results folder, with "/" between the parts
 * @param line from 1; 0 if the file as a whole is meant
 * @param column from 1, counted in characters; 0 if the line as a whole is meant
 * @param length how many characters are meant; at least 1
 */
public record Place(String file, int line, int column, int length) implements Comparable<Place> {

    private static final Comparator<Place> ORDER = Comparator.comparing(Place::file)
            .thenComparingInt(Place::line)
            .thenComparingInt(Place::column)
            .thenComparingInt(Place::length);

    public Place {
        Objects.requireNonNull(file, "file");
        if (line < 0 || column < 0 || length < 1) {
            throw new IllegalArgumentException(file + ":" + line + ":" + column + "+" + length);
        }
    }

    /** The file as a whole. */
    public static Place of(String file) {
        return new Place(file, 0, 0, 1);
    }

    /** A part of what is meant here, counted from its first character; the whole if the part does not fit. */
    public Place part(int start, int partLength) {
        boolean fits = start >= 0 && partLength >= 1 && start + partLength <= length;
        return fits ? new Place(file, line, column + start, partLength) : this;
    }

    /** As compilers write it: {@code file:line:column}. */
    @Override
    public String toString() {
        if (line == 0) {
            return file;
        }
        return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
    }

    @Override
    public int compareTo(Place other) {
        return ORDER.compare(this, other);
    }
}
