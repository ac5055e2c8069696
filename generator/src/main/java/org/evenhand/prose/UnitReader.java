package org.evenhand.prose;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.prose.Stated.Shape;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;

/** Reads the unit that stands behind a number in running text. */
final class UnitReader {

    private static final Map<String, Optional<Unit>> PARSED = new ConcurrentHashMap<>();
    private static final int MOST_SYMBOLS = 5_000;

    private static final Unit ONE_PER_HOUR = Unit.of("1/h");

    /** Words of ordinary language that are also symbols: "3 in the table", "4 at the most". */
    private static final Set<String> NO_SYMBOL =
            Set.of("in", "t", "B", "C", "r", "a", "at", "turn", "bar", "l", "cal", "rad");

    /** Symbols that may stand directly behind a number; others are names: 4K, 5G, the 1980s. */
    private static final Set<String> TIGHT = Set.of(
            "W", "V", "mW", "kW", "mV", "mA", "MHz", "GHz", "kHz", "Hz", "ms", "min", "Wh", "mWh", "kWh", "dB", "dB(A)",
            "dBA", "°C", "°F", "%", "‰", "GB", "MB", "kB", "mm", "cm", "km", "kg", "µs", "ns", "°", "°K", "Ω", "mAh",
            "Ah", "rpm", "fps");

    private static final Pattern SYMBOL = Pattern.compile(
            "(?<space>[ -]?)(?<symbol>[°%‰µμΩ\\p{L}][\\p{L}°²³⁻¹]*(?:\\([AC Z]\\))?(?: SPL)?(?:[·/.⋅](?!\\s)[\\p{L}°²³Ω]+(?:\\([ACZ]\\))?)*)");

    private static final Pattern PER = Pattern.compile("\\sper\\s(?<symbol>\\p{L}+)(?!\\p{L})");

    private final Pattern named;
    private final Words words;

    UnitReader(Words words) {
        this.words = words;
        this.named = Words.pattern("[ -]?(?<unit>" + words.any("unit", "points") + ")(?!\\p{L})");
    }

    /**
     * A unit that was read.
     *
     * @param unit which
     * @param shape what it makes of the number
     * @param end index behind it
     */
    record Read(Unit unit, Shape shape, int end) {}

    Optional<Read> read(String text, int at) {
        Matcher word = named.matcher(text).region(at, text.length());
        if (word.lookingAt()) {
            String found = word.group("unit").toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
            if (words.value("points", found).isPresent()) {
                return Optional.of(new Read(FigureText.PERCENT, Shape.POINTS, word.end()));
            }
            Unit unit = Unit.of(words.value("unit", found).orElseThrow());
            return Optional.of(read(unit, word.end()));
        }
        Matcher symbol = SYMBOL.matcher(text).region(at, text.length());
        if (!symbol.lookingAt()) {
            return Optional.empty();
        }
        String found = symbol.group("symbol");
        boolean tight = symbol.group("space").isEmpty();
        // A full stop that ends the sentence is no part of a unit; neither is what follows a slash by chance.
        for (String candidate = found; !candidate.isEmpty(); candidate = shorter(candidate)) {
            int end = symbol.start("symbol") + candidate.length();
            // "64-bit" tells a kind, "64 bit/s" a rate.
            boolean kind = candidate.equals("bit") && symbol.group("space").equals("-");
            boolean whole = !kind && (end >= text.length() || !Character.isLetter(text.charAt(end)));
            if (!whole || NO_SYMBOL.contains(candidate) || (tight && !TIGHT.contains(candidate))) {
                continue;
            }
            Optional<Unit> unit = parsed(candidate);
            if (unit.isPresent()) {
                return Optional.of(perHour(text, read(unit.get(), end)));
            }
        }
        return Optional.empty();
    }

    /** "0.06 failures per hour", where what is counted has no unit, and "0.9 frames/s per GHz". */
    private Read perHour(String text, Read read) {
        Matcher slope = PER.matcher(text).region(read.end, text.length());
        if (read.unit.kind() == UnitKind.DIFFERENCE && slope.lookingAt()) {
            Optional<Unit> below = parsed(slope.group("symbol"));
            if (below.isPresent() && below.get().kind() == UnitKind.DIFFERENCE) {
                return new Read(FigureText.slopeUnit(read.unit, below.get()), Shape.QUANTITY, slope.end());
            }
        }
        Matcher per = named.matcher(text).region(read.end, text.length());
        boolean counted = read.unit.dimension().equals(Unit.ONE.dimension()) && read.shape == Shape.QUANTITY;
        if (counted && per.lookingAt()) {
            Optional<String> symbol = words.value("unit", per.group("unit"));
            if (symbol.isPresent() && Unit.of(symbol.get()).equals(ONE_PER_HOUR)) {
                return new Read(ONE_PER_HOUR, Shape.QUANTITY, per.end());
            }
        }
        return read;
    }

    private static Read read(Unit unit, int end) {
        return new Read(unit, unit.equals(FigureText.PERCENT) ? Shape.PERCENT : Shape.QUANTITY, end);
    }

    private static String shorter(String symbol) {
        int cut = Math.max(
                Math.max(symbol.lastIndexOf('/'), symbol.lastIndexOf('.')),
                Math.max(symbol.lastIndexOf('('), symbol.lastIndexOf(' ')));
        return cut > 0 ? symbol.substring(0, cut) : "";
    }

    private static Optional<Unit> parsed(String symbol) {
        Optional<Unit> known = PARSED.get(symbol);
        if (known != null) {
            return known;
        }
        Optional<Unit> unit;
        try {
            unit = Optional.of(Unit.parse(spelled(symbol)));
        } catch (MisreadException e) {
            unit = Optional.empty();
        }
        if (PARSED.size() < MOST_SYMBOLS) {
            PARSED.put(symbol, unit);
        }
        return unit;
    }

    /** Spellings of articles that data files do not accept. */
    private static String spelled(String symbol) {
        return switch (symbol) {
            case "dBA" -> "dB(A)";
            case "fps" -> "frames/s";
            case "°K" -> "K";
            default -> symbol;
        };
    }
}
