package org.evenhand.page.view;

import java.util.List;

/**
 * A measurand with all levels that have a figure of it.
 *
 * @param id of its section on the page
 * @param title of the measurand
 * @param unit symbol; empty if it has none
 * @param method by which it is measured
 * @param levels of all answers that stand
 * @param leftOut how many older levels are not held against each other, since there are too many; "0" for none
 * @param pairs each two levels once
 */
public record ComparedMeasurand(
        String id,
        String title,
        String unit,
        Link method,
        List<ComparedLevel> levels,
        String leftOut,
        List<ComparedPair> pairs) {
    public ComparedMeasurand {
        levels = List.copyOf(levels);
        pairs = List.copyOf(pairs);
    }
}
