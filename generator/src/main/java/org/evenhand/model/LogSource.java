package org.evenhand.model;

import java.util.Map;

/**
 * Where the time series of a run lies, and how to read it.
 *
 * @param file relative to the results folder
 * @param columns by the name in the method; empty if the headers are the method's own
 * @param separator between fields
 * @param decimal the decimal marker
 * @param limits how much of it is read
 */
public record LogSource(String file, Map<String, ColumnMapping> columns, char separator, char decimal, Limits limits) {

    public LogSource {
        columns = Map.copyOf(columns);
    }

    /** Read within the usual limits. */
    public LogSource(String file, Map<String, ColumnMapping> columns, char separator, char decimal) {
        this(file, columns, separator, decimal, Limits.DEFAULT);
    }
}
