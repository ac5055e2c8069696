package org.evenhand.page.view;

/**
 * One value of one run.
 *
 * @param id as {@link Address#value} forms it
 * @param value written without unit; empty if there is none
 * @param uncertainty standard uncertainty from the instruments, without sign; empty if unknown
 * @param mark what makes it other than a measured value: "censored", "stated", "estimated"; empty for none
 */
public record RunValue(String id, String value, String uncertainty, String mark) {}
