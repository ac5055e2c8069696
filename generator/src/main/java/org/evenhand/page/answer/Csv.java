package org.evenhand.page.answer;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.evenhand.page.words.Exact;
import org.evenhand.words.Words;

/**
 * Writes CSV after RFC 4180, in UTF-8 with LF. A cell of text that a spreadsheet would take for a formula is led by an
 * apostrophe; a number is only ever written from a number, so that a negative one stays bare.
 */
final class Csv {

    private static final Pattern NUMBER = Pattern.compile("\u2212?\\d+([.,]\\d+)?");

    private final StringBuilder text = new StringBuilder();
    private boolean first = true;

    static Csv withHeader(String... columns) {
        Csv csv = new Csv();
        for (String column : columns) {
            csv.text(column);
        }
        return csv.end();
    }

    Csv text(String cell) {
        boolean formula = !cell.isEmpty() && "=+-@\t\r\u2212".indexOf(cell.charAt(0)) >= 0;
        return put(quoted(formula ? "'" + cell : cell));
    }

    Csv text(Optional<String> cell) {
        return text(cell.orElse(""));
    }

    Csv number(double value) {
        return put(Exact.of(value));
    }

    Csv number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : put("");
    }

    Csv number(Optional<Double> value) {
        return value.isPresent() ? number(value.get()) : put("");
    }

    Csv number(int value) {
        return put(Integer.toString(value));
    }

    /** A figure as a page in some language writes it, as a bare number with an ASCII sign and a point; anything else as text. */
    Csv written(String cell, Words words) {
        return NUMBER.matcher(cell).matches()
                ? put(cell.replace('\u2212', '-').replace(words.say("language.decimal"), "."))
                : text(cell);
    }

    Csv end() {
        text.append('\n');
        first = true;
        return this;
    }

    String text() {
        return text.toString();
    }

    byte[] bytes() {
        return text().getBytes(StandardCharsets.UTF_8);
    }

    private Csv put(String cell) {
        text.append(first ? "" : ",").append(cell);
        first = false;
        return this;
    }

    private static String quoted(String cell) {
        boolean needed = cell.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r')
                || cell.startsWith("'")
                || cell.startsWith(" ")
                || cell.endsWith(" ");
        return needed ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }
}
