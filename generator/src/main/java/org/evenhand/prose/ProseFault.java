package org.evenhand.prose;

import java.util.Comparator;
import java.util.Optional;
import org.evenhand.model.Place;

/**
 * Something wrong with a text: a finding without the weight that the checks give it.
 *
 * @param rule the rule's name
 * @param place the very words
 * @param message what is wrong
 * @param computed the computed figure with its interval, or empty
 * @param remedy what to do
 * @param correction characters that would be right, where a program can tell
 */
public record ProseFault(
        String rule, Place place, String message, String computed, String remedy, Optional<Correction> correction)
        implements Comparable<ProseFault> {

    /**
     * What to put where.
     *
     * @param place the characters to replace
     * @param text what to write there
     */
    public record Correction(Place place, String text) {}

    private static final Comparator<ProseFault> ORDER = Comparator.comparing(ProseFault::place)
            .thenComparing(ProseFault::rule)
            .thenComparing(ProseFault::message);

    static ProseFault of(String rule, Place place, String message, String remedy) {
        return new ProseFault(rule, place, message, "", remedy, Optional.empty());
    }

    @Override
    public int compareTo(ProseFault other) {
        return ORDER.compare(this, other);
    }
}
