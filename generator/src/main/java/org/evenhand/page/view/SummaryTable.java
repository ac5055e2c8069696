package org.evenhand.page.view;

import java.util.List;

/**
 * The level summaries of one measurand. Values are written, not numbers: rounded as the page prints them.
 *
 * @param id of the table on the page
 * @param measurand its title
 * @param unit symbol, empty for a pure number
 * @param statistic what the value is and how its interval is made, in one sentence
 * @param confidence such as "95 %"
 * @param rows one per level, in the order of the study
 */
public record SummaryTable(
        String id, String measurand, String unit, String statistic, String confidence, List<SummaryRow> rows) {
    public SummaryTable {
        rows = List.copyOf(rows);
    }
}
