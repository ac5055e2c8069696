package org.evenhand.measure;

import org.evenhand.quantity.Unit;

/**
 * The exponential approach that was fitted to a signal.
 *
 * @param plateau where it leads, in the unit
 * @param plateauUncertainty standard uncertainty of the fit alone: a lower bound, since residuals of a series resemble
 *     their neighbours
 * @param timeConstantS τ in seconds
 * @param timeConstantUncertaintyS standard uncertainty of τ, a lower bound as well
 * @param remaining what was still to come at the end of the log; signed, in the unit of a difference
 * @param timeConstantsSeen how many time constants the log is long; below one the plateau is not to be trusted
 * @param unit of the plateau
 */
public record ApproachFacts(
        double plateau,
        double plateauUncertainty,
        double timeConstantS,
        double timeConstantUncertaintyS,
        double remaining,
        double timeConstantsSeen,
        Unit unit) {

    ApproachFacts in(Unit other) {
        double f = unit.differenceTo(other).fast().apply(1);
        return new ApproachFacts(
                unit.to(other).fast().apply(plateau),
                plateauUncertainty * f,
                timeConstantS,
                timeConstantUncertaintyS,
                remaining * f,
                timeConstantsSeen,
                other);
    }
}
