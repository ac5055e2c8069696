package org.evenhand.command.takein;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Unit;

/**
 * A unit, and why it is thought to be the one.
 *
 * @param unit of the table
 * @param basis where it was found
 */
record UnitGuess(Unit unit, Basis basis) {

    /** Where a unit was found. */
    enum Basis {
        WRITTEN("as written in the log"),
        NAME("from its name"),
        MAGNITUDE("guessed from its magnitude: check it"),
        METHOD("taken from the method: check it"),
        OPTION("as you said");

        private final String words;

        Basis(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }

        boolean isDoubtful() {
            return this == MAGNITUDE || this == METHOD;
        }
    }

    private static final Pattern IN_BRACKETS = Pattern.compile(".*[\\[(]([^\\[\\]()]++)[\\])]\\s*+");
    private static final Pattern BEHIND_NAME = Pattern.compile(".+[_\\s/.-]([^_\\s/.-]++)");

    /** What loggers write, in small letters. */
    private static final Map<String, String> SPELLINGS = Map.ofEntries(
            Map.entry("c", "°C"),
            Map.entry("degc", "°C"),
            Map.entry("deg c", "°C"),
            Map.entry("celsius", "°C"),
            Map.entry("ºc", "°C"),
            Map.entry("mc", "m°C"),
            Map.entry("mdegc", "m°C"),
            Map.entry("millic", "m°C"),
            Map.entry("millideg", "m°C"),
            Map.entry("millidegc", "m°C"),
            Map.entry("f", "°F"),
            Map.entry("degf", "°F"),
            Map.entry("w", "W"),
            Map.entry("watt", "W"),
            Map.entry("watts", "W"),
            Map.entry("mw", "mW"),
            Map.entry("uw", "µW"),
            Map.entry("v", "V"),
            Map.entry("volt", "V"),
            Map.entry("volts", "V"),
            Map.entry("mv", "mV"),
            Map.entry("uv", "µV"),
            Map.entry("a", "A"),
            Map.entry("amps", "A"),
            Map.entry("ma", "mA"),
            Map.entry("ua", "µA"),
            Map.entry("j", "J"),
            Map.entry("joules", "J"),
            Map.entry("mj", "mJ"),
            Map.entry("uj", "µJ"),
            Map.entry("wh", "Wh"),
            Map.entry("mwh", "mWh"),
            Map.entry("hz", "Hz"),
            Map.entry("khz", "kHz"),
            Map.entry("mhz", "MHz"),
            Map.entry("ghz", "GHz"),
            Map.entry("s", "s"),
            Map.entry("sec", "s"),
            Map.entry("secs", "s"),
            Map.entry("seconds", "s"),
            Map.entry("ms", "ms"),
            Map.entry("msec", "ms"),
            Map.entry("us", "µs"),
            Map.entry("min", "min"),
            Map.entry("minutes", "min"),
            Map.entry("h", "h"),
            Map.entry("hours", "h"),
            Map.entry("rpm", "r/min"),
            Map.entry("pct", "%"),
            Map.entry("percent", "%"),
            Map.entry("%", "%"),
            Map.entry("db", "dB"),
            Map.entry("dba", "dB(A)"),
            Map.entry("fps", "frames/s"));

    /** Limits from which on a number without a unit is probably in the smaller unit; common practice, no source. */
    private record Step(double from, String unit) {}

    private static final Map<String, List<Step>> STEPS = Map.of(
            "°C", List.of(new Step(500, "m°C"), new Step(0, "°C")),
            "Hz", List.of(new Step(5e7, "Hz"), new Step(5e4, "kHz"), new Step(20, "MHz"), new Step(0, "GHz")),
            "W", List.of(new Step(1e5, "µW"), new Step(300, "mW"), new Step(0, "W")),
            "V", List.of(new Step(1e6, "µV"), new Step(500, "mV"), new Step(0, "V")),
            "A", List.of(new Step(1e5, "µA"), new Step(50, "mA"), new Step(0, "A")),
            "J", List.of(new Step(1e6, "µJ"), new Step(0, "J")));

    /** The unit of a text alone. */
    static Optional<Unit> named(String text) {
        return named(text, null);
    }

    /**
     * The unit of a text alone: of what it may stand for, that which converts to the one wanted. "C" is a coulomb to the
     * table of units, and a degree Celsius to most loggers.
     *
     * @param wanted null if any will do
     */
    private static Optional<Unit> named(String text, Unit wanted) {
        Optional<Unit> usual = Optional.ofNullable(SPELLINGS.get(text.toLowerCase(Locale.ROOT)))
                .map(Unit::of);
        if (wanted != null && usual.filter(u -> u.convertsTo(wanted)).isPresent()) {
            boolean exactly = exact(text).filter(u -> u.convertsTo(wanted)).isPresent();
            return exactly ? exact(text) : usual;
        }
        return exact(text).or(() -> usual);
    }

    private static Optional<Unit> exact(String text) {
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(Unit.parse(text));
        } catch (MisreadException e) {
            return Optional.empty();
        }
    }

    /**
     * The unit that a title carries: in brackets, or behind the name as in "t_soc_mC".
     *
     * @param title of the column
     * @param unitLine what the line of units says of it; may be empty
     * @param wanted the unit that it should convert to; null if any will do
     */
    static Optional<UnitGuess> inTitle(String title, String unitLine, Unit wanted) {
        Optional<Unit> ofLine = named(unitLine, wanted);
        if (ofLine.isPresent()) {
            return ofLine.map(u -> new UnitGuess(u, Basis.WRITTEN));
        }
        Matcher bracketed = IN_BRACKETS.matcher(title);
        if (bracketed.matches()) {
            return named(bracketed.group(1).strip(), wanted).map(u -> new UnitGuess(u, Basis.WRITTEN));
        }
        // A title may be a unit itself, as in "seconds".
        Matcher behind = BEHIND_NAME.matcher(title);
        String text = behind.matches() ? behind.group(1) : wanted == null ? "" : title;
        boolean isWord = text.equals("%") || (!text.isEmpty() && Character.isLetter(text.charAt(0)));
        return isWord ? named(text, wanted).map(u -> new UnitGuess(u, Basis.NAME)) : Optional.empty();
    }

    /** The unit that stands behind each number, as in "45.2 C". */
    static Optional<UnitGuess> behindNumbers(String suffix, Unit wanted) {
        return named(suffix, wanted).map(u -> new UnitGuess(u, Basis.WRITTEN));
    }

    /** The unit of a median, if the method records the column in the unit wanted. */
    static UnitGuess byMagnitude(Unit wanted, double median) {
        for (Map.Entry<String, List<Step>> steps : STEPS.entrySet()) {
            if (!Unit.of(steps.getKey()).convertsTo(wanted)) {
                continue;
            }
            for (Step step : steps.getValue()) {
                if (Math.abs(median) >= step.from()) {
                    return new UnitGuess(Unit.of(step.unit()), Basis.MAGNITUDE);
                }
            }
        }
        return new UnitGuess(wanted, Basis.METHOD);
    }
}
