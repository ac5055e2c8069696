package org.evenhand.model;

/** Where along the supply a power is measured; the four are different measurands. */
public enum Boundary {
    MAINS,
    DC_INPUT,
    BOARD_RAIL,
    ON_CHIP
}
