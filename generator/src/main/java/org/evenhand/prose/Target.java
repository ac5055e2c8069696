package org.evenhand.prose;

import org.evenhand.model.MeasurandId;

/** What a link in prose leads to; the pages know where that stands. */
public sealed interface Target {

    /** A row of the comparisons of a study. */
    record OfComparison(String study, String comparison) implements Target {}

    /** A row of the level summaries of a study. */
    record OfLevel(String study, String level, MeasurandId measurand) implements Target {}

    /**
     * A value of a run.
     *
     * @param study whose page shows it
     * @param run its id
     * @param measurand which value
     */
    record OfRun(String study, String run, MeasurandId measurand) implements Target {}

    /** A value that an item's record states. */
    record OfItem(String item, String limit) implements Target {}

    /** A value that a method fixes. */
    record OfMethod(String method, String field) implements Target {}
}
