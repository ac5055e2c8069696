package org.evenhand.page.view;

/**
 * A value noted by hand or by the workload.
 *
 * @param name of the reading
 * @param value with its unit
 * @param origin empty if measured; else "stated", "external" or "estimated"
 * @param instrument that it comes from; empty text if the run names none
 */
public record Reading(String name, String value, String origin, Link instrument) {}
