package org.evenhand.quantity;

import static org.evenhand.quantity.Dimension.Base.ANGLE;
import static org.evenhand.quantity.Dimension.Base.CURRENT;
import static org.evenhand.quantity.Dimension.Base.INFORMATION;
import static org.evenhand.quantity.Dimension.Base.LENGTH;
import static org.evenhand.quantity.Dimension.Base.LUMINOUS_INTENSITY;
import static org.evenhand.quantity.Dimension.Base.MASS;
import static org.evenhand.quantity.Dimension.Base.TEMPERATURE;
import static org.evenhand.quantity.Dimension.Base.TIME;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The closed table of units that are not made of others by "·" and "/".
 *
 * <p>Sources of the factors: SI Brochure, 9th edition, tables 2 to 8; NIST SP 811 (2008), appendix B; prefixes for
 * binary multiples after IEC 80000-13; codes after UCUM.
 */
final class UnitTable {

    private record Prefix(String symbol, String code, Fraction factor) {}

    private static final List<Prefix> DECIMAL = List.of(
            decimal("p", -12),
            decimal("n", -9),
            new Prefix("µ", "u", ten(-6)),
            decimal("m", -3),
            decimal("k", 3),
            decimal("M", 6),
            decimal("G", 9),
            decimal("T", 12));

    /** For metre, litre, pascal and gram alone, where the trade uses them. */
    private static final List<Prefix> SMALL_STEPS =
            List.of(decimal("c", -2), decimal("d", -1), decimal("h", 2), decimal("da", 1));

    private static final List<Prefix> BINARY =
            List.of(binary("Ki", 10), binary("Mi", 20), binary("Gi", 30), binary("Ti", 40));

    private static final Map<String, Unit> UNITS = new LinkedHashMap<>();
    private static final Map<String, List<String>> BY_LETTERS = new HashMap<>();
    private static final Map<Dimension, String> NAMES = new LinkedHashMap<>();

    private static final Dimension TIME_1 = Dimension.of(TIME);
    private static final Dimension LENGTH_1 = Dimension.of(LENGTH);
    private static final Dimension MASS_1 = Dimension.of(MASS);
    private static final Dimension CURRENT_1 = Dimension.of(CURRENT);
    private static final Dimension TEMPERATURE_1 = Dimension.of(TEMPERATURE);
    private static final Dimension FREQUENCY = TIME_1.power(-1);
    private static final Dimension SPEED = LENGTH_1.times(FREQUENCY);
    private static final Dimension FORCE = MASS_1.times(SPEED).times(FREQUENCY);
    private static final Dimension PRESSURE = FORCE.times(LENGTH_1.power(-2));
    private static final Dimension ENERGY = FORCE.times(LENGTH_1);
    private static final Dimension POWER = ENERGY.times(FREQUENCY);
    private static final Dimension CHARGE = CURRENT_1.times(TIME_1);
    private static final Dimension VOLTAGE = POWER.times(CURRENT_1.power(-1));
    private static final Dimension DATA = Dimension.of(INFORMATION);
    private static final Dimension ANGLE_1 = Dimension.of(ANGLE);
    private static final Dimension VOLUME = LENGTH_1.power(3);
    private static final Dimension LUMINOUS_1 = Dimension.of(LUMINOUS_INTENSITY);

    static {
        nameDimensions();
        numbers();
        timeAndRotation();
        temperature();
        electricity();
        mechanics();
        information();
        lightAndSound();
    }

    private UnitTable() {}

    /** The unit of this symbol, UCUM code or usual other spelling; null if the table has none. */
    static Unit find(String text) {
        return UNITS.get(text);
    }

    /** Every spelling that the table knows. */
    static Iterable<String> spellings() {
        return UNITS.keySet();
    }

    /** The spellings that differ from the text in capitals alone, in the order of the table. */
    static List<String> likeButForCapitals(String text) {
        return BY_LETTERS.getOrDefault(letters(text), List.of());
    }

    /** The text without the difference of capitals and small letters, letter by letter. */
    private static String letters(String text) {
        StringBuilder letters = new StringBuilder(text.length());
        text.chars().forEach(c -> letters.append((char) Character.toLowerCase(Character.toUpperCase(c))));
        return letters.toString();
    }

    static String nameOf(Dimension dimension) {
        String name = NAMES.get(dimension);
        if (name != null) {
            return name;
        }
        StringBuilder words = new StringBuilder();
        for (Dimension.Base base : Dimension.Base.values()) {
            int exponent = dimension.exponents().get(base.ordinal());
            if (exponent != 0) {
                words.append(words.isEmpty() ? "" : " × ")
                        .append(base.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '))
                        .append(exponent == 1 ? "" : "^" + exponent);
            }
        }
        return words.toString();
    }

    private static void nameDimensions() {
        NAMES.put(Dimension.ONE, "a plain number");
        NAMES.put(TIME_1, "time");
        NAMES.put(LENGTH_1, "length");
        NAMES.put(MASS_1, "mass");
        NAMES.put(CURRENT_1, "electric current");
        NAMES.put(TEMPERATURE_1, "temperature");
        NAMES.put(FREQUENCY, "frequency");
        NAMES.put(SPEED, "speed");
        NAMES.put(FORCE, "force");
        NAMES.put(PRESSURE, "pressure");
        NAMES.put(ENERGY, "energy");
        NAMES.put(POWER, "power");
        NAMES.put(CHARGE, "electric charge");
        NAMES.put(VOLTAGE, "voltage");
        NAMES.put(VOLTAGE.times(CURRENT_1.power(-1)), "electric resistance");
        NAMES.put(DATA, "an amount of data");
        NAMES.put(DATA.times(FREQUENCY), "a data rate");
        NAMES.put(ANGLE_1, "plane angle");
        NAMES.put(ANGLE_1.times(FREQUENCY), "angular velocity");
        NAMES.put(VOLUME, "volume");
        NAMES.put(VOLUME.times(FREQUENCY), "volume flow");
        NAMES.put(LENGTH_1.power(2), "area");
        NAMES.put(LUMINOUS_1, "luminous intensity");
        NAMES.put(LUMINOUS_1.times(LENGTH_1.power(-2)), "luminance");
        NAMES.put(TEMPERATURE_1.times(FREQUENCY), "rate of change of temperature");
        NAMES.put(TEMPERATURE_1.times(POWER.power(-1)), "thermal resistance");
    }

    private static void numbers() {
        put(Unit.ONE);
        put(unit("%", "%", Dimension.ONE, Fraction.of(1, 100)));
        // The difference of two percentages, so that "−5 %" of a share cannot be taken for a twentieth less of it.
        put(unit("percentage points", "%{points}", Dimension.ONE, Fraction.of(1, 100)), "percentage point");
        put(unit("‰", "[ppth]", Dimension.ONE, Fraction.of(1, 1000)));
        put(unit("ppm", "[ppm]", Dimension.ONE, ten(-6)));
        // Names for what is counted; any other may be written in braces, as UCUM has it: {sheets}.
        for (String counted : List.of(
                "frames",
                "pages",
                "events",
                "errors",
                "failures",
                "requests",
                "samples",
                "cycles",
                "tasks",
                "images",
                "files",
                "points",
                "operations",
                "packets",
                "steps",
                "games",
                "moves",
                "tokens")) {
            put(unit(counted, "{" + counted + "}", Dimension.ONE, Fraction.ONE));
        }
    }

    private static void timeAndRotation() {
        withPrefixes(unit("s", "s", TIME_1, Fraction.ONE), List.of(), DECIMAL.subList(0, 4));
        put(unit("min", "min", TIME_1, Fraction.of(60, 1)));
        put(unit("h", "h", TIME_1, Fraction.of(3600, 1)));
        put(unit("d", "d", TIME_1, Fraction.of(86400, 1)));
        withPrefixes(unit("Hz", "Hz", FREQUENCY, Fraction.ONE), List.of(), DECIMAL.subList(3, 8));
        put(unit("r/min", "{rev}/min", FREQUENCY, Fraction.of(1, 60)), "rpm");
        put(unit("r", "{rev}", Dimension.ONE, Fraction.ONE));
        put(unit("rad", "rad", ANGLE_1, Fraction.ONE));
        put(unit("°", "deg", ANGLE_1, new Fraction(BigInteger.ONE, BigInteger.valueOf(180), 1)));
        put(unit("turn", "circ", ANGLE_1, new Fraction(BigInteger.TWO, BigInteger.ONE, 1)));
    }

    private static void temperature() {
        withPrefixes(unit("K", "K", TEMPERATURE_1, Fraction.ONE), List.of(), DECIMAL.subList(3, 4));
        Unit celsius = new Unit("°C", "Cel", TEMPERATURE_1, UnitKind.POINT, Fraction.ONE, Fraction.of("273.15"));
        put(celsius, "℃");
        put(new Unit("m°C", "mCel", TEMPERATURE_1, UnitKind.POINT, ten(-3), celsius.offset()));
        // (F + 459.67) × 5/9. Source: NIST SP 811, B.8, "degree Fahrenheit".
        put(
                new Unit(
                        "°F",
                        "[degF]",
                        TEMPERATURE_1,
                        UnitKind.POINT,
                        Fraction.of(5, 9),
                        Fraction.of("459.67").times(Fraction.of(5, 9))),
                "℉");
    }

    private static void electricity() {
        withPrefixes(unit("A", "A", CURRENT_1, Fraction.ONE), List.of(), DECIMAL);
        withPrefixes(unit("V", "V", VOLTAGE, Fraction.ONE), List.of(), DECIMAL);
        withPrefixes(unit("Ω", "Ohm", VOLTAGE.times(CURRENT_1.power(-1)), Fraction.ONE), List.of("\u2126"), DECIMAL);
        withPrefixes(unit("C", "C", CHARGE, Fraction.ONE), List.of(), DECIMAL);
        withPrefixes(unit("A·h", "A.h", CHARGE, Fraction.of(3600, 1)), List.of("Ah"), DECIMAL);
        withPrefixes(unit("W", "W", POWER, Fraction.ONE), List.of(), DECIMAL);
        withPrefixes(unit("J", "J", ENERGY, Fraction.ONE), List.of(), DECIMAL);
        withPrefixes(unit("W·h", "W.h", ENERGY, Fraction.of(3600, 1)), List.of("Wh"), DECIMAL);
        withPrefixes(unit("W·s", "W.s", ENERGY, Fraction.ONE), List.of("Ws"), DECIMAL);
        withPrefixes(unit("cal", "cal_th", ENERGY, Fraction.of("4.184")), List.of(), DECIMAL.subList(4, 5));
        put(unit("Btu", "[Btu_IT]", ENERGY, Fraction.of("1055.05585262")));
    }

    private static void mechanics() {
        withPrefixes(unit("m", "m", LENGTH_1, Fraction.ONE), List.of(), DECIMAL);
        steps(unit("m", "m", LENGTH_1, Fraction.ONE), 0, 2);
        put(unit("in", "[in_i]", LENGTH_1, Fraction.of("0.0254")));
        put(unit("ft", "[ft_i]", LENGTH_1, Fraction.of("0.3048")));
        withPrefixes(unit("g", "g", MASS_1, Fraction.of(1, 1000)), List.of(), DECIMAL.subList(0, 5));
        put(unit("t", "t", MASS_1, Fraction.of(1000, 1)));
        put(unit("lb", "[lb_av]", MASS_1, Fraction.of("0.45359237")));
        withPrefixes(unit("N", "N", FORCE, Fraction.ONE), List.of(), DECIMAL);
        withPrefixes(unit("Pa", "Pa", PRESSURE, Fraction.ONE), List.of(), DECIMAL);
        steps(unit("Pa", "Pa", PRESSURE, Fraction.ONE), 2, 3);
        withPrefixes(unit("bar", "bar", PRESSURE, Fraction.of(100_000, 1)), List.of(), DECIMAL.subList(3, 5));
        put(unit("atm", "atm", PRESSURE, Fraction.of(101_325, 1)));
        // lb × standard gravity / in²
        put(unit(
                "psi",
                "[psi]",
                PRESSURE,
                Fraction.of("0.45359237")
                        .times(Fraction.of("9.80665"))
                        .dividedBy(Fraction.of("0.0254").power(2))));
        put(unit("mmH₂O", "mm[H2O]", PRESSURE, Fraction.of("9.80665")));
        // Columns of mercury after UCUM: m[Hg] = 133.3220 kPa.
        put(unit("mmHg", "mm[Hg]", PRESSURE, Fraction.of("133.3220")));
        put(unit("inHg", "[in_i'Hg]", PRESSURE, Fraction.of("133322.0").times(Fraction.of("0.0254"))));
        withPrefixes(unit("L", "L", VOLUME, Fraction.of(1, 1000)), List.of("l"), DECIMAL.subList(2, 4));
        steps(unit("L", "L", VOLUME, Fraction.of(1, 1000)), 0, 2);
        put(unit("ft³", "[cft_i]", VOLUME, Fraction.of("0.3048").power(3)));
    }

    private static void information() {
        List<Prefix> large = DECIMAL.subList(4, 8);
        Unit octet = unit("B", "By", DATA, Fraction.of(8, 1));
        Unit bit = unit("bit", "bit", DATA, Fraction.ONE);
        withPrefixes(octet, List.of(), large);
        withPrefixes(octet, List.of(), BINARY);
        withPrefixes(bit, List.of(), large);
        withPrefixes(bit, List.of(), BINARY);
    }

    private static void lightAndSound() {
        withPrefixes(unit("cd", "cd", LUMINOUS_1, Fraction.ONE), List.of(), DECIMAL.subList(3, 4));
        // Levels of one weighting and reference convert to nothing else: 35 dB(A) is not 35 dB.
        for (String[] level : new String[][] {
            {"dB", "dB"},
            {"dB(A)", "dB{A}"},
            {"dB(C)", "dB{C}"},
            {"dB(Z)", "dB{Z}"},
            {"dB SPL", "dB[SPL]"},
            {"dBm", "dB[mW]"}
        }) {
            put(new Unit(level[0], level[1], Dimension.ONE, UnitKind.LEVEL, Fraction.ONE, Fraction.ZERO));
        }
    }

    private static Unit unit(String symbol, String code, Dimension dimension, Fraction factor) {
        return new Unit(symbol, code, dimension, UnitKind.DIFFERENCE, factor, Fraction.ZERO);
    }

    private static void steps(Unit unit, int from, int to) {
        for (Prefix prefix : SMALL_STEPS.subList(from, to)) {
            put(prefixed(unit, prefix));
        }
    }

    private static void withPrefixes(Unit unit, List<String> otherSpellings, List<Prefix> prefixes) {
        put(unit, otherSpellings.toArray(String[]::new));
        for (Prefix prefix : prefixes) {
            Unit multiple = prefixed(unit, prefix);
            put(multiple);
            for (String spelling : otherSpellings) {
                spell(prefix.symbol + spelling, multiple);
                spell(prefix.code + spelling, multiple);
            }
            if (prefix.symbol.equals("µ")) {
                // The micro sign, the Greek letter that looks like it, and the u of keyboards without either.
                spell("\u03bc" + unit.symbol(), multiple);
                spell("u" + unit.symbol(), multiple);
            }
        }
    }

    private static Unit prefixed(Unit unit, Prefix prefix) {
        return unit(
                prefix.symbol + unit.symbol(),
                prefix.code + unit.code(),
                unit.dimension(),
                unit.factor().times(prefix.factor));
    }

    private static void put(Unit unit, String... otherSpellings) {
        spell(unit.symbol(), unit);
        spell(unit.code(), unit);
        for (String spelling : otherSpellings) {
            spell(spelling, unit);
        }
    }

    private static void spell(String spelling, Unit unit) {
        Unit before = UNITS.putIfAbsent(spelling, unit);
        if (before != null && !before.equals(unit)) {
            throw new IllegalStateException(spelling + " stands for two units");
        }
        if (before == null) {
            BY_LETTERS
                    .computeIfAbsent(letters(spelling), key -> new ArrayList<>())
                    .add(spelling);
        }
    }

    private static Prefix decimal(String symbol, int exponent) {
        return new Prefix(symbol, symbol, ten(exponent));
    }

    private static Prefix binary(String symbol, int exponent) {
        return new Prefix(symbol, symbol, Fraction.of(2, 1).power(exponent));
    }

    private static Fraction ten(int exponent) {
        return Fraction.of(10, 1).power(exponent);
    }
}
