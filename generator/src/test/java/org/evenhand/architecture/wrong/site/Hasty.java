package org.evenhand.architecture.wrong.site;

import org.evenhand.architecture.wrong.page.Late;

/** Wrong on purpose in one thing only: it ends the program. What it imports stands to its left. */
public final class Hasty {

    /** Ends the program where it may not. */
    public void end() {
        if (new Late().toString().isEmpty()) {
            System.exit(1);
        }
    }
}
