package org.evenhand.page.view;

/**
 * A value noted by hand or by the workload.
 *
 * @param name of the reading
 * @param value with its unit
 * @param origin empty if measured; else "stated", "external" or "estimated"
 */
public record Reading(String name, String value, String origin) {}
