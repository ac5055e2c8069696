package org.evenhand.prose;

import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import org.evenhand.model.Place;
import org.evenhand.model.Places;
import org.evenhand.model.Spelling;

/**
 * A text that an author wrote, and where it stands.
 *
 * @param text Markdown, with LF between lines
 * @param start the place of its first character; its length is of no account
 * @param form what is allowed in it
 * @param writing how its characters stand in the file
 * @param spelling where they stand, if they are spelled
 */
public record ProseSource(String text, Place start, Form form, Writing writing, Optional<Spelling> spelling) {

    /** What would end a text within quotes, or make a text without them something else. */
    private static final Pattern UNQUOTABLE = Pattern.compile("[\"'\\\\]|: | #");

    /** How the characters of a text stand in its file. */
    enum Writing {
        /** One by one, line by line, as the body of a file. */
        BODY,
        /** One by one, as the value of a field. */
        VERBATIM,
        /** With escapes, indentation or folds, as the value of a field. */
        SPELLED,
        /** Nobody knows; faults are placed at the start. */
        UNKNOWN
    }

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
        return new ProseSource(text, new Place(file, line, 1, 1), Form.BLOCK, Writing.BODY, Optional.empty());
    }

    /**
     * The value of a field.
     *
     * @param place of the value; where it is as long as the value, each character has a place of its own
     */
    public static ProseSource field(Place place, String text, Form form) {
        return field(place, Optional.empty(), text, form);
    }

    /** The same of a record whose places are known, however its value is written there. */
    public static ProseSource field(Places places, String path, String text, Form form) {
        return field(places.of(path), places.spelling(path), text, form);
    }

    private static ProseSource field(Place place, Optional<Spelling> spelling, String text, Form form) {
        boolean verbatim = text.indexOf('\n') < 0 && place.length() == text.length();
        boolean spelled = !verbatim
                && spelling.filter(s -> s.lines().length == text.length()).isPresent();
        Writing writing = verbatim ? Writing.VERBATIM : spelled ? Writing.SPELLED : Writing.UNKNOWN;
        return new ProseSource(text, place, form, writing, spelled ? spelling : Optional.empty());
    }

    /** Whether other words may be put in the place of some characters, without anything around them being read differently. */
    boolean mayReplace(int from, int to, String by) {
        if (from >= to || text.substring(from, to).indexOf('\n') >= 0) {
            return false;
        }
        boolean fits = writing == Writing.BODY || !UNQUOTABLE.matcher(by).find();
        return switch (writing) {
            case BODY, VERBATIM -> fits;
            case SPELLED -> fits && spelling.orElseThrow().isOnOneLine(from, to);
            case UNKNOWN -> false;
        };
    }

    /**
     * The place of some characters.
     *
     * @param from index of the first, from 0
     * @param to index behind the last; what lies beyond the end of the first line is left out
     */
    Place place(int from, int to) {
        if (writing == Writing.SPELLED && from < text.length()) {
            return spelling.orElseThrow().place(start.file(), from, Math.min(to, text.length()));
        }
        if (writing == Writing.SPELLED || writing == Writing.UNKNOWN) {
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
