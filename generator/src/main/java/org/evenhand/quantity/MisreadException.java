package org.evenhand.quantity;

/**
 * Says that a text is not the number, unit or quantity it should be: which characters, why, and what to write instead.
 *
 * <p>Bad input is a matter of course here, so this is a checked exception that carries no stack trace.
 */
public final class MisreadException extends Exception {

    private static final long serialVersionUID = 1L;

    private final Fault fault;
    private final int start;
    private final int length;
    private final String remedy;

    /** What can be wrong; each is a rule of its own. */
    public enum Fault {
        NUMBER_AMBIGUOUS,
        UNIT_MISSING,
        UNIT_UNKNOWN,
        UNIT_DIMENSION,
        DIFFERENCE_AS_POINT,
        NOT_A_QUANTITY
    }

    MisreadException(Fault fault, int start, int length, String message, String remedy) {
        super(message, null, false, false);
        this.fault = fault;
        this.start = start;
        this.length = length;
        this.remedy = remedy;
    }

    public Fault fault() {
        return fault;
    }

    /** Index of the first wrong character in the text that was read, from 0. */
    public int start() {
        return start;
    }

    /** How many characters are wrong; at least one. */
    public int length() {
        return length;
    }

    /** What to write instead; never empty. */
    public String remedy() {
        return remedy;
    }

    /** The same fault in a longer text, of which the one read was a part. */
    MisreadException shifted(int by) {
        return new MisreadException(fault, start + by, length, getMessage(), remedy);
    }
}
