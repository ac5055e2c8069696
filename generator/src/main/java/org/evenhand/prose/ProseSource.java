package org.evenhand.prose;

import java.util.Objects;
import org.evenhand.model.Place;

/**
 * A text that an author wrote, and where it stands.
 *
 * @param text Markdown, with LF between lines
 * @param start the place of its first character; its length is of no account
 * @param form what is allowed in it
 * @param exact whether the characters of the text stand in the file one by one, line by line; if not, faults are placed
 *     at the start
 */
public record ProseSource(String text, Place start, Form form, boolean exact) {

    /** What a text may hold. */
    public enum Form {
        /** Headings, lists, tables, paragraphs. */
        BLOCK,
        /** One paragraph that is to stand within another text. */
        INLINE
    }

    public ProseSource {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(form, "form");
    }

    /**
     * The body of a file behind its front matter.
     *
     * @param line on which it begins, from 1
     */
    public static ProseSource body(String file, int line, String text) {
        return new ProseSource(text, new Place(file, line, 1, 1), Form.BLOCK, true);
    }

    /**
     * The value of a field.
     *
     * @param place of the value; where it is as long as the value, each character has a place of its own
     */
    public static ProseSource field(Place place, String text, Form form) {
        return new ProseSource(text, place, form, text.indexOf('\n') < 0 && place.length() == text.length());
    }

    /**
     * The place of some characters.
     *
     * @param from index of the first, from 0
     * @param to index behind the last; what lies beyond the end of the first line is left out
     */
    Place place(int from, int to) {
        if (!exact) {
            return start;
        }
        int begin = Math.min(from, text.length());
        int lineStart = text.lastIndexOf('\n', begin - 1) + 1;
        int line = start.line()
                + (int) text.substring(0, lineStart)
                        .chars()
                        .filter(c -> c == '\n')
                        .count();
        int lineEnd = text.indexOf('\n', begin);
        int end = Math.min(to, lineEnd < 0 ? text.length() : lineEnd);
        int column = begin - lineStart + (lineStart == 0 ? start.column() : 1);
        return new Place(start.file(), line, column, Math.max(1, end - begin));
    }
}
