package org.evenhand.page.view;

import java.util.List;

/**
 * The value of every measurand in every run of a study.
 *
 * @param columns one per measurand
 * @param rows one per run, in the stated order of the study
 */
public record RunTable(List<RunColumn> columns, List<RunRow> rows) {
    public RunTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }
}
