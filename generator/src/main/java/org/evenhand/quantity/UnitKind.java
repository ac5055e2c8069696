package org.evenhand.quantity;

/** What may be done with numbers of a unit. */
public enum UnitKind {
    /** A place on a scale whose zero is a convention (°C, °F): may be subtracted, never added or divided. */
    POINT,
    /** An amount, or the difference of two points (K, W, min): may be added, subtracted, multiplied and divided. */
    DIFFERENCE,
    /** A logarithm of a ratio of powers (dB): averaged by energy, never divided. */
    LEVEL
}
