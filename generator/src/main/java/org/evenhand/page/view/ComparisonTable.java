package org.evenhand.page.view;

import java.util.List;

/**
 * The comparisons of a study.
 *
 * @param confidence of the intervals, such as "95 %"
 * @param method the decision rule in one or two sentences
 * @param rows in the order of the study
 */
public record ComparisonTable(String confidence, String method, List<ComparisonRow> rows) {
    public ComparisonTable {
        rows = List.copyOf(rows);
    }
}
