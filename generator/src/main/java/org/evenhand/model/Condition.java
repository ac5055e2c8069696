package org.evenhand.model;

import java.util.Optional;
import org.evenhand.quantity.Quantity;

/**
 * A condition that a sample fulfils or not.
 *
 * @param column of the log
 * @param below whether the column must be below the threshold; above it, if not
 * @param threshold what it is held against
 * @param dwell for how long it must hold; absent if a single sample will do
 */
public record Condition(String column, boolean below, Threshold threshold, Optional<Quantity> dwell) {

    /** Whether it holds when something drops below what was set, as a clock does that is held back. */
    public boolean isDrop() {
        return below && threshold instanceof Threshold.OfSetting;
    }
}
