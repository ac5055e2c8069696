package org.evenhand.read;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.Period;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.quantity.Accuracy;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/** The kinds of single values. */
final class Scalars {

    static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9-]{0,63}");
    private static final Pattern SPECIMEN = Pattern.compile("[A-Za-z0-9][A-Za-z0-9.-]{0,63}");
    private static final Pattern MEASURAND = Pattern.compile("[a-z0-9][a-z0-9-]{0,63}(/[a-z0-9][a-z0-9-]{0,63})?");
    private static final Pattern PERIOD = Pattern.compile("(\\d{1,4}) (d|days?|weeks?|months?|years?)");
    private static final String WEB = "https?://[A-Za-z0-9.:-]{1,253}/([A-Za-z0-9._~/-]{0,500}/)?";
    private static final String DAY = "\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])";
    private static final String CLOCK = "([01]\\d|2[0-3]):[0-5]\\d";
    private static final String TIME = CLOCK + "(:[0-5]\\d(\\.\\d{1,9})?)?";
    private static final String NUMBER = "[-+−]?\\d+(\\.\\d+)?([eE][-+]?\\d{1,3})?";
    private static final String UNCERTAINTY = "( ?(±|\\+/-) ?\\d+(\\.\\d+)?)?";
    private static final String UNIT_START = "[^\\s0-9.,+-]";
    private static final String QUANTITY_OR_NUMBER = "^" + NUMBER + UNCERTAINTY + "( ?" + UNIT_START + ".*)?$";
    private static final String QUANTITY = "^" + NUMBER + UNCERTAINTY + " ?" + UNIT_START + ".*$";

    static final FieldType TEXT = new ScalarType("a text", t -> null, Scalars::anyText);

    static final FieldType ID_TEXT = pattern(
            "a name of small letters, digits and hyphens",
            ID,
            "write small letters a to z, digits and hyphens; begin with a letter or digit");

    static final FieldType SPECIMEN_ID =
            pattern("the name of a specimen", SPECIMEN, "write letters, digits, hyphens and dots");

    static final FieldType MEASURAND_ID =
            pattern("the name of a measurand, or method/measurand", MEASURAND, "write the name as the method has it");

    static final FieldType QUANTITY_ANY = quantity(text -> {
        Quantity.parse(text);
        return null;
    });

    /** A quantity, or a plain number that counts. */
    static final FieldType QUANTITY_OR_COUNT = new ScalarType(
            "a quantity such as 45 min, or a plain number",
            text -> {
                Quantity.parseCount(text);
                return null;
            },
            s -> types(s, "string", "number").put("pattern", QUANTITY_OR_NUMBER));

    static final FieldType NUMBER_TEXT = new ScalarType(
            "a plain number",
            text -> {
                Quantity.parse(text, Unit.ONE);
                return null;
            },
            s -> types(s, "string", "number").put("pattern", "^" + NUMBER + "$"));

    static final FieldType COUNT = new ScalarType(
            "a whole number",
            text -> text.matches("\\d{1,9}") ? null : "write a whole number without a unit, such as 5",
            s -> {
                types(s, "string", "integer");
                s.put("pattern", "^\\d{1,9}$").put("minimum", 0).put("maximum", 999_999_999);
            });

    static final FieldType TRUTH = choice("true", "false");

    static final FieldType DATE = new ScalarType(
            "a date such as 2026-03-20",
            text -> isDate(text) ? null : "write year, month and day: 2026-03-20",
            s -> types(s, "string").put("pattern", "^" + DAY + "$").put("format", "date"));

    static final FieldType INSTANT = new ScalarType(
            "a date and time with offset such as 2026-03-02T09:14:00Z",
            text -> isInstant(text)
                    ? null
                    : "write date, T, time, and Z or the offset from UTC (RFC 3339): 2026-03-02T10:14:00+01:00",
            s -> types(s, "string").put("pattern", "^" + DAY + "[Tt]" + TIME + "([Zz]|[+-]" + CLOCK + ")$"));

    static final FieldType PERIOD_TEXT = new ScalarType(
            "a period such as 12 months",
            text -> PERIOD.matcher(text).matches() ? null : "write a number and days, weeks, months or years",
            s -> types(s, "string").put("pattern", "^" + PERIOD.pattern() + "$"));

    static final FieldType UNIT = new ScalarType(
            "a unit",
            text -> {
                Unit.parse(text);
                return null;
            },
            s -> types(s, "string", "integer")
                    .put("pattern", "\\S")
                    .put("minimum", 1)
                    .put("maximum", 1));

    static final FieldType ACCURACY = new ScalarType(
            "limits of error such as 0.5 % of reading + 10 mW",
            text -> {
                Accuracy.parse(text);
                return null;
            },
            s -> types(s, "string").put("pattern", "^\\d+(\\.\\d+)? ?" + UNIT_START));

    static final FieldType WEB_ADDRESS = new ScalarType(
            "a web address that ends in /",
            text -> text.matches(WEB)
                    ? null
                    : "write the address at which the site will stand, such as https://results.example.org/relay/",
            s -> types(s, "string").put("pattern", "^" + WEB + "$"));

    static final FieldType PATH = new ScalarType("a path relative to this file", t -> null, Scalars::anyText);

    private Scalars() {}

    /** A quantity that converts to the given unit. */
    static FieldType quantityIn(String unit) {
        Unit wanted = Unit.of(unit);
        return quantity(text -> {
            Quantity.parse(text, wanted);
            return null;
        });
    }

    /** One of some words. */
    static FieldType choice(String... words) {
        List<String> known = List.of(words);
        return new ScalarType(
                "one of: " + String.join(", ", known),
                text -> known.contains(text) ? null : NearMiss.suggestion(text, known),
                s -> {
                    ArrayNode values = s.putArray("enum");
                    for (String word : known) {
                        values.add(word);
                        if (word.equals("true") || word.equals("false")) {
                            values.add(Boolean.parseBoolean(word));
                        }
                    }
                });
    }

    static Period period(String text) {
        Matcher matcher = PERIOD.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(text);
        }
        int number = Integer.parseInt(matcher.group(1));
        return switch (matcher.group(2).charAt(0)) {
            case 'd' -> Period.ofDays(number);
            case 'w' -> Period.ofWeeks(number);
            case 'm' -> Period.ofMonths(number);
            default -> Period.ofYears(number);
        };
    }

    private static FieldType quantity(ScalarType.Reading reading) {
        return new ScalarType(
                "a quantity such as 45 min", reading, s -> types(s, "string").put("pattern", QUANTITY));
    }

    private static FieldType pattern(String what, Pattern pattern, String remedy) {
        Consumer<ObjectNode> schema = s -> {
            types(s, "string", "number", "boolean").put("pattern", "^(" + pattern.pattern() + ")$");
            s.put("minimum", 0);
            if (pattern != SPECIMEN) {
                s.put("multipleOf", 1); // a name has no decimal point
            }
        };
        return new ScalarType(what, text -> pattern.matcher(text).matches() ? null : remedy, schema);
    }

    private static ObjectNode types(ObjectNode schema, String... types) {
        if (types.length == 1) {
            return schema.put("type", types[0]);
        }
        ArrayNode array = schema.putArray("type");
        for (String type : types) {
            array.add(type);
        }
        return schema;
    }

    private static void anyText(ObjectNode schema) {
        types(schema, "string", "number", "boolean").put("pattern", "\\S");
    }

    private static boolean isDate(String text) {
        try {
            LocalDate.parse(text);
            return true;
        } catch (DateTimeException e) {
            return false;
        }
    }

    private static boolean isInstant(String text) {
        try {
            OffsetDateTime.parse(text);
            return true;
        } catch (DateTimeException e) {
            return false;
        }
    }
}
