package org.evenhand.log;

import java.io.IOException;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;

/** A log is larger than any that is read. */
final class TooMuchException extends IOException {

    private static final long serialVersionUID = 1L;

    private final Quota quota;

    TooMuchException(String message, Limits limits, Quota quota) {
        super(message + "; " + limits.of(quota) + " " + quota.what() + " are read");
        this.quota = quota;
    }

    String remedy() {
        return "check that the file is a log; split the run if it is, " + quota.raising();
    }
}
