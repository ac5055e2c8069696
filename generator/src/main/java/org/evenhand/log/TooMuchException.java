package org.evenhand.log;

import java.io.IOException;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;
import org.evenhand.words.QuotaWords;
import org.evenhand.words.Words;

/** A log is larger than any that is read. */
final class TooMuchException extends IOException {

    private static final long serialVersionUID = 1L;

    private final String key;
    private final transient Limits limits;
    private final Quota quota;

    /** @param key of the message that says what is too much */
    TooMuchException(String key, Limits limits, Quota quota) {
        super(key);
        this.key = key;
        this.limits = limits;
        this.quota = quota;
    }

    String why(Words words) {
        return words.say("log-fault.too-much", words.say(key), QuotaWords.read(limits, quota, words));
    }

    String remedy(Words words) {
        return words.say("log-fault.too-much.remedy", QuotaWords.raising(quota, words));
    }
}
