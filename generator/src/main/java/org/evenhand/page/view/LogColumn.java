package org.evenhand.page.view;

/**
 * A column of a log at a glance. Values are written without unit, all to one decimal place.
 *
 * @param title of the column
 * @param unit symbol, empty for a pure number
 * @param instrument that it comes from; plain text if the run names none
 * @param samples how many the log has of it
 * @param first value
 * @param lowest value
 * @param mean over time
 * @param highest value
 * @param last value
 */
public record LogColumn(
        String title,
        String unit,
        Link instrument,
        String samples,
        String first,
        String lowest,
        String mean,
        String highest,
        String last) {}
