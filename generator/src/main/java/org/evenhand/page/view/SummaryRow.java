package org.evenhand.page.view;

import java.util.List;

/**
 * One level's figure. An absent value is empty, and the page shows a dash for it.
 *
 * @param id as {@link Address#level} forms it
 * @param level its name
 * @param n how many
 * @param counts what n counts, such as "runs" or "specimens"
 * @param mean the value, or words that stand for it, such as "> 45"
 * @param expanded expanded uncertainty, without sign
 * @param low lower end of the interval
 * @param high upper end of the interval
 * @param typeA standard uncertainty from repeats
 * @param typeB standard uncertainty from instruments
 * @param origin empty if measured; else "stated", "external" or "estimated"
 * @param runs the runs behind it
 * @param caveats that travel with it
 */
public record SummaryRow(
        String id,
        String level,
        String n,
        String counts,
        String mean,
        String expanded,
        String low,
        String high,
        String typeA,
        String typeB,
        String origin,
        List<Link> runs,
        List<Caveat> caveats) {
    public SummaryRow {
        runs = List.copyOf(runs);
        caveats = List.copyOf(caveats);
    }
}
