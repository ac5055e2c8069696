package org.evenhand.model;

import org.evenhand.quantity.Unit;

/**
 * A quantity intended to be measured.
 *
 * @param id its name within the method
 * @param title as readers see it
 * @param reduction how a run yields it
 * @param unit in which it is given
 * @param better which way is better
 * @param median whether levels are summarised by their median too, beside the mean
 */
public record Measurand(String id, String title, Reduction reduction, Unit unit, Better better, boolean median) {

    /** Whether its values are numbers, and not observations or places on a scale. */
    public boolean isNumeric() {
        return !(reduction instanceof Reduction.Observation) && !(reduction instanceof Reduction.OnScale);
    }
}
