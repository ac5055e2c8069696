package org.evenhand.model;

/**
 * Where in a file each character of a value is written, for values that are not written character by character: folded over
 * lines, indented, with escapes or doubled quotes.
 *
 * @param lines from 1, one for each character
 * @param columns from 1, one for each character
 * @param lengths how many characters of the file stand for each; 0 for a blank that is a line break in the file
 */
public record Spelling(int[] lines, int[] columns, int[] lengths) {

    /** Whether some characters, one at least, stand on one line of the file, with no break among them. */
    public boolean isOnOneLine(int from, int to) {
        return from < to && lines[from] == lines[to - 1] && lengths[from] > 0 && lengths[to - 1] > 0;
    }

    /**
     * The place of some characters, or of those on the first line if they stand on several.
     *
     * @param from index of the first, from 0
     * @param to index behind the last
     */
    public Place place(String file, int from, int to) {
        int last = Math.max(from, to - 1);
        while (last > from && (lines[last] != lines[from] || lengths[last] == 0)) {
            last--;
        }
        return new Place(file, lines[from], columns[from], Math.max(1, columns[last] + lengths[last] - columns[from]));
    }
}
