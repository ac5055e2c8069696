package org.evenhand.regex;

/** A text that counts how often a character of it is looked at, and ends the search that looks too often. */
final class Counted implements CharSequence {

    /** What is thrown when there are more looks than allowed. */
    static final class TooManyLooksException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        TooManyLooksException() {
            super(null, null, false, false);
        }
    }

    private final String text;
    private final long most;
    private long looks;

    Counted(String text, long most) {
        this.text = text;
        this.most = most;
    }

    long looks() {
        return looks;
    }

    @Override
    public char charAt(int index) {
        if (++looks > most) {
            throw new TooManyLooksException();
        }
        return text.charAt(index);
    }

    @Override
    public int length() {
        return text.length();
    }

    @Override
    public CharSequence subSequence(int start, int end) {
        return text.substring(start, end);
    }

    @Override
    public String toString() {
        return text;
    }
}
