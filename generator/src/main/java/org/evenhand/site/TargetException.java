package org.evenhand.site;

/** The site cannot be put where it was asked for; the message says why and what to do. Nothing was changed. */
public final class TargetException extends Exception {

    private static final long serialVersionUID = 1L;

    TargetException(String message) {
        super(message, null, false, false);
    }
}
