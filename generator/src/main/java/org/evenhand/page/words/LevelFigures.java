package org.evenhand.page.words;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.evenhand.compare.LevelSummary;
import org.evenhand.quantity.Figures;

/** The figure of one level as pages write it. */
public final class LevelFigures {

    private LevelFigures() {}

    /** Mean with its interval; without a value where there is none, or a value may not be averaged. */
    public static Written of(LevelSummary summary) {
        return Written.of(summary.mean(), summary.interval(), summary.unit().symbol());
    }

    /** What stands in place of a mean, without unit: "> 45", "9 yes, 1 no"; the mean itself where there is one. */
    public static String value(LevelSummary summary) {
        if (!summary.words().isEmpty()) {
            return judgements(summary.words());
        }
        if (summary.censored() > 0 && summary.censored() == summary.n()) {
            double least = summary.values().stream()
                    .mapToDouble(Double::doubleValue)
                    .min()
                    .orElseThrow();
            return ">" + Figures.NO_BREAK_SPACE + Figures.value(least, 0);
        }
        return of(summary).value();
    }

    /** The figure for a label: "31.2 ± 0.9 K", "> 45 min", "10.51 W, single run"; never empty. */
    public static String label(LevelSummary summary) {
        if (summary.n() == 0) {
            return "no value";
        }
        String value = value(summary);
        if (!summary.words().isEmpty()) {
            return value;
        }
        if (value.isEmpty()) {
            String bounds = summary.atMost() > 0 ? " are upper bounds" : " censored";
            return "not averaged: " + Math.max(summary.censored(), summary.atMost()) + " of " + summary.n() + bounds;
        }
        Written written = of(summary);
        if (written.isAbsent()) {
            return written.withUnit(value);
        }
        return written.withUncertainty() + (summary.n() == 1 ? ", single " + Counting.word(summary.counts(), 1) : "");
    }

    /** "6 silent", "9 yes, 1 no"; words that nobody used are left out. */
    public static String judgements(Map<String, Integer> words) {
        List<String> used = words.entrySet().stream()
                .filter(e -> e.getValue() > 0)
                .map(e -> e.getValue() + " " + e.getKey())
                .collect(Collectors.toList());
        return String.join(", ", used);
    }
}
