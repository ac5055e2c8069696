package org.evenhand.check;

import java.util.Optional;
import org.evenhand.model.Severity;
import org.evenhand.words.Words;

/**
 * What is fixed about a rule.
 *
 * @param id its name in messages, waivers and addresses
 * @param group under which it is listed
 * @param severity of its findings, unless the rule says that some are graver or slighter
 * @param limit its default, if it has one
 */
public record RuleFacts(String id, Group group, Severity severity, Optional<DefaultLimit> limit) {

    /**
     * A limit that methods and publications may replace.
     *
     * @param value as a quantity is written, "2 K"
     * @param origin what words call where it comes from: a standard that it follows, or common practice
     */
    public record DefaultLimit(String value, String origin) {

        /** Where it comes from, in words. */
        public String origin(Words words) {
            return words.say("rule-origin." + origin);
        }
    }

    /** The origin of a limit where no source is published. */
    public static final String COMMON_PRACTICE = "common-practice";

    public static RuleFacts of(String id, Group group, Severity severity) {
        return new RuleFacts(id, group, severity, Optional.empty());
    }

    /** In one line, what it finds. */
    public String finds(Words words) {
        return words.say("rule." + id);
    }

    /** What it is called at the head of its findings. */
    public String name(Words words) {
        return words.say("rule-name." + id);
    }

    public RuleFacts withLimit(String value, String origin) {
        return new RuleFacts(id, group, severity, Optional.of(new DefaultLimit(value, origin)));
    }
}
