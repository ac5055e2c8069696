package org.evenhand.page.words;

import java.util.Locale;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.Counts;

/** How many of what. */
public final class Counting {

    private Counting() {}

    /** "1 run", "5 runs". */
    public static String of(long number, String singular) {
        return number + " " + (number == 1 ? singular : plural(singular));
    }

    /** What n counts, in the number that fits: "specimen" for 1. */
    public static String word(Counts counts, long number) {
        String singular = counts == Counts.SPECIMENS ? "specimen" : "run";
        return number == 1 ? singular : plural(singular);
    }

    /** "n = 3 specimens (6 runs)"; the runs are left out where n counts them. */
    public static String n(int n, Counts counts, int runs) {
        String behind = counts == Counts.SPECIMENS && runs != n ? " (" + of(runs, "run") + ")" : "";
        return "n = " + n + " " + word(counts, n) + behind;
    }

    /** "n = 3 and 3 specimens", "n = 5 pairs of specimens". */
    public static String n(ComparisonResult.Numbers numbers) {
        if (numbers.pairs()) {
            String pairs = of(numbers.level(), "pair");
            return "n = " + pairs + (numbers.counts() == Counts.SPECIMENS ? ", each of one specimen" : "");
        }
        return "n = " + numbers.level() + " and " + numbers.against() + " " + word(numbers.counts(), numbers.against());
    }

    /** "none", "one", … "twelve", then digits: for numbers within a sentence. */
    public static String inWords(int number) {
        String[] words = {
            "none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"
        };
        return number >= 0 && number < words.length ? words[number] : Integer.toString(number);
    }

    private static String plural(String singular) {
        return singular.toLowerCase(Locale.ROOT).endsWith("s") ? singular : singular + "s";
    }
}
