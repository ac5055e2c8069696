package org.evenhand.log;

import java.util.List;
import org.evenhand.model.Finding;

/**
 * What became of the reading of a log.
 *
 * @param usable whether samples were delivered that measurands can be made of
 * @param columns the columns of the method that the log has, in the method's order
 * @param samples how many were delivered
 * @param sha256 of the file's bytes as they are stored, in hexadecimal; empty if they could not be read to the end
 * @param findings in the order of their places
 */
public record LogOutcome(boolean usable, List<String> columns, long samples, String sha256, List<Finding> findings) {

    public LogOutcome {
        columns = List.copyOf(columns);
        findings = List.copyOf(findings);
    }
}
