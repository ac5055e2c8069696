package org.evenhand.page.view;

import java.util.List;

/**
 * A level with its published figure.
 *
 * @param key the same for one level of one answer in every measurand
 * @param level within its study, leading to its figure: "cooling: spreader"
 * @param answer the question that it belongs to
 * @param n what stands behind it
 * @param value without unit
 * @param expanded expanded uncertainty U; may be empty
 * @param low lower end of the interval; may be empty
 * @param high upper end of the interval; may be empty
 * @param caveats of the figure
 */
public record ComparedLevel(
        String key,
        Link level,
        Link answer,
        String n,
        String value,
        String expanded,
        String low,
        String high,
        List<Caveat> caveats) {
    public ComparedLevel {
        caveats = List.copyOf(caveats);
    }
}
