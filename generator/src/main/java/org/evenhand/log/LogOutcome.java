package org.evenhand.log;

import java.util.List;
import java.util.OptionalLong;
import org.evenhand.model.Finding;

/**
 * What became of the reading of a log.
 *
 * @param usable whether samples were delivered that measurands can be made of
 * @param columns the columns of the method that the log has, in the method's order
 * @param samples how many were delivered
 * @param sha256 of the file's bytes as they are stored, in hexadecimal; empty if they could not be read to the end
 * @param numbersFrom how many bytes (of the unpacked file) come before the first line, if all lines from there on hold
 *     nothing but plain numbers and separators; absent if there is anything else among them
 * @param findings in the order of their places
 */
public record LogOutcome(
        boolean usable,
        List<String> columns,
        long samples,
        String sha256,
        OptionalLong numbersFrom,
        List<Finding> findings) {

    public LogOutcome {
        columns = List.copyOf(columns);
        findings = List.copyOf(findings);
    }
}
