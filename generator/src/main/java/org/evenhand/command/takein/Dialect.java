package org.evenhand.command.takein;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * How the fields of a log are told apart, and its numbers written.
 *
 * @param separator between fields; a space stands for any number of them
 * @param decimal the decimal marker
 * @param fields how many most lines have
 */
record Dialect(char separator, char decimal, int fields) {

    private static final int LOOKED_AT = 400;
    private static final Pattern COMMA_NUMBER = Pattern.compile("[+-]?\\d+,\\d+([eE][+-]?\\d+)?\\D{0,4}");
    private static final Pattern POINT_NUMBER = Pattern.compile("[+-]?\\d+\\.\\d+([eE][+-]?\\d+)?\\D{0,4}");

    /** What is looked for; null takes it from the lines. */
    static Dialect of(List<String> lines, Character separator, Character decimal) {
        List<String> sample =
                lines.stream().filter(l -> !l.isBlank()).limit(LOOKED_AT).toList();
        Dialect best = new Dialect(separator == null ? ',' : separator, '.', 1);
        double bestShare = 0;
        // Tabs and semicolons stand in no number and in few names, so they come before the comma, and a space last.
        for (char candidate : separator == null ? new char[] {'\t', ';', ',', '|', ' '} : new char[] {separator}) {
            int fields = mostFrequent(sample, candidate);
            double share = sample.stream()
                            .filter(l -> split(l, candidate).size() == fields)
                            .count()
                    / Math.max(1.0, sample.size());
            if (fields > 1 && share > 0.6 && share > bestShare + 0.2) {
                best = new Dialect(candidate, '.', fields);
                bestShare = share;
            }
        }
        char marker = decimal == null ? marker(sample, best.separator) : decimal;
        return new Dialect(best.separator, marker, best.fields);
    }

    /** Whether the log reader can take the fields as they are. */
    boolean isReadable() {
        return (separator == ',' || separator == ';' || separator == '\t') && separator != decimal;
    }

    List<String> split(String line) {
        return split(line, separator);
    }

    private static int mostFrequent(List<String> lines, char separator) {
        Map<Integer, Integer> counts = new HashMap<>();
        lines.forEach(l -> counts.merge(split(l, separator).size(), 1, Integer::sum));
        int best = 1;
        for (Map.Entry<Integer, Integer> entry : counts.entrySet()) {
            int more = entry.getValue() - counts.getOrDefault(best, 0);
            best = more > 0 || (more == 0 && entry.getKey() > best) ? entry.getKey() : best;
        }
        return best;
    }

    private static char marker(List<String> lines, char separator) {
        int commas = 0;
        int points = 0;
        for (String line : lines) {
            for (String field : split(line, separator)) {
                commas += COMMA_NUMBER.matcher(field).matches() ? 1 : 0;
                points += POINT_NUMBER.matcher(field).matches() ? 1 : 0;
            }
        }
        return commas > points ? ',' : '.';
    }

    /** The fields of a line after RFC 4180, without spaces around them. */
    private static List<String> split(String line, char separator) {
        if (separator == ' ') {
            return List.of(line.strip().split("\\s+"));
        }
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                boolean doubled = quoted && i + 1 < line.length() && line.charAt(i + 1) == '"';
                if (doubled) {
                    field.append('"');
                    i++;
                } else {
                    quoted = !quoted;
                }
            } else if (c == separator && !quoted) {
                fields.add(strip(field));
                field.setLength(0);
            } else {
                field.append(c);
            }
        }
        fields.add(strip(field));
        return fields;
    }

    private static String strip(CharSequence field) {
        return field.toString().replace('\u00a0', ' ').replace('\u202f', ' ').strip();
    }
}
