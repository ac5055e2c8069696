package org.evenhand.log;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the name that was probably meant. */
final class NearName {

    private NearName() {}

    /** The candidate with the fewest changed letters, if those are at most a third of the name; the first of equals. */
    static Optional<String> of(String wanted, Collection<String> candidates) {
        String best = null;
        int least = Math.max(1, wanted.length() / 3) + 1;
        for (String candidate : candidates) {
            if (candidate.length() > 100) {
                continue;
            }
            int distance = distance(wanted.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
            if (distance < least) {
                least = distance;
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Letters to insert, delete or replace. Source: Wagner and Fischer, J. ACM 21 (1974) 168. */
    private static int distance(String left, String right) {
        int[] before = new int[right.length() + 1];
        for (int j = 0; j < before.length; j++) {
            before[j] = j;
        }
        for (int i = 1; i <= left.length(); i++) {
            int[] now = new int[before.length];
            now[0] = i;
            for (int j = 1; j < now.length; j++) {
                int replaced = before[j - 1] + (left.charAt(i - 1) == right.charAt(j - 1) ? 0 : 1);
                now[j] = Math.min(replaced, 1 + Math.min(before[j], now[j - 1]));
            }
            before = now;
        }
        return before[right.length()];
    }
}
