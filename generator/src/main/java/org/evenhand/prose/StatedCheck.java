package org.evenhand.prose;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.evenhand.compare.Verdict;
import org.evenhand.prose.Directions.At;
import org.evenhand.prose.Evidence.Kind;
import org.evenhand.prose.EvidenceLink.Form;
import org.evenhand.prose.Orientation.Base;
import org.evenhand.prose.Passage.Bound;
import org.evenhand.prose.Stated.Shape;
import org.evenhand.quantity.Unit;

/** Holds one quantity in the text of a link against the link's figure. */
final class StatedCheck {

    private static final BigDecimal CONFIDENCE = BigDecimal.valueOf(95);

    private final Sentence sentence;
    private final Bound link;
    private final Evidence evidence;
    private final Orientation orientation;
    private final List<At> directions;
    private final int sign;
    private final boolean wrongWay;
    private final QuantityScanner scanner;

    StatedCheck(
            Sentence sentence,
            Bound link,
            Orientation orientation,
            List<At> directions,
            int sign,
            boolean wrongWay,
            QuantityScanner scanner) {
        this.sentence = sentence;
        this.link = link;
        this.evidence = link.evidence();
        this.orientation = orientation;
        this.directions = directions;
        this.sign = sign;
        this.wrongWay = wrongWay;
        this.scanner = scanner;
    }

    /** What is wrong with it; nothing if it holds. */
    Optional<ProseFault> fault(Stated stated) {
        if (evidence.isRefused()) {
            return Optional.of(
                    mismatch(stated, Optional.empty(), sentence.context().say("prose.since-not-comparable")));
        }
        Stated meant = withWordsBefore(stated);
        if (isMargin(meant) || isConfidence(meant)) {
            return Optional.empty();
        }
        if (isQuotedBound(meant)) {
            return quotedBound(meant);
        }
        return switch (meant.shape()) {
            case PERCENT -> percent(meant);
            case POINTS ->
                evidence.kind() == Kind.DIFFERENCE
                                && FigureText.isPercent(evidence.figure().unit())
                        ? signed(meant, evidence.figure())
                        : Optional.of(mismatch(
                                meant, Optional.empty(), sentence.context().say("prose.since-no-points")));
            case MULTIPLE -> multiple(meant);
            case COUNT -> count(meant);
            case NUMBER -> number(meant);
            case QUANTITY -> quantity(meant);
        };
    }

    /** "0.062 per hour (95 % confidence)": the bound itself, to the nearest or rounded away from what was seen. */
    private Optional<ProseFault> quotedBound(Stated stated) {
        Optional<Figure> inUnit = FigureMatch.in(stated.unit(), evidence.figure());
        boolean holds = inUnit.isPresent() && FigureMatch.isBound(stated, inUnit.get());
        return holds ? Optional.empty() : Optional.of(mismatch(stated, inUnit, ""));
    }

    private boolean isQuotedBound(Stated stated) {
        boolean onlyBound =
                evidence.figure().value().isEmpty() && evidence.figure().high().isPresent();
        return onlyBound
                && stated.bound() == Stated.Bound.EXACT
                && sentence.language()
                        .confidence
                        .matcher(sentence.passage().text().substring(stated.end(), link.end()))
                        .find();
    }

    /** "As high as [0.06 per hour](…)": the words just before a link belong to its first number. */
    private Stated withWordsBefore(Stated stated) {
        String text = sentence.passage().text();
        boolean first = text.substring(link.start(), stated.start()).isBlank();
        if (!first || stated.bound() != Stated.Bound.EXACT) {
            return stated;
        }
        for (Stated.Bound bound : List.of(Stated.Bound.UPPER, Stated.Bound.LOWER, Stated.Bound.ABOUT)) {
            Phrases before = sentence.language().before.get(bound);
            if (before.findBefore(before.matcher(text), text, sentence.range().start(), link.start())) {
                return as(bound, stated);
            }
        }
        return stated;
    }

    private static Stated as(Stated.Bound bound, Stated stated) {
        BigDecimal value = stated.first();
        BigDecimal step = bound == Stated.Bound.ABOUT && value.signum() != 0
                ? BigDecimal.ONE.movePointLeft(value.stripTrailingZeros().scale())
                : stated.step();
        return new Stated(
                stated.start(),
                stated.numberStart(),
                stated.numberEnd(),
                stated.end(),
                stated.shape(),
                value,
                stated.second(),
                stated.unit(),
                bound,
                step,
                stated.secondStep(),
                stated.signed());
    }

    private Optional<ProseFault> percent(Stated stated) {
        return switch (evidence.kind()) {
            case RATIO -> percentOfRatio(stated);
            case SHARE -> share(stated);
            case DIFFERENCE ->
                Optional.of(
                        FigureText.isPercent(evidence.figure().unit())
                                ? fault(
                                        LinkCheck.PERCENT_WITHOUT_BASE,
                                        stated,
                                        Optional.empty(),
                                        sentence.context().say("prose.since-percentage-points"))
                                : mismatch(
                                        stated,
                                        Optional.empty(),
                                        sentence.context().say("prose.since-difference")));
            default -> plain(stated, evidence.figure());
        };
    }

    private Optional<ProseFault> share(Stated stated) {
        Figure percent = evidence.figure().scaled(100, 0, FigureText.PERCENT);
        boolean holds = FigureMatch.holds(stated, percent);
        boolean bare = stated.bound() == Stated.Bound.EXACT || stated.bound() == Stated.Bound.ABOUT;
        String text = sentence.passage().text().substring(link.start(), link.end());
        boolean counted =
                scanner.scan(text).stream().anyMatch(s -> s.shape() == Shape.COUNT || s.bound() == Stated.Bound.RANGE);
        if (holds && bare && !counted) {
            return Optional.of(fault(
                    "rate-without-interval",
                    stated,
                    Optional.empty(),
                    sentence.context().say("prose.since-few")));
        }
        // A bare percentage is not mended by another: the count has to be written.
        Optional<Figure> figure = bare && !counted ? Optional.empty() : Optional.of(percent);
        return holds ? Optional.empty() : Optional.of(mismatch(stated, figure, ""));
    }

    /** "95 % interval": how sure the figure is, and not the figure. All intervals here are at this confidence. */
    private boolean isConfidence(Stated stated) {
        return stated.first().compareTo(CONFIDENCE) == 0
                && sentence.language()
                        .confidence
                        .matcher(sentence.passage().text())
                        .region(stated.end(), link.end())
                        .lookingAt();
    }

    /** "The same within 2 %" names the margin, and nothing else. */
    private boolean isMargin(Stated stated) {
        return stated.bound() == Stated.Bound.UPPER
                && evidence.verdict().equals(Optional.of(Verdict.SAME_WITHIN_MARGIN))
                && evidence.margin().map(m -> scanner.scan(m.replace('\u00a0', ' '))).orElse(List.of()).stream()
                        .anyMatch(m -> m.first().compareTo(stated.first()) == 0
                                && m.unit().equals(stated.unit()));
    }

    private Optional<ProseFault> percentOfRatio(Stated stated) {
        if (orientation.base() == Base.NOT_NAMED && !isOf(stated)) {
            return Optional.of(fault(
                    LinkCheck.PERCENT_WITHOUT_BASE,
                    stated,
                    Optional.empty(),
                    sentence.context().say("prose.since-base-not-named")));
        }
        Figure ratio = turned();
        if (isOf(stated) && claimedSign() == 0) {
            Optional<Base> of = baseBehind(stated);
            if (of.isEmpty()) {
                return Optional.of(fault(
                        LinkCheck.PERCENT_WITHOUT_BASE,
                        stated,
                        Optional.empty(),
                        sentence.context().say("prose.since-of-what")));
            }
            Figure share = of.get() == Base.TURNED ? evidence.figure().inverse() : evidence.figure();
            return plain(stated, share.scaled(100, 0, FigureText.PERCENT));
        }
        if (claimedSign() == 0 && !stated.signed()) {
            return Optional.of(fault(
                    LinkCheck.NUMBER_MISMATCH,
                    stated,
                    Optional.empty(),
                    sentence.context().say("prose.since-no-direction")));
        }
        return signed(stated, ratio.scaled(100, -100, FigureText.PERCENT));
    }

    private boolean isOf(Stated stated) {
        String behind = sentence.passage().text().substring(stated.end());
        return sentence.language().of.matcher(behind).lookingAt();
    }

    /** The side named behind "79 % of". */
    private Optional<Base> baseBehind(Stated stated) {
        String behind = sentence.passage()
                .text()
                .substring(stated.end(), sentence.range().end());
        int against = first(behind, evidence.against());
        int level = first(behind, evidence.level());
        if (against < 0 && level < 0) {
            return Optional.empty();
        }
        return Optional.of(level < 0 || (against >= 0 && against <= level) ? Base.AS_COMPARED : Base.TURNED);
    }

    private static int first(String text, Optional<Side> side) {
        if (side.isEmpty()) {
            return -1;
        }
        var matcher = Words.pattern(
                        "(?<![\\p{L}\\p{Nd}])" + Words.alternatives(side.get().names()) + "(?![\\p{L}\\p{Nd}])")
                .matcher(text);
        return matcher.find() ? matcher.start() : -1;
    }

    private Optional<ProseFault> multiple(Stated stated) {
        if (evidence.kind() != Kind.RATIO) {
            return Optional.of(
                    mismatch(stated, Optional.empty(), sentence.context().say("prose.since-no-ratio")));
        }
        Figure ratio = turned();
        boolean fraction = stated.first().compareTo(BigDecimal.ONE) < 0;
        boolean followed =
                directions.stream().anyMatch(d -> d.start() >= stated.end() && d.start() - stated.end() <= 1);
        if (fraction && followed) {
            return plain(stated, ratio.scaled(claimedSign(), -claimedSign(), Unit.ONE));
        }
        return plain(stated, !fraction && claimedSign() < 0 ? ratio.inverse() : ratio);
    }

    private Optional<ProseFault> count(Stated stated) {
        Evidence.Count count = evidence.count();
        boolean whole = stated.first().doubleValue() == count.successes()
                && stated.second().doubleValue() == count.total();
        String figures =
                stated.first().toPlainString() + " of " + stated.second().toPlainString();
        boolean inWords = Pattern.compile("(?<!\\d)" + Pattern.quote(figures) + "(?!\\d)")
                .matcher(evidence.words())
                .find();
        boolean holds = evidence.kind() == Kind.SHARE ? whole : inWords;
        return holds ? Optional.empty() : Optional.of(mismatch(stated, Optional.empty(), ""));
    }

    private Optional<ProseFault> number(Stated stated) {
        boolean digit = Character.isDigit(sentence.passage().text().charAt(stated.numberStart())) || stated.signed();
        boolean named = Pattern.compile("\\p{L}\\s$")
                        .matcher(sentence.passage().text().substring(link.start(), stated.start()))
                        .find()
                && stated.first().scale() == 0;
        Figure figure = evidence.figure();
        return switch (evidence.kind()) {
            case RATIO -> digit ? plain(stated, turned()) : Optional.empty();
            case TREND -> digit ? exponent(stated) : Optional.empty();
            case SHARE -> {
                boolean counted = stated.first().doubleValue()
                                == evidence.count().successes()
                        || stated.first().doubleValue() == evidence.count().total();
                yield counted || !digit ? Optional.empty() : Optional.of(mismatch(stated, Optional.empty(), ""));
            }
            default -> {
                if (figure.unit().dimension().equals(Unit.ONE.dimension())
                        && figure.value().isPresent()
                        && !named) {
                    yield plain(stated, figure);
                }
                yield digit && !named
                        ? Optional.of(mismatch(
                                stated, Optional.empty(), sentence.context().say("prose.since-number-without-unit")))
                        : Optional.empty();
            }
        };
    }

    private Optional<ProseFault> exponent(Stated stated) {
        return evidence.second().isPresent()
                ? plain(stated, evidence.second().get())
                : Optional.of(
                        mismatch(stated, Optional.empty(), sentence.context().say("prose.since-no-exponent")));
    }

    private Optional<ProseFault> quantity(Stated stated) {
        return switch (evidence.kind()) {
            case DIFFERENCE, TIME_UNTIL -> signed(stated, evidence.figure());
            case RATIO, SHARE ->
                Optional.of(
                        mismatch(stated, Optional.empty(), sentence.context().say("prose.since-figure-without-unit")));
            default -> plain(stated, evidence.figure());
        };
    }

    private Figure turned() {
        return orientation.base() == Base.TURNED ? evidence.figure().inverse() : evidence.figure();
    }

    /** The sign that words give; zero if none does. */
    private int claimedSign() {
        boolean own = directions.stream().anyMatch(this::isOwn);
        int sum = directions.stream()
                .filter(d -> !own || isOwn(d))
                .mapToInt(d -> Directions.sign(d.direction(), evidence).orElse(0))
                .sum();
        return Integer.signum(sum);
    }

    private boolean isOwn(At direction) {
        return link.start() <= direction.start() && direction.end() <= link.end();
    }

    /** A figure whose sign is carried by a word, by a sign, or by neither where it is positive. */
    private Optional<ProseFault> signed(Stated stated, Figure figure) {
        Figure oriented = orientation.base() == Base.TURNED && evidence.kind() != Kind.RATIO
                ? figure.scaled(-1, 0, figure.unit())
                : figure;
        int claimed = wrongWay ? sign : claimedSign();
        boolean apart = sentence.has(Cue.APART) && sentence.language().apart.isIn(sentence.text());
        if (claimed == 0 && apart && !stated.signed()) {
            claimed = sign;
        }
        return plain(stated, claimed < 0 && !stated.signed() ? oriented.scaled(-1, 0, figure.unit()) : oriented);
    }

    private Optional<ProseFault> plain(Stated stated, Figure figure) {
        Optional<Figure> inUnit = FigureMatch.in(stated.unit(), figure);
        if (inUnit.isEmpty()) {
            return Optional.of(mismatch(
                    stated,
                    Optional.empty(),
                    sentence.context()
                            .say("prose.since-other-unit", stated.unit().symbol())));
        }
        boolean bound = stated.bound() == Stated.Bound.LOWER || stated.bound() == Stated.Bound.UPPER;
        boolean measured = evidence.kind() != Kind.GIVEN && evidence.kind() != Kind.PART && evidence.kind() != Kind.RUN;
        boolean noInterval = figure.low().isEmpty() && figure.high().isEmpty();
        if (bound && measured && noInterval) {
            return Optional.of(
                    mismatch(stated, Optional.empty(), sentence.context().say("prose.since-no-interval")));
        }
        return FigureMatch.holds(stated, inUnit.get()) ? Optional.empty() : Optional.of(mismatch(stated, inUnit, ""));
    }

    private ProseFault mismatch(Stated stated, Optional<Figure> figure, String why) {
        return fault(LinkCheck.NUMBER_MISMATCH, stated, figure, why);
    }

    /** Names what is written, what is computed, and the words that would be right. */
    private ProseFault fault(String rule, Stated stated, Optional<Figure> figure, String why) {
        String text = sentence.passage().text();
        String written = text.substring(stated.start(), stated.end());
        String computed = sentence.context().figures().computed(evidence);
        Optional<String> number = figure.flatMap(f -> FigureMatch.right(stated, f, scanner));
        boolean plainNumber = stated.shape() != Shape.COUNT
                && (stated.shape() != Shape.MULTIPLE || Character.isDigit(text.charAt(stated.numberStart())));
        String message = why.isEmpty()
                ? sentence.context().say("prose.does-not-hold", written)
                : sentence.context().say("prose.does-not-hold-since", written, why);
        if (number.isPresent() && plainNumber) {
            int from = stated.numberStart();
            String right =
                    text.substring(link.start(), from) + number.get() + text.substring(stated.numberEnd(), link.end());
            return new ProseFault(
                    rule,
                    sentence.place(stated.numberStart(), stated.end()),
                    message,
                    computed,
                    sentence.context().say("prose.write", right.strip()),
                    sentence.correction(from, stated.numberEnd(), number.get()));
        }
        Form form =
                rule.equals(LinkCheck.PERCENT_WITHOUT_BASE) && evidence.kind() == Kind.RATIO ? Form.WORDS : Form.VALUE;
        String right = sentence.context().figures().of(evidence, form);
        return new ProseFault(
                rule,
                sentence.place(stated.numberStart(), stated.end()),
                message,
                computed,
                sentence.context().say("prose.write-or-empty", right),
                sentence.correction(link.start(), link.end(), right));
    }
}
