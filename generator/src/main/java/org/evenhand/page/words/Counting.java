package org.evenhand.page.words;

import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.Counts;
import org.evenhand.words.Words;

/** How many of what. */
public final class Counting {

    private Counting() {}

    /**
     * "1 run", "5 runs".
     *
     * @param noun one of run, specimen, pair, failure, value, level and ratio
     */
    public static String of(long number, String noun, Words words) {
        return words.say("figure.count-" + noun, number);
    }

    /** What n counts, as keys name it. */
    public static String noun(Counts counts) {
        return counts == Counts.SPECIMENS ? "specimen" : "run";
    }

    /** What n counts, in the number that fits: "specimen" for 1. */
    public static String word(Counts counts, long number, Words words) {
        return words.say("figure.word-" + noun(counts), number);
    }

    /** "n = 3 specimens (6 runs)"; the runs are left out where n counts them. */
    public static String n(int n, Counts counts, int runs, Words words) {
        return "n = " + counted(n, counts, runs, words);
    }

    /** "3 specimens (6 runs)"; the runs are left out where n counts them. */
    public static String counted(int n, Counts counts, int runs, Words words) {
        String counted = of(n, noun(counts), words);
        return counts == Counts.SPECIMENS && runs != n ? counted + " (" + of(runs, "run", words) + ")" : counted;
    }

    /** "n = 3 and 3 specimens", "n = 5 pairs of specimens". */
    public static String n(ComparisonResult.Numbers numbers, Words words) {
        if (numbers.pairs()) {
            String pairs = "n = " + of(numbers.level(), "pair", words);
            return numbers.counts() == Counts.SPECIMENS ? words.say("figure.each-of-one-specimen", pairs) : pairs;
        }
        return words.say(
                "figure.n-and", numbers.level(), numbers.against(), word(numbers.counts(), numbers.against(), words));
    }
}
