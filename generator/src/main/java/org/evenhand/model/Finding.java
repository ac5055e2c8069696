package org.evenhand.model;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;

/**
 * What a check says.
 *
 * @param rule the rule's name, "ambient-missing"
 * @param severity what it does to what is published
 * @param outcome found, not checkable, or waived
 * @param place where in the results folder
 * @param subject what it is about
 * @param message what is wrong, with the value found
 * @param limit what the value was held against, if anything
 * @param consequence what it means for a reader of the figures; may be empty
 * @param remedy what to do
 * @param waiver who waived it and why, where that is so
 */
public record Finding(
        String rule,
        Severity severity,
        Outcome outcome,
        Place place,
        Subject subject,
        String message,
        Optional<Limit> limit,
        String consequence,
        String remedy,
        Optional<Waiver> waiver)
        implements Comparable<Finding> {

    private static final Comparator<Finding> ORDER = Comparator.comparing(Finding::place)
            .thenComparing(Finding::severity)
            .thenComparing(Finding::rule)
            .thenComparing(Finding::message)
            .thenComparing(f -> f.subject().toString());

    public Finding {
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(remedy, "remedy");
    }

    /** A fault in a file: what is wrong, and what to do. */
    public static Finding fault(
            String rule, Severity severity, Place place, Subject subject, String message, String remedy) {
        return new Finding(
                rule, severity, Outcome.FOUND, place, subject, message, Optional.empty(), "", remedy, Optional.empty());
    }

    /** The same finding, waived. */
    public Finding waivedBy(Waiver by) {
        return new Finding(
                rule, severity, Outcome.WAIVED, place, subject, message, limit, consequence, remedy, Optional.of(by));
    }

    /** The same finding in other words. */
    public Finding saying(String other) {
        return new Finding(rule, severity, outcome, place, subject, other, limit, consequence, remedy, waiver);
    }

    /** Whether it keeps what it is about from being published. */
    public boolean withholds() {
        return outcome == Outcome.FOUND && severity == Severity.WITHHOLD;
    }

    @Override
    public int compareTo(Finding other) {
        return ORDER.compare(this, other);
    }
}
