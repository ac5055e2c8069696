package org.evenhand.quantity;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.quantity.MisreadException.Fault;

/** Reads units: atoms of {@link UnitTable} joined by "·", "." and "/", with whole exponents. */
final class UnitParser {

    /** Longer than any unit that somebody would write, and than its symbol and code; keeps hostile input short. */
    private static final int LONGEST = 40;

    /** Powers of powers grow beyond all bounds in forty characters: (((d⁹)⁹)⁹)⁹ is a number of 100,000 bits. */
    private static final int LARGEST_EXPONENT = 99;

    /** Of the numerator or the denominator of a factor; a double goes no further either. */
    private static final int MOST_BITS = 1000;

    private static final Pattern ATOM = Pattern.compile("(.*?[^-\\d⁻²³⁰¹⁴⁵⁶⁷⁸⁹])(-?\\d|⁻?[²³⁰¹⁴⁵⁶⁷⁸⁹])?");
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final String EXPONENTS = SUPERSCRIPTS + "0123456789";
    private static final Pattern COUNTED = Pattern.compile("[A-Za-z][A-Za-z0-9 _-]*");

    /** What people write for what the table has; suggestions only, since a guess may be wrong. */
    private static final Map<String, String> OFTEN_WRITTEN = Map.ofEntries(
            Map.entry("degc", "°C"),
            Map.entry("deg c", "°C"),
            Map.entry("celsius", "°C"),
            Map.entry("ºc", "°C"),
            Map.entry("degf", "°F"),
            Map.entry("fahrenheit", "°F"),
            Map.entry("kelvin", "K"),
            Map.entry("°k", "K"),
            Map.entry("sec", "s"),
            Map.entry("secs", "s"),
            Map.entry("second", "s"),
            Map.entry("seconds", "s"),
            Map.entry("mins", "min"),
            Map.entry("minute", "min"),
            Map.entry("minutes", "min"),
            Map.entry("hr", "h"),
            Map.entry("hrs", "h"),
            Map.entry("hour", "h"),
            Map.entry("hours", "h"),
            Map.entry("day", "d"),
            Map.entry("days", "d"),
            Map.entry("watt", "W"),
            Map.entry("watts", "W"),
            Map.entry("volt", "V"),
            Map.entry("volts", "V"),
            Map.entry("amp", "A"),
            Map.entry("amps", "A"),
            Map.entry("joule", "J"),
            Map.entry("joules", "J"),
            Map.entry("percent", "%"),
            Map.entry("pct", "%"),
            Map.entry("dba", "dB(A)"),
            Map.entry("db(a)", "dB(A)"),
            Map.entry("fps", "frames/s"),
            Map.entry("bps", "bit/s"),
            Map.entry("kbps", "kbit/s"),
            Map.entry("mbps", "Mbit/s"),
            Map.entry("gbps", "Gbit/s"),
            Map.entry("byte", "B"),
            Map.entry("bytes", "B"),
            Map.entry("bits", "bit"),
            Map.entry("ohm", "Ω"),
            Map.entry("ohms", "Ω"));

    private UnitParser() {}

    static Unit parse(String text) throws MisreadException {
        if (text.isEmpty()) {
            throw new MisreadException(
                    Fault.UNIT_MISSING, 0, 1, "no unit is given", "write the unit; a plain count has the unit 1");
        }
        Unit whole = UnitTable.find(text);
        if (whole != null) {
            return whole;
        }
        if (text.length() > LONGEST) {
            throw unknown(text);
        }
        Unit unit = made(text);
        if (unit.symbol().length() > LONGEST || unit.code().length() > LONGEST) {
            throw unknown(text); // it could not be read again from what pages write
        }
        return unit;
    }

    private static Unit made(String text) throws MisreadException {
        Unit result = null;
        int start = 0;
        boolean divide = false;
        while (start <= text.length()) {
            int end = endOfAtom(text, start);
            if (end == start) {
                if (start != 0 || end >= text.length() || text.charAt(end) != '/') {
                    throw unknown(text);
                }
                result = Unit.ONE; // "/h" is one per hour
            } else {
                Unit atom = atom(text, start, end);
                if (result == null) {
                    result = atom;
                } else if (result.kind() != UnitKind.DIFFERENCE || atom.kind() != UnitKind.DIFFERENCE) {
                    throw new MisreadException(
                            Fault.UNIT_UNKNOWN,
                            0,
                            text.length(),
                            "“" + text + "” multiplies or divides a point on a scale or a level",
                            "write a difference of temperatures in K, as in K/min");
                } else {
                    result = bounded(divide ? result.per(atom) : result.times(atom), text);
                }
            }
            if (end >= text.length()) {
                break;
            }
            divide = text.charAt(end) == '/';
            start = end + 1;
        }
        return result;
    }

    /** Index of the separator that ends the atom, or the length of the text. */
    private static int endOfAtom(String text, int start) {
        int depth = 0;
        for (int i = start; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '[' || c == '{' || c == '(') {
                depth++;
            } else if (c == ']' || c == '}' || c == ')') {
                depth--;
            } else if (depth == 0 && (c == '/' || c == '·' || c == '.' || c == '⋅')) {
                return i;
            }
        }
        return text.length();
    }

    private static Unit atom(String whole, int start, int end) throws MisreadException {
        String text = whole.substring(start, end);
        Unit unit = simple(text);
        if (unit != null) {
            return unit;
        }
        Matcher parts = ATOM.matcher(text);
        if (parts.matches() && parts.group(2) != null) {
            Unit base = simple(parts.group(1));
            if (base != null && base.kind() == UnitKind.DIFFERENCE) {
                return bounded(raised(base, exponent(parts.group(2))), whole);
            }
        }
        throw unknown(whole);
    }

    /** A unit of the table, one in parentheses, or something counted, in braces; null if it is none of these. */
    private static Unit simple(String text) throws MisreadException {
        Unit unit = UnitTable.find(text);
        if (unit != null) {
            return unit;
        }
        if (text.startsWith("(") && endOfGroup(text) == text.length() - 1) {
            return parse(text.substring(1, text.length() - 1));
        }
        if (text.startsWith("{") && text.indexOf('}') == text.length() - 1) {
            return counted(text);
        }
        return null;
    }

    /** What is counted, by its name; null if the name is none, or would be taken for a unit: {W} is no watt. */
    private static Unit counted(String braced) {
        String name = braced.substring(1, braced.length() - 1);
        if (!COUNTED.matcher(name).matches()) {
            return null;
        }
        try {
            parse(name);
            return null;
        } catch (MisreadException noUnit) {
            return new Unit(name, braced, Dimension.ONE, UnitKind.DIFFERENCE, Fraction.ONE, Fraction.ZERO);
        }
    }

    private static Unit bounded(Unit unit, String whole) throws MisreadException {
        boolean small = unit.dimension().exponents().stream().allMatch(e -> Math.abs(e) <= LARGEST_EXPONENT);
        if (small && unit.factor().bits() <= MOST_BITS) {
            return unit;
        }
        throw unknown(whole);
    }

    /** Index of the parenthesis that closes the first one; -1 if none does. */
    private static int endOfGroup(String text) {
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            depth += text.charAt(i) == '(' ? 1 : text.charAt(i) == ')' ? -1 : 0;
            if (depth == 0) {
                return i;
            }
        }
        return -1;
    }

    private static int exponent(String text) {
        boolean negative = text.startsWith("-") || text.startsWith("⁻");
        char digit = text.charAt(text.length() - 1);
        int value = SUPERSCRIPTS.indexOf(digit) >= 0 ? SUPERSCRIPTS.indexOf(digit) : digit - '0';
        return negative ? -value : value;
    }

    private static Unit raised(Unit base, int exponent) {
        if (exponent == 1 || base.isOne()) {
            return base;
        }
        String written = (exponent < 0 ? "⁻" : "") + SUPERSCRIPTS.charAt(Math.abs(exponent));
        return new Unit(
                groupedToRaise(base.symbol()) + written,
                groupedToRaise(base.code()) + exponent,
                base.dimension().power(exponent),
                UnitKind.DIFFERENCE,
                base.factor().power(exponent),
                Fraction.ZERO);
    }

    /** Two symbols put together, without a superfluous "1". */
    static String join(String left, String right, String sign) {
        if (right.equals("1")) {
            return left;
        }
        if (left.equals("1") && !sign.equals("/")) {
            return right;
        }
        if (right.startsWith("1/") && !sign.equals("/")) {
            return left + right.substring(1);
        }
        // What follows a stroke is only divided by as a whole if it stands in parentheses (SI Brochure, 5.4.2).
        return left + sign + (sign.equals("/") ? grouped(right) : right);
    }

    /** In parentheses if it is made of several. */
    private static String grouped(String unit) {
        return endOfAtom(unit, 0) < unit.length() ? "(" + unit + ")" : unit;
    }

    /** In parentheses if it is made of several, or has an exponent already: s⁻¹⁻¹ says nothing. */
    private static String groupedToRaise(String unit) {
        boolean raised = EXPONENTS.indexOf(unit.charAt(unit.length() - 1)) >= 0;
        return raised ? "(" + unit + ")" : grouped(unit);
    }

    private static MisreadException unknown(String text) {
        String near = nearest(text);
        String remedy = near == null
                ? "use a symbol of the SI Brochure or a UCUM code; docs/units.md lists those that are known"
                : "did you mean “" + near + "”? Capitals count";
        return new MisreadException(
                Fault.UNIT_UNKNOWN, 0, Math.max(1, text.length()), "the unit “" + text + "” is not known", remedy);
    }

    /** The unit most likely meant, or null. Fewest changed letters first, then fewest changed capitals. */
    static String nearest(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        String usual = OFTEN_WRITTEN.get(lower);
        if (usual != null) {
            return usual;
        }
        String best = null;
        int least = Integer.MAX_VALUE;
        for (String candidate : UnitTable.likeButForCapitals(text)) {
            int changed = 0;
            for (int i = 0; i < text.length(); i++) {
                changed += candidate.charAt(i) == text.charAt(i) ? 0 : 1;
            }
            if (changed < least) {
                least = changed;
                best = UnitTable.find(candidate).symbol();
            }
        }
        return best;
    }
}
