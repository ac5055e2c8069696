package org.evenhand.prose;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.prose.Stated.Bound;
import org.evenhand.prose.Stated.Shape;
import org.evenhand.quantity.Figures;
import org.evenhand.quantity.Unit;

/** Finds quantities in running text, in the words of one language. */
final class QuantityScanner {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    /** Half of anything is meant to two digits; "about half" to one. */
    private static final int DIGITS_OF_MULTIPLES = 2;

    private static final Pattern PLUS_MINUS = Pattern.compile("\\s*±\\s*");

    private final Words words;
    private final Pattern start;
    private final Candidates candidates;
    private final Phrases modifier;
    private final Pattern range;
    private final Pattern second;
    private final Pattern countOf;
    private final Pattern times;
    private final Pattern ofOne;
    private final UnitReader units;

    QuantityScanner(Words words) {
        this.words = words;
        String group = words.thousands().isEmpty() ? "[ ]" : "[ " + Pattern.quote(words.thousands()) + "]";
        String digits = "(?:\\d{1,3}(?:" + group + "\\d{3})+(?!\\d)|\\d+)(?:" + Pattern.quote(words.decimal())
                + "\\d+)?(?:[eE][-+]?\\d{1,2})?";
        String number = "(?<digits>" + digits + ")(?![\\d])";
        String word = "(?<word>" + words.any("number") + "(?:-" + words.any("number") + ")?)(?![\\p{L}\\d-])";
        this.start = Words.pattern("(?<![\\p{L}\\p{Nd}_/.,:#])(?<sign>(?<![\\p{L}\\p{Nd})])[-+])?(?:" + number
                + "|(?<multiple>" + words.any("multiple") + ")(?!\\p{L})|" + word + "|(?<article>"
                + words.any("article") + ")(?=[ -]))");
        this.candidates = new Candidates(words);
        this.modifier = new Phrases(
                words.list("about", "lower", "upper"),
                "(?<!\\p{L})(?<modifier>" + words.any("about", "lower", "upper") + ")\\s*$");
        this.range = Words.pattern("\\s*(?<!\\p{L})(?:" + words.any("range") + ")(?!\\p{L})\\s*");
        this.second = Words.pattern("(?<sign>[-+])?(?:" + number + "|" + word + ")");
        this.countOf = Words.pattern("\\s+(?:out\\s+)?" + words.any("of") + "\\s+(?:(?:the|our|these|those)\\s+)?(?:"
                + number + "|" + word + ")");
        this.times = Words.pattern("\\s*" + words.any("times") + "(?!\\p{L})");
        this.ofOne = Words.pattern("(?:\\s+" + words.any("of") + ")?\\s+" + words.any("article") + "(?= )");
        this.units = new UnitReader(words);
    }

    /** All quantities and plain numbers, in the order of the text. */
    List<Stated> scan(String text) {
        int next = candidates.next(text, 0);
        if (next == text.length()) {
            return List.of();
        }
        List<Stated> found = new ArrayList<>();
        Matcher matcher = start.matcher(text).useTransparentBounds(true);
        int at = 0;
        while (next < text.length()) {
            if (matcher.region(next, text.length()).lookingAt()) {
                Optional<Stated> stated = read(text, matcher, at);
                stated.ifPresent(found::add);
                at = stated.map(Stated::end).orElse(matcher.end());
                next = candidates.next(text, Math.max(at, next + 1));
            } else {
                next = candidates.next(text, next + 1);
            }
        }
        return found;
    }

    /** Whether there is anything in a text that could begin a quantity; much faster than to look for one. */
    boolean mayHave(String text) {
        return candidates.next(text, 0) < text.length();
    }

    private Optional<Stated> read(String text, Matcher matcher, int notBefore) {
        Matcher before = modifier.matcher(text);
        boolean modified = modifier.findBefore(before, text, notBefore, matcher.start());
        int start = modified ? before.start("modifier") : matcher.start();
        Bound bound = modified ? bound(before.group("modifier")) : Bound.EXACT;
        if (matcher.group("multiple") != null) {
            BigDecimal value = words.number("multiple", normal(matcher.group("multiple")));
            Matcher article = ofOne.matcher(text).region(matcher.end(), text.length());
            Optional<UnitReader.Read> unit = article.lookingAt() ? units.read(text, article.end()) : Optional.empty();
            if (unit.isPresent()) {
                BigDecimal step = BigDecimal.ONE.movePointLeft(bound == Bound.ABOUT ? 1 : 2);
                return Optional.of(new Stated(
                        start,
                        matcher.start(),
                        matcher.end(),
                        unit.get().end(),
                        Shape.QUANTITY,
                        value,
                        value,
                        unit.get().unit(),
                        bound,
                        step,
                        step,
                        false));
            }
            return Optional.of(multiple(start, matcher.start(), matcher.end(), matcher.end(), value, bound));
        }
        if (matcher.group("article") != null) {
            // "Under a minute" is a quantity, "for a minute" is a way of speaking.
            Optional<UnitReader.Read> unit = modified ? units.read(text, matcher.end()) : Optional.empty();
            return unit.map(u -> new Stated(
                    start,
                    matcher.start(),
                    matcher.end(),
                    u.end(),
                    Shape.QUANTITY,
                    BigDecimal.ONE,
                    BigDecimal.ONE,
                    u.unit(),
                    bound,
                    BigDecimal.ONE,
                    BigDecimal.ONE,
                    false));
        }
        String sign = matcher.group("sign");
        BigDecimal first = value(matcher);
        first = "-".equals(sign) ? first.negate() : first;
        BigDecimal step = step(first, matcher.group("digits") == null, bound);
        Matcher count = countOf.matcher(text).region(matcher.end(), text.length());
        if (count.lookingAt() && units.read(text, matcher.end()).isEmpty()) {
            BigDecimal total = value(count);
            return Optional.of(new Stated(
                    start,
                    matcher.start(),
                    count.end(),
                    count.end(),
                    Shape.COUNT,
                    first,
                    total,
                    Unit.ONE,
                    bound,
                    step,
                    step,
                    false));
        }
        Matcher multiplied = times.matcher(text).region(matcher.end(), text.length());
        if (multiplied.lookingAt()) {
            return Optional.of(multiple(start, matcher.start(), matcher.end(), multiplied.end(), first, bound));
        }
        return Optional.of(quantity(text, matcher, start, first, step, bound, sign != null));
    }

    private Stated quantity(
            String text, Matcher matcher, int start, BigDecimal first, BigDecimal step, Bound bound, boolean signed) {
        Optional<UnitReader.Read> own = units.read(text, matcher.end());
        int behindFirst = own.map(UnitReader.Read::end).orElse(matcher.end());
        Matcher spread = PLUS_MINUS.matcher(text).region(behindFirst, text.length());
        boolean isSpread = spread.lookingAt();
        Matcher joint = isSpread ? spread : range.matcher(text).region(behindFirst, text.length());
        if (isSpread || joint.lookingAt()) {
            Matcher other = second.matcher(text).region(joint.end(), text.length());
            if (other.lookingAt()) {
                Optional<UnitReader.Read> unit = units.read(text, other.end());
                boolean oneUnit = unit.isPresent()
                        && (own.isEmpty() || own.get().unit().equals(unit.get().unit()));
                BigDecimal value = value(other);
                // "Runs 1 to 3" names runs, "0.84 to 0.88" is a range.
                boolean decimals = first.scale() > 0 && value.scale() > 0;
                boolean none = own.isEmpty()
                        && unit.isEmpty()
                        && (isSpread || decimals || joint.group().contains("–"));
                if (oneUnit || none) {
                    value = "-".equals(other.group("sign")) ? value.negate() : value;
                    boolean word = other.group("digits") == null;
                    return stated(
                            start,
                            matcher.start(),
                            other.end(),
                            unit.or(() -> own),
                            first,
                            value,
                            isSpread ? Bound.SPREAD : Bound.RANGE,
                            step,
                            step(value, word, Bound.EXACT),
                            signed);
                }
            }
        }
        return stated(start, matcher.start(), matcher.end(), own, first, first, bound, step, step, signed);
    }

    private static Stated stated(
            int start,
            int numberStart,
            int numberEnd,
            Optional<UnitReader.Read> unit,
            BigDecimal first,
            BigDecimal second,
            Bound bound,
            BigDecimal step,
            BigDecimal secondStep,
            boolean signed) {
        Shape shape = unit.map(UnitReader.Read::shape).orElse(Shape.NUMBER);
        int end = Math.max(numberEnd, unit.map(UnitReader.Read::end).orElse(numberEnd));
        return new Stated(
                start,
                numberStart,
                numberEnd,
                end,
                shape,
                first,
                second,
                unit.map(UnitReader.Read::unit).orElse(Unit.ONE),
                bound,
                step,
                secondStep,
                signed);
    }

    private static Stated multiple(int start, int numberStart, int numberEnd, int end, BigDecimal value, Bound bound) {
        int digits = bound == Bound.ABOUT ? 1 : DIGITS_OF_MULTIPLES;
        BigDecimal step = BigDecimal.ONE.movePointRight(value.precision() - value.scale() - digits);
        BigDecimal written = BigDecimal.ONE.movePointLeft(Math.max(0, value.scale()));
        // "2.15 times" is finer than two digits; "a third" is not.
        BigDecimal finer =
                value.scale() > 4 ? step : step.min(value.scale() > 0 && value.precision() > digits ? written : step);
        return new Stated(
                start, numberStart, numberEnd, end, Shape.MULTIPLE, value, value, Unit.ONE, bound, finer, finer, false);
    }

    private Bound bound(String modifier) {
        String word = normal(modifier);
        if (words.value("about", word).isPresent()) {
            return Bound.ABOUT;
        }
        return words.value("lower", word).isPresent() ? Bound.LOWER : Bound.UPPER;
    }

    private BigDecimal value(Matcher matcher) {
        if (matcher.group("digits") != null) {
            String digits = matcher.group("digits").replace(" ", "");
            digits = words.thousands().isEmpty() ? digits : digits.replace(words.thousands(), "");
            return new BigDecimal(digits.replace(words.decimal(), "."));
        }
        BigDecimal sum = BigDecimal.ZERO;
        for (String part : normal(matcher.group("word")).split("-")) {
            sum = sum.add(words.number("number", part));
        }
        return sum;
    }

    /** What the last digit that counts is worth: for "about 30" ten, for "30" one, for "30.0" a tenth. */
    private static BigDecimal step(BigDecimal value, boolean word, Bound bound) {
        boolean whole = bound == Bound.ABOUT && value.signum() != 0;
        int scale = whole ? value.stripTrailingZeros().scale() : value.scale();
        return BigDecimal.ONE.movePointLeft(word && !whole ? 0 : scale);
    }

    private static String normal(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }

    /** Half a step, as a double that forgives the last bit. */
    static double tolerance(BigDecimal step) {
        return step.divide(TWO).doubleValue() * (1 + 1e-9);
    }

    /** A number as the language writes it, at a step. */
    String write(double value, BigDecimal step) {
        int decimals = 1 + step.scale() - step.precision();
        return Figures.at(value, decimals).replace(".", words.decimal());
    }
}
