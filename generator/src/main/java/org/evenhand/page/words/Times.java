package org.evenhand.page.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.Verdict;
import org.evenhand.page.Sentence;
import org.evenhand.quantity.Figures;
import org.evenhand.statistics.Interval;
import org.evenhand.statistics.KaplanMeier;
import org.evenhand.statistics.LogRank;
import org.evenhand.words.Words;

/** Times until an event, in sentences. */
public final class Times {

    private static final double CONFIDENCE = 0.95;
    private static final double ALPHA = 0.05;

    private final StudyNames names;
    private final Words words;

    public Times(StudyNames names) {
        this.names = names;
        this.words = names.words();
    }

    String sentence(ComparisonResult.Survival r, Verdict verdict) {
        if (r.test().isEmpty()) {
            return Sentence.of(String.join("; ", r.why()));
        }
        List<String> medians = new ArrayList<>();
        r.levels().forEach(c -> medians.add(names.under(c.level()) + " " + median(r, c)));
        String found = words.say("verdict.median-time", String.join(", ", medians));
        if (verdict == Verdict.DIFFERS) {
            LogRank test = r.test().get();
            boolean later = test.observed().get(0) < test.expected().get(0);
            String first = names.under(r.levels().get(0).level());
            String second = names.under(r.levels().get(1).level());
            return words.say(later ? "verdict.later" : "verdict.sooner", first, second) + " " + found;
        }
        return tooFew(r).orElseGet(() -> words.say("verdict.no-difference-of-times")) + " " + found;
    }

    /** The median with its interval: "8.1 min (7.8 min to 8.5 min)", "8.1 min (from 7.8 min, without an upper end)", "not reached within 45 min". */
    public String median(ComparisonResult.Survival r, ComparisonResult.Curve curve) {
        Written written = medianFigure(r, curve, words);
        if (written.isAbsent()) {
            return words.say("verdict.not-reached", end(r, curve, words));
        }
        return written.withUnit() + (written.hasInterval() ? " (" + written.interval() + ")" : open(r, curve));
    }

    /** An interval with one end, as few times give: " (from 7.8 min, without an upper end)"; empty if it has none. */
    private String open(ComparisonResult.Survival r, ComparisonResult.Curve curve) {
        OptionalDouble low = curve.curve().medianLow(CONFIDENCE);
        OptionalDouble high = curve.curve().medianHigh(CONFIDENCE);
        if (low.isPresent()) {
            return " (" + words.say("verdict.from", time(low.getAsDouble(), r)) + ")";
        }
        return high.isPresent() ? " (" + words.say("verdict.up-to", time(high.getAsDouble(), r)) + ")" : "";
    }

    private String time(double time, ComparisonResult.Survival r) {
        return Written.alone(time, r.unit().symbol(), words).withUnit();
    }

    /** The median as a figure; without a value where it was not reached. */
    public static Written medianFigure(ComparisonResult.Survival r, ComparisonResult.Curve curve, Words words) {
        KaplanMeier km = curve.curve();
        OptionalDouble low = km.medianLow(CONFIDENCE);
        OptionalDouble high = km.medianHigh(CONFIDENCE);
        Optional<Interval> interval = low.isPresent() && high.isPresent()
                ? Optional.of(new Interval(low.getAsDouble(), high.getAsDouble()))
                : Optional.empty();
        return Written.of(km.median(), interval, r.unit().symbol(), words);
    }

    /** How long the last one was watched: "45 min". */
    public static String end(ComparisonResult.Survival r, ComparisonResult.Curve curve, Words words) {
        List<KaplanMeier.Step> steps = curve.curve().steps();
        return Written.alone(steps.get(steps.size() - 1).time(), r.unit().symbol(), words)
                .withUnit();
    }

    /** The exact test cannot fall below one arrangement among all, or two where the sides are of one size. */
    private Optional<String> tooFew(ComparisonResult.Survival r) {
        int first = r.levels().get(0).curve().size();
        int second = r.levels().get(1).curve().size();
        double arrangements = 1;
        for (int i = 1; i <= first; i++) {
            arrangements = arrangements * (second + i) / i;
        }
        double least = (first == second ? 2 : 1) / arrangements;
        if (least < ALPHA) {
            return Optional.empty();
        }
        String p = "p" + Figures.NO_BREAK_SPACE + "=" + Figures.NO_BREAK_SPACE + PValues.number(least, words);
        String counted = Counting.word(r.levels().get(0).counts(), second, words);
        return Optional.of(words.say("verdict.no-difference-of-times-too-few", first, second, counted, p));
    }
}
