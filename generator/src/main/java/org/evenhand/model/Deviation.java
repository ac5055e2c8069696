package org.evenhand.model;

/**
 * A declared difference of a run from its method.
 *
 * @param from what it deviates from: a field of the method ("run-length") or a setting
 * @param why the reason
 */
public record Deviation(String from, String why) {}
