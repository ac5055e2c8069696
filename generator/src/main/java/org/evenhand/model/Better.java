package org.evenhand.model;

/** Which way a measurand is better. */
public enum Better {
    LOWER,
    HIGHER,
    NEITHER
}
