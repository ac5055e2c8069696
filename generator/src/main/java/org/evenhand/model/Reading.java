package org.evenhand.model;

import org.evenhand.quantity.Censored;
import org.evenhand.quantity.Quantity;

/** A value noted by hand or by the workload. */
public sealed interface Reading {

    /** A number with its unit. */
    record Measured(Quantity quantity) implements Reading {}

    /** An event that did not happen while it was watched for. */
    record NotReached(Censored censored) implements Reading {}

    /** A judgement of yes or no. */
    enum Observed implements Reading {
        YES,
        NO,
        PARTLY
    }

    /**
     * A place on an ordered scale.
     *
     * @param word as the scale has it
     * @param place from 0 for the least
     */
    record OnScale(String word, int place) implements Reading {}
}
