package org.evenhand.words;

import org.evenhand.model.Limits;
import org.evenhand.model.Quota;

/** How much is read at most, in words. */
public final class QuotaWords {

    private QuotaWords() {}

    /** What is counted, in the plural: "bytes of a structured file or a text". */
    public static String what(Quota quota, Words words) {
        return words.say("quota." + quota.id());
    }

    /** How much is read, to stand behind what was too much: "4000 bytes of a log are read". */
    public static String read(Limits limits, Quota quota, Words words) {
        return words.say("quota.read", limits.of(quota), what(quota, words));
    }

    /** What to do for more to be read, to stand behind another remedy. */
    public static String raising(Quota quota, Words words) {
        return words.say("quota.raising", quota.id());
    }
}
