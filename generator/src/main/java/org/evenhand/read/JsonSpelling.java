package org.evenhand.read;

import java.util.Arrays;
import java.util.Optional;
import org.evenhand.model.Place;
import org.evenhand.model.Spelling;

/** Where each character of a string with escapes stands. Source: RFC 8259, 7. */
final class JsonSpelling {

    private JsonSpelling() {}

    /**
     * @param source the text of the document
     * @param from the index behind the opening quotation mark
     * @param place of that mark
     * @param value what the string says
     * @return nothing if file and value do not agree
     */
    static Optional<Spelling> of(String source, int from, Place place, String value) {
        int[] lines = new int[value.length()];
        Arrays.fill(lines, place.line());
        int[] columns = new int[value.length()];
        int[] lengths = new int[value.length()];
        int at = from;
        for (int i = 0; i < value.length(); i++) {
            boolean escaped = at + 1 < source.length() && source.charAt(at) == '\\';
            lengths[i] = !escaped ? 1 : source.charAt(at + 1) == 'u' ? 6 : 2;
            columns[i] = place.column() + 1 + at - from;
            if (!escaped && (at >= source.length() || source.charAt(at) != value.charAt(i))) {
                return Optional.empty();
            }
            at += lengths[i];
        }
        return source.startsWith("\"", at) ? Optional.of(new Spelling(lines, columns, lengths)) : Optional.empty();
    }
}
