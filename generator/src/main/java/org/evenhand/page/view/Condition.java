package org.evenhand.page.view;

/**
 * A condition of the runs: what was asked for, what was held, what varied.
 *
 * @param name of the condition
 * @param required by the method; empty if it asks nothing
 * @param found over all runs, with its range
 * @param held "held", "varied", "not recorded"
 */
public record Condition(String name, String required, String found, String held) {}
