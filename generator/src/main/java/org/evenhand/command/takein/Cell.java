package org.evenhand.command.takein;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A field that holds a number.
 *
 * @param digits the number with a decimal point
 * @param suffix what stands behind it, such as a unit; often empty
 */
record Cell(String digits, String suffix) {

    private static final Pattern WITH_POINT = Pattern.compile(
            "([+-]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)(?:[eE][+-]?\\d{1,3})?)\\s*([^\\d\\s.,:/-][^\\d]{0,7})?");
    private static final Pattern WITH_COMMA =
            Pattern.compile("([+-]?(?:\\d+(?:,\\d+)?|,\\d+)(?:[eE][+-]?\\d{1,3})?)\\s*([^\\d\\s.,:/-][^\\d]{0,7})?");
    private static final Pattern HEXADECIMAL = Pattern.compile("0[xX][0-9a-fA-F]{1,12}");
    private static final Set<String> NO_VALUE = Set.of("", "-", "--", "n/a", "na", "nan", "null", "none", "#n/a", "?");

    /** Whether a field says that no sample was taken. */
    static boolean isEmpty(String field) {
        return NO_VALUE.contains(field.toLowerCase(java.util.Locale.ROOT));
    }

    static Optional<Cell> of(String field, char decimal) {
        if (HEXADECIMAL.matcher(field).matches()) {
            return Optional.of(new Cell(Long.toString(Long.parseLong(field.substring(2), 16)), ""));
        }
        Matcher matcher = (decimal == ',' ? WITH_COMMA : WITH_POINT).matcher(field.replace('−', '-'));
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String suffix = matcher.group(2) == null ? "" : matcher.group(2).strip();
        return Optional.of(new Cell(matcher.group(1).replace(',', '.'), suffix));
    }

    double value() {
        return Double.parseDouble(digits);
    }

    /** Whether a field is written as the log reader takes it. */
    static boolean isPlain(String field, char decimal) {
        return field.isEmpty()
                || of(field, decimal).filter(c -> c.suffix.isEmpty()).isPresent();
    }
}
