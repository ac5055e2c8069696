package org.evenhand.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Messages, against sentences written by hand. */
class MessageTest {

    @Test
    void argumentsTakeTheirPlacesInAnyOrder() {
        assertEquals("b, then a", new Message("{1}, then {0}").with("a", "b"));
    }

    @Test
    void aCountChoosesTheWordThatFitsIt() {
        Message runs = new Message("{0} {0|run|runs} of {1}");
        assertEquals("1 run of 5", runs.with(1, 5));
        assertEquals("0 runs of 5", runs.with(0, 5));
        assertEquals("11 runs of 5", runs.with(11L, 5));
    }

    @Test
    void aChoiceMayHoldArguments() {
        Message reason = new Message("{0|one reason, {1}|{0} reasons, {1} first}.");
        assertEquals("one reason, heat.", reason.with(1, "heat"));
        assertEquals("3 reasons, heat first.", reason.with(3, "heat"));
    }

    @Test
    void bracesAndBarsAndApostrophesStandForThemselves() {
        assertEquals("a|b {all} isn't '{' 7", new Message("a|b {all} isn't '{' {0}").with(7));
    }

    @Test
    void argumentsAreNotReadAsMessages() {
        assertEquals("{0} {1|a|b}", new Message("{0}").with("{0} {1|a|b}"));
    }

    @Test
    void tooFewAndTooManyArgumentsAreErrors() {
        Message message = new Message("{0} of {1}");
        assertThrows(IllegalArgumentException.class, () -> message.with("a"));
        assertThrows(IllegalArgumentException.class, () -> message.with("a", "b", "c"));
    }

    @Test
    void aNumberThatNobodyRoundedIsAnError() {
        Message message = new Message("{0}");
        assertThrows(IllegalArgumentException.class, () -> message.with(31.25));
        assertThrows(IllegalArgumentException.class, () -> message.with((Object) null));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{0", "{0|a}", "{0|a|b", "{0|a|b|c}", "{0 }", "{12}"})
    void whatIsNotClosedOrHasOtherThanTwoChoicesIsAnError(String pattern) {
        assertThrows(IllegalArgumentException.class, () -> new Message(pattern));
    }
}
