package org.evenhand.page.words;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.evenhand.compare.LevelSummary;
import org.evenhand.model.Reading;
import org.evenhand.quantity.Figures;
import org.evenhand.words.Judgement;
import org.evenhand.words.Words;

/** The figure of one level as pages write it. */
public final class LevelFigures {

    private LevelFigures() {}

    /** Mean with its interval; without a value where there is none, or a value may not be averaged. */
    public static Written of(LevelSummary summary, Words words) {
        return Written.of(summary.mean(), summary.interval(), summary.unit().symbol(), words);
    }

    /** What stands in place of a mean, without unit: "> 45", "9 yes, 1 no"; the mean itself where there is one. */
    public static String value(LevelSummary summary, Words words) {
        if (!summary.words().isEmpty()) {
            return judgements(summary.words(), words);
        }
        if (summary.censored() > 0 && summary.censored() == summary.n()) {
            double least = summary.values().stream()
                    .mapToDouble(Double::doubleValue)
                    .min()
                    .orElseThrow();
            return ">" + Figures.NO_BREAK_SPACE + words.number(Figures.value(least, 0));
        }
        return of(summary, words).value();
    }

    /** The figure for a label: "31.2 ± 0.9 K", "> 45 min", "10.51 W, single run"; never empty. */
    public static String label(LevelSummary summary, Words words) {
        if (summary.n() == 0) {
            return words.say("figure.no-value");
        }
        String value = value(summary, words);
        if (!summary.words().isEmpty()) {
            return value;
        }
        if (value.isEmpty()) {
            return words.say(
                    summary.atMost() > 0 ? "figure.not-averaged-upper-bounds" : "figure.not-averaged-censored",
                    Math.max(summary.censored(), summary.atMost()),
                    summary.n());
        }
        Written written = of(summary, words);
        if (written.isAbsent()) {
            return written.withUnit(value);
        }
        return summary.n() == 1
                ? words.say("figure.single-" + Counting.noun(summary.counts()), written.withUncertainty())
                : written.withUncertainty();
    }

    /** "6 silent", "9 yes, 1 no"; words that nobody used are left out. */
    public static String judgements(Map<Reading, Integer> judged, Words words) {
        List<String> used = judged.entrySet().stream()
                .filter(e -> e.getValue() > 0)
                .map(e -> e.getValue() + " " + Judgement.of(e.getKey(), words))
                .collect(Collectors.toList());
        return String.join(", ", used);
    }
}
