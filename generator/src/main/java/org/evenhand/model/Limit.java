package org.evenhand.model;

/**
 * The limit that a value was held against.
 *
 * @param value as it is written, "2 K"
 * @param origin where it comes from: the method, the publication, or the default and what that follows
 */
public record Limit(String value, String origin) {}
