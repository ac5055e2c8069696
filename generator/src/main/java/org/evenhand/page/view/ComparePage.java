package org.evenhand.page.view;

import java.util.List;

/**
 * Which levels of which answers may be compared.
 *
 * @param frame the page's surroundings
 * @param measurands that at least two levels have
 */
public record ComparePage(Frame frame, List<ComparedMeasurand> measurands) {
    public ComparePage {
        measurands = List.copyOf(measurands);
    }
}
