package org.evenhand.prose;

import java.util.OptionalDouble;
import org.evenhand.compare.Verdict;
import org.evenhand.model.Better;
import org.evenhand.prose.Evidence.Kind;
import org.evenhand.prose.EvidenceLink.Form;
import org.evenhand.quantity.Figures;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;
import org.evenhand.words.Words;

/** Writes figures so that they read well within a sentence. */
final class FigureText {

    private static final String SPACE = Figures.NO_BREAK_SPACE;
    private static final Unit PER_HOUR = Unit.of("1/h");
    private static final String PER = " per ";
    static final Unit PERCENT = Unit.of("%");
    private static final Unit POINTS = PERCENT.ofDifference();

    /** No figure has more significant digits than this. */
    private static final int MOST_DIGITS = 6;

    private final Words words;

    private FigureText(Words words) {
        this.words = words;
    }

    /** In a language, as an IETF tag. */
    static FigureText in(String language) {
        return new FigureText(Words.in(language));
    }

    /** The words of the language. */
    Words words() {
        return words;
    }

    /** The text of a link that the author left empty. */
    String of(Evidence evidence, Form form) {
        if (evidence.isRefused()) {
            return words.say("quote.not-comparable");
        }
        if (form == Form.WORDS) {
            return cautious(evidence);
        }
        if (!evidence.words().isEmpty()) {
            return evidence.words();
        }
        return switch (evidence.kind()) {
            case RATIO -> ratio(evidence, form);
            case DIFFERENCE -> {
                Figure figure = form.isInverse()
                        ? evidence.figure().scaled(-1, 0, evidence.figure().unit())
                        : evidence.figure();
                yield form == Form.INTERVAL ? withInterval(figure, true) : value(figure, true);
            }
            case TREND -> trend(evidence);
            case SHARE -> share(evidence);
            case FAILURE_RATE -> rate(evidence, form);
            default -> form == Form.INTERVAL ? withInterval(evidence.figure(), false) : value(evidence.figure(), false);
        };
    }

    /** For the note of a link: interval, what n counts, verdict. */
    String note(Evidence evidence) {
        StringBuilder note = new StringBuilder(evidence.title());
        if (evidence.figure().hasInterval() && !evidence.isRefused()) {
            note.append("; ")
                    .append(words.say(
                            "sentence.note-interval",
                            ends(evidence.figure(), decimals(evidence.figure()), isShareDifference(evidence))));
        }
        if (!evidence.n().isEmpty()) {
            note.append("; ").append(evidence.n());
        }
        evidence.verdict().ifPresent(v -> note.append("; ").append(spoken(v, evidence)));
        return note.toString();
    }

    private String spoken(Verdict verdict, Evidence evidence) {
        return switch (verdict) {
            case DIFFERS -> words.say("sentence.differs");
            case SAME_WITHIN_MARGIN ->
                words.say(
                        evidence.differs() ? "sentence.within-margin" : "quote.same",
                        evidence.margin().orElseGet(() -> words.say("sentence.the-margin")));
            case NOT_SHOWN -> words.say("sentence.not-shown");
            case NOT_COMPARABLE -> words.say("quote.not-comparable");
        };
    }

    /** The figure and what is known of it, for messages. */
    String computed(Evidence evidence) {
        if (evidence.isRefused()) {
            return words.say("quote.not-comparable");
        }
        if (!evidence.words().isEmpty()) {
            return evidence.words();
        }
        if (evidence.kind() == Kind.RATIO) {
            return words.say("sentence.that-is", ratio(evidence, Form.INTERVAL), ratio(evidence, Form.PERCENT));
        }
        return of(evidence, Form.INTERVAL);
    }

    static int decimals(Figure figure) {
        double half = figure.halfWidth();
        double alone = figure.value().orElse(figure.low().orElse(figure.high().orElse(0)));
        if (half > 0) {
            // An interval far narrower than any instrument resolves is the noise of arithmetic.
            int most = alone == 0 ? MOST_DIGITS : Figures.decimals(Math.abs(alone)) + MOST_DIGITS - 2;
            return Math.min(Figures.decimals(half), most);
        }
        return figure.value().isPresent() || figure.low().isPresent()
                ? Figures.decimalsAlone(alone)
                // A bound alone: two digits say what it can say.
                : alone > 0 ? Figures.decimals(alone) : 0;
    }

    String value(Figure figure, boolean difference) {
        int decimals = decimals(figure);
        if (figure.value().isPresent()) {
            return number(figure.value().getAsDouble(), decimals, figure.unit(), difference);
        }
        if (figure.low().isPresent()) {
            return words.say(
                    "sentence.more-than", number(figure.low().getAsDouble(), decimals, figure.unit(), difference));
        }
        return figure.high().isPresent()
                ? words.say(
                        "figure.less-than", number(figure.high().getAsDouble(), decimals, figure.unit(), difference))
                : words.say("sentence.not-known");
    }

    private String withInterval(Figure figure, boolean difference) {
        return figure.hasInterval()
                ? value(figure, difference) + interval(figure, decimals(figure), difference)
                : value(figure, difference);
    }

    private String interval(Figure figure, int decimals, boolean difference) {
        return " (" + words.say("sentence.note-interval", ends(figure, decimals, difference)) + ")";
    }

    private String ends(Figure figure, int decimals, boolean difference) {
        return words.say(
                "figure.range",
                number(figure.low().orElseThrow(), decimals, figure.unit(), difference),
                number(figure.high().orElseThrow(), decimals, figure.unit(), difference));
    }

    private static boolean isShareDifference(Evidence evidence) {
        return evidence.kind() == Kind.DIFFERENCE;
    }

    /** A difference of percentages is in percentage points: percent of what could not be told. */
    String number(double value, int decimals, Unit unit, boolean difference) {
        String number = words.number(Figures.at(value, decimals));
        if (difference && isPercent(unit)) {
            return number + SPACE + words.say("figure.percentage-points");
        }
        return unit.equals(PER_HOUR)
                ? number + SPACE + words.say("figure.per-h")
                : unit.isOne() ? number : number + SPACE + inText(unit);
    }

    private String inText(Unit unit) {
        String[] parts = unit.symbol().split(PER, 2);
        return parts.length < 2 ? unit.symbol() : words.say("figure.unit-per", parts[0], parts[1]);
    }

    /** A quantity as it was stated. */
    String written(Quantity quantity) {
        String number = quantity.value().stripTrailingZeros().toPlainString().replace('-', '\u2212');
        String spread = quantity.expandedUncertainty()
                .map(u -> SPACE + "±" + SPACE + u.toPlainString())
                .orElse("");
        return Figures.withUnit(words.number(number + spread), quantity.unit());
    }

    /** Whether values are in percent, or differences of such values. */
    static boolean isPercent(Unit unit) {
        return unit.equals(PERCENT) || unit.equals(POINTS);
    }

    private String ratio(Evidence evidence, Form form) {
        Figure figure = form.isInverse() ? evidence.figure().inverse() : evidence.figure();
        if (figure.value().isEmpty()) {
            return value(figure, false);
        }
        if (form.isPercent()) {
            return percent(figure, Better.NEITHER);
        }
        return form == Form.INTERVAL ? withInterval(figure, false) : value(figure, false);
    }

    /** A ratio as a change: "21 % less". */
    String percent(Figure ratio, Better better) {
        Figure change = ratio.scaled(100, -100, PERCENT);
        double value = change.value().orElseThrow();
        String number = words.number(Figures.at(Math.abs(value), Math.min(decimals(change), 6)));
        return words.say(value < 0 ? "sentence.percent-less" : "sentence.percent-more", number);
    }

    private String trend(Evidence evidence) {
        String slope = value(evidence.figure(), false);
        return evidence.second()
                .map(e -> words.say("sentence.slope-exponent", slope, withInterval(e, false)))
                .orElseGet(() -> words.say("sentence.slope", slope));
    }

    private String share(Evidence evidence) {
        Evidence.Count count = evidence.count();
        Figure percent = evidence.figure().scaled(100, 0, PERCENT);
        String of = words.say("quote.of", count.successes(), count.total());
        return percent.hasInterval() ? of + interval(percent, percentDecimals(percent), false) : of;
    }

    /** Whole percents; finer where an end would be rounded to none or all, which it is not. */
    private static int percentDecimals(Figure percent) {
        int decimals = Math.max(0, Math.min(decimals(percent), 1));
        double low = percent.low().orElseThrow();
        double high = percent.high().orElseThrow();
        boolean hidesAnEnd = (low > 0 && low < 0.5) || (high < 100 && high >= 99.5);
        return hidesAnEnd ? Math.max(1, decimals) : decimals;
    }

    private String rate(Evidence evidence, Form form) {
        if (evidence.count().successes() == 0 && evidence.figure().high().isPresent()) {
            double bound = evidence.figure().high().getAsDouble();
            // To two digits and to the nearest, as every table writes it.
            return words.say(
                    "sentence.bound",
                    number(bound, Figures.decimals(bound), evidence.figure().unit(), false));
        }
        return withInterval(evidence.figure(), false);
    }

    /** What may be said, so that a cautious sentence is the easiest to write. */
    private String cautious(Evidence evidence) {
        if (evidence.verdict().isEmpty()) {
            return evidence.words().isEmpty() ? of(evidence, Form.INTERVAL) : evidence.words();
        }
        return switch (evidence.verdict().get()) {
            case DIFFERS -> changeThan(evidence);
            case SAME_WITHIN_MARGIN ->
                evidence.differs()
                        ? words.say(
                                "sentence.within",
                                changeThan(evidence),
                                evidence.margin().orElse(""))
                        : words.say("quote.same", evidence.margin().orElse(""));
            case NOT_SHOWN -> words.say("sentence.none-shown");
            case NOT_COMPARABLE -> words.say("quote.not-comparable");
        };
    }

    private String changeThan(Evidence evidence) {
        return evidence.against()
                .map(s -> words.say("sentence.than", change(evidence), s.title()))
                .orElseGet(() -> change(evidence));
    }

    private String change(Evidence evidence) {
        OptionalDouble value = evidence.figure().value();
        return switch (evidence.kind()) {
            case RATIO -> words.say("sentence.of-noun", percent(evidence.figure(), evidence.better()), evidence.noun());
            case DIFFERENCE -> {
                Figure size = value.orElse(0) < 0
                        ? evidence.figure().scaled(-1, 0, evidence.figure().unit())
                        : evidence.figure();
                yield words.say(value.orElse(0) < 0 ? "sentence.lower" : "sentence.higher", value(size, true));
            }
            case TREND -> words.say(value.orElse(0) < 0 ? "sentence.falling" : "sentence.rising");
            default -> of(evidence, Form.VALUE);
        };
    }

    /** The unit of a line's slope, as a sentence has it. */
    static Unit slopeUnit(Unit y, Unit x) {
        Unit numerator = y.ofDifference();
        Unit denominator = x.ofDifference();
        // Decibels are not divided as a quantity, but a line through them has a slope all the same.
        Unit slope = (numerator.kind() == UnitKind.LEVEL ? Unit.ONE : numerator).per(denominator);
        return new Unit(
                numerator.symbol() + PER + denominator.symbol(),
                numerator.code() + "/" + denominator.code(),
                slope.dimension(),
                UnitKind.DIFFERENCE,
                slope.factor(),
                slope.offset());
    }
}
