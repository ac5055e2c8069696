package org.evenhand.read;

import org.evenhand.model.Limits;
import org.evenhand.model.Place;
import org.evenhand.model.Quota;
import org.evenhand.words.QuotaWords;
import org.evenhand.words.Words;

/** A file that cannot be turned into a tree: where reading stopped, why, and what to do. */
final class UnreadableException extends Exception {

    private static final long serialVersionUID = 1L;

    private final String rule;
    private final transient Place place;
    private final String remedy;

    UnreadableException(String rule, Place place, String message, String remedy) {
        super(message, null, false, false);
        this.rule = rule;
        this.place = place;
        this.remedy = remedy;
    }

    /** A file, or a part of it, is larger than is read. */
    static UnreadableException tooMuch(Place place, String message, Limits limits, Quota quota, String remedy) {
        return new UnreadableException(
                Rules.SIZE_LIMIT,
                place,
                message + "; " + QuotaWords.read(limits, quota, Words.english()),
                remedy + ", " + QuotaWords.raising(quota, Words.english()));
    }

    void reportTo(Faults faults) {
        faults.add(rule, place, getMessage(), remedy);
    }
}
