package org.evenhand.page.view;

import java.util.List;
import java.util.Optional;

/**
 * A leading figure, with all that it must never be shown without.
 *
 * @param label what it is of, in a few words
 * @param value with its unit, such as "−31.4 K" or "not shown"
 * @param interval in words, such as "95 % interval −32.6 K to −30.2 K"; empty if none exists
 * @param count n and what it counts, such as "n = 5 and 5 runs"
 * @param base named base of a percentage or a ratio; empty if it has none
 * @param evidence to the row in the evidence table
 * @param caveats worst first
 */
public record Figure(
        String label,
        String value,
        String interval,
        String count,
        String base,
        Optional<Link> evidence,
        List<Caveat> caveats) {
    public Figure {
        caveats = List.copyOf(caveats);
    }
}
