package org.evenhand.read;

/**
 * How much of anything is read; honest use stays far below.
 *
 * @param fileBytes the size of a structured file or a text
 * @param depth how deeply groups and lists may stand in each other
 * @param nodes how many fields and values a file may have
 * @param textLength the characters of one value
 * @param filesPerFolder the entries of one folder
 */
public record Limits(int fileBytes, int depth, int nodes, int textLength, int filesPerFolder) {

    public static final Limits DEFAULT = new Limits(4_000_000, 50, 200_000, 1_000_000, 100_000);
}
