package org.evenhand.read;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds the known name that was probably meant. */
public final class NearMiss {

    private NearMiss() {}

    /**
     * The nearest of the known names, if it is near enough: at most one letter in three wrong.
     *
     * @param written what was found
     * @param known what would have been right
     */
    public static Optional<String> among(String written, Collection<String> known) {
        String best = null;
        int least = Math.max(1, written.length() / 3) + 1;
        for (String candidate : known) {
            int distance = distance(written.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT), least);
            if (distance < least) {
                least = distance;
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Words for a remedy: the near miss, or all that is known if that is little. */
    public static String suggestion(String written, Collection<String> known) {
        Optional<String> near = among(written, known);
        if (near.isPresent()) {
            return "did you mean “" + near.get() + "”?";
        }
        if (known.isEmpty()) {
            return "there is none yet";
        }
        String some = known.stream().limit(24).collect(Collectors.joining(", "));
        return "known are: " + some + (known.size() > 24 ? " and " + (known.size() - 24) + " more" : "");
    }

    /** Optimal string alignment distance, given up once it reaches the limit. */
    private static int distance(String a, String b, int limit) {
        if (Math.abs(a.length() - b.length()) >= limit || a.length() > 64 || b.length() > 64) {
            return limit;
        }
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int changed = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + changed);
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
