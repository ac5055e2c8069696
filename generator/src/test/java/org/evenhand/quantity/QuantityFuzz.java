package org.evenhand.quantity;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** Whatever is written where a quantity belongs is a quantity, or a misreading whose place lies within the text. */
public final class QuantityFuzz {

    private static final List<Unit> WANTED = List.of(Unit.ONE, Unit.of("K"), Unit.of("°C"), Unit.of("dB(A)"));

    private QuantityFuzz() {}

    public static void fuzzerTestOneInput(byte[] data) throws MisreadException {
        String text = new String(data, StandardCharsets.UTF_8);
        Quantity quantity;
        try {
            quantity = Quantity.parseCount(text);
        } catch (MisreadException e) {
            Misread.check(e, text);
            others(text);
            return;
        }
        others(text);
        if (text.indexOf('{') >= 0) {
            return; // something counted that has no symbol of its own
        }
        // What is written in data is read again as the same quantity.
        Quantity again = Quantity.parseCount(quantity.toString());
        if (!again.toString().equals(quantity.toString())) {
            throw new IllegalStateException(quantity + " is read again as " + again);
        }
    }

    private static void others(String text) {
        try {
            Accuracy.parse(text);
        } catch (MisreadException e) {
            Misread.check(e, text);
        }
        for (Unit wanted : WANTED) {
            try {
                Quantity quantity = Quantity.parse(text, wanted);
                if (Double.isNaN(quantity.in(wanted))) {
                    throw new IllegalStateException("not a number");
                }
            } catch (MisreadException e) {
                Misread.check(e, text);
            }
            if (Censored.isWritten(text)) {
                try {
                    Censored.parse(text, wanted);
                } catch (MisreadException e) {
                    Misread.check(e, text);
                }
            }
        }
    }
}
