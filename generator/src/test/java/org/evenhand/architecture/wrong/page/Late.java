package org.evenhand.architecture.wrong.page;

import java.time.Instant;

/** Wrong on purpose: a page that tells the time of its making. */
public final class Late {

    @Override
    public String toString() {
        return Instant.now().toString();
    }
}
