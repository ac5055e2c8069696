package org.evenhand.command;

/** What the terminal bears, if there is one. */
final class Terminal {

    private Terminal() {}

    /** Colour is for a terminal whose user has not declined it (NO_COLOR). */
    static boolean hasColour() {
        String declined = System.getenv("NO_COLOR");
        return System.console() != null && (declined == null || declined.isEmpty());
    }
}
