package org.evenhand.command;

/** The call or the input cannot be used at all; the message says why and what to do. */
public final class UnusableException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public UnusableException(String message) {
        super(message, null, false, false);
    }
}
