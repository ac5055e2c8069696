package org.evenhand.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What may be written for a range; the rules are those of the format itself. */
class RangesTest {

    private static String fault(FieldType type, String text) throws MisreadException {
        return ((ScalarType) type).reading().fault(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-40 °C to 105 °C", "0 W to 100 W", "0 mW to 100 W", "30 dB(A) to 130 dB(A)"})
    void theLowestAndTheHighestMakeARange(String text) throws MisreadException {
        assertNull(fault(Ranges.ofAnyUnit(), text));
        String[] ends = text.split(" to ");
        assertEquals(Quantity.of(ends[0]), Ranges.lowest(text));
        assertEquals(Quantity.of(ends[1]), Ranges.highest(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"105 °C to -40 °C", "5 W to 5 W", "5 W", "1 W to 2 W to 3 W"})
    void whatDoesNotRiseOrIsNotTwoIsNoRange(String text) throws MisreadException {
        assertNotNull(fault(Ranges.ofAnyUnit(), text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"-40 to 105 °C", "0 W to 100 V", "0 °C to ", "low to high"})
    void endsWithoutUnitOrOfAnotherKindAreMisread(String text) {
        assertThrows(MisreadException.class, () -> fault(Ranges.ofAnyUnit(), text));
    }

    @Test
    void aRangeInAGivenUnitTakesNoOther() throws MisreadException {
        assertNull(fault(Ranges.in("°C"), "64 °F to 82 °F"));
        assertThrows(MisreadException.class, () -> fault(Ranges.in("°C"), "1 W to 2 W"));
    }
}
