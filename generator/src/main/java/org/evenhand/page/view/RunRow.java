package org.evenhand.page.view;

import java.util.List;

/**
 * One run's values.
 *
 * @param id as {@link Address#run(String)} forms it
 * @param run to its page
 * @param level of the factor
 * @param specimen its id
 * @param started date and time, UTC
 * @param outcome {@code completed}, {@code stopped}, {@code failed} or {@code excluded}
 * @param values as many as the table has columns, in their order
 * @param caveats that travel with it
 */
public record RunRow(
        String id,
        Link run,
        String level,
        String specimen,
        String started,
        String outcome,
        List<RunValue> values,
        List<Caveat> caveats) {
    public RunRow {
        values = List.copyOf(values);
        caveats = List.copyOf(caveats);
    }
}
