package org.evenhand.page.view;

import java.util.List;

/**
 * One comparison of two levels, or another estimate of the study, with its verdict in words.
 *
 * @param id as {@link Address#comparison} forms it
 * @param subject what is compared, such as "Settled rise: spreader against none"
 * @param estimate written; empty if there is none
 * @param unit of estimate, low and high; empty for a pure number
 * @param low lower end of the interval; empty if there is none
 * @param high upper end of the interval; empty if there is none
 * @param verdict one of {@code differs}, {@code same-within-margin}, {@code not-shown}, {@code not-comparable};
 *     empty for an estimate that has none
 * @param words the verdict as a sentence about this comparison
 * @param base named base of a percentage or a ratio; empty if it has none
 * @param particulars degrees of freedom, p, margin, medians and so on
 * @param runs the runs behind it
 * @param caveats that travel with it
 */
public record ComparisonRow(
        String id,
        String subject,
        String estimate,
        String unit,
        String low,
        String high,
        String verdict,
        String words,
        String base,
        List<Entry> particulars,
        List<Link> runs,
        List<Caveat> caveats) {
    public ComparisonRow {
        particulars = List.copyOf(particulars);
        runs = List.copyOf(runs);
        caveats = List.copyOf(caveats);
    }
}
