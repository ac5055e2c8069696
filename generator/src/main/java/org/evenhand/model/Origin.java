package org.evenhand.model;

/** Whose figures these are. */
public enum Origin {
    MEASURED,
    /** By the maker of the item. */
    STATED,
    /** Another laboratory's. */
    EXTERNAL,
    ESTIMATED
}
