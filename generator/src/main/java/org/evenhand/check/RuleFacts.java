package org.evenhand.check;

import java.util.Optional;
import org.evenhand.model.Severity;

/**
 * What is fixed about a rule.
 *
 * @param id its name in messages, waivers and addresses
 * @param group under which it is listed
 * @param severity of its findings, unless the rule says that some are graver or slighter
 * @param finds in one line, what it finds
 * @param limit its default, if it has one
 */
public record RuleFacts(String id, Group group, Severity severity, String finds, Optional<DefaultLimit> limit) {

    /**
     * A limit that methods and publications may replace.
     *
     * @param value as a quantity is written, "2 K"
     * @param origin a standard that it follows, or that it is common practice without a published source
     */
    public record DefaultLimit(String value, String origin) {}

    /** How the origin of a limit is worded where no source is published. */
    public static final String COMMON_PRACTICE = "tool default; common practice, no published source";

    public static RuleFacts of(String id, Group group, Severity severity, String finds) {
        return new RuleFacts(id, group, severity, finds, Optional.empty());
    }

    public RuleFacts withLimit(String value, String origin) {
        return new RuleFacts(id, group, severity, finds, Optional.of(new DefaultLimit(value, origin)));
    }
}
