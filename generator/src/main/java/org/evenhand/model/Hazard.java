package org.evenhand.model;

/** What in a method can hurt somebody; each brings its caution onto the pages. */
public enum Hazard {
    HOT_SURFACE,
    MAINS,
    BATTERY,
    RAISED_VOLTAGE,
    ROTATING_FAN,
    LOUD_SOUND
}
