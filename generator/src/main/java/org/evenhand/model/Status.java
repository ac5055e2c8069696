package org.evenhand.model;

/** Where an answer stands in its life. */
public enum Status {
    WANTED,
    DRAFT,
    FINAL,
    SUPERSEDED,
    WITHDRAWN
}
