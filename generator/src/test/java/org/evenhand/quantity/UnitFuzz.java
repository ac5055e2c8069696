package org.evenhand.quantity;

import java.nio.charset.StandardCharsets;

/** Whatever is written where a unit belongs is a unit, or a misreading whose place lies within the text. */
public final class UnitFuzz {

    private UnitFuzz() {}

    public static void fuzzerTestOneInput(byte[] data) throws MisreadException {
        String text = new String(data, StandardCharsets.UTF_8);
        Unit unit;
        try {
            unit = Unit.parse(text);
        } catch (MisreadException e) {
            Misread.check(e, text);
            return;
        }
        if (text.indexOf('{') >= 0) {
            return; // something counted that has no symbol of its own
        }
        // A unit is known by its symbol: read again, it means the same.
        Unit again = Unit.parse(unit.symbol());
        if (!again.dimension().equals(unit.dimension()) || again.kind() != unit.kind()) {
            throw new IllegalStateException(unit.symbol() + " is read again as " + again.symbol());
        }
        if (!again.factor().equals(unit.factor())) {
            throw new IllegalStateException(unit.symbol() + " is read again with another factor");
        }
    }
}
