package org.evenhand.command.pack;

/** Something cannot be packed as it is; the message says what, and what to do. */
public final class PackException extends Exception {

    private static final long serialVersionUID = 1L;

    PackException(String message) {
        super(message, null, false, false);
    }
}
