package org.evenhand.model;

/** How a run ended. */
public enum RunOutcome {
    COMPLETED,
    STOPPED,
    FAILED,
    EXCLUDED
}
