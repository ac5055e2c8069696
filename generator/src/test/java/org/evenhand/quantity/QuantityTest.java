package org.evenhand.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.evenhand.quantity.MisreadException.Fault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How quantities are written: the forms that are understood, and where those that are not go wrong. */
class QuantityTest {

    @ParameterizedTest(name = "“{0}”")
    @CsvSource(
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "45 min|45 min",
                "21.4 °C|21.4 °C",
                "21.4 ± 0.5 °C|21.4 ± 0.5 °C",
                "21.4±0.5 °C|21.4 ± 0.5 °C",
                "21.4 +/- 0.5 °C|21.4 ± 0.5 °C",
                "-3.2e-3 K|-0.0032 K",
                "−3.2 K|-3.2 K", // U+2212
                "+7 K|7 K",
                "45\u00a0min|45 min", // no-break space
                "45\u202fmin|45 min", // narrow no-break space
                "88 mWh|88 mW·h",
                "88 mW.h|88 mW·h",
                "5 %|5 %",
                "5%|5 %",
                "1200 rpm|1200 r/min",
                "30.5 dB(A)|30.5 dB(A)",
                "1.50 W|1.50 W",
            })
    void what_is_understood_is_written_again_in_one_form(String text, String expected) throws MisreadException {
        Quantity quantity = Quantity.parse(text);
        assertEquals(expected, quantity.toString());
        assertEquals(quantity, Quantity.parse(quantity.toString()));
    }

    @ParameterizedTest(name = "“{0}” is {1} from {2} for {3}")
    @CsvSource(
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                // text | fault | index of the first wrong character | how many
                "1,234 W|NUMBER_AMBIGUOUS|0|5",
                "1'234 W|NUMBER_AMBIGUOUS|0|5",
                "NaN W|NUMBER_AMBIGUOUS|0|3",
                "W|NUMBER_AMBIGUOUS|0|1",
                "5. W|NUMBER_AMBIGUOUS|0|2",
                "21.4 ± 0,5 °C|NUMBER_AMBIGUOUS|7|3",
                "21.4 ± -0.5 °C|NOT_A_QUANTITY|7|4",
                "1e9999 W|NUMBER_AMBIGUOUS|1|5",
                "45|UNIT_MISSING|0|2",
                "5 mw|UNIT_UNKNOWN|2|2",
                "5 W per h|UNIT_UNKNOWN|2|7",
                "5 °C/min|UNIT_UNKNOWN|2|6",
            })
    void what_is_not_understood_says_where(String text, String fault, int start, int length) {
        MisreadException misread = assertThrows(MisreadException.class, () -> Quantity.parse(text));
        assertEquals(Fault.valueOf(fault), misread.fault(), misread.getMessage());
        assertEquals(start, misread.start(), misread.getMessage());
        assertEquals(length, misread.length(), misread.getMessage());
        assertTrue(!misread.remedy().isEmpty());
    }

    @Test
    void five_mw_suggests_mW() {
        MisreadException misread = assertThrows(MisreadException.class, () -> Quantity.parse("5 mw"));
        assertTrue(misread.remedy().contains("“mW”"), misread.remedy());
    }

    @Test
    void a_charge_is_not_an_energy() {
        MisreadException misread =
                assertThrows(MisreadException.class, () -> Quantity.parse("500 mA·h", Unit.of("mWh")));
        assertEquals(Fault.UNIT_DIMENSION, misread.fault());
        assertEquals(4, misread.start());
    }

    @Test
    void sp_811_b_8_a_rise_of_45_fahrenheit_is_25_kelvin() {
        MisreadException misread = assertThrows(MisreadException.class, () -> Quantity.parse("45 °F", Unit.of("K")));
        assertEquals(Fault.DIFFERENCE_AS_POINT, misread.fault());
        assertTrue(misread.remedy().startsWith("write “25 K”"), misread.remedy());
        assertEquals(25, Quantity.of("45 °F").differenceIn(Unit.of("K")));
    }

    @Test
    void gum_2_3_5_behind_plus_minus_stands_an_expanded_uncertainty_with_k_2() {
        assertEquals(0.25, Quantity.of("21.4 ± 0.5 °C").standardUncertaintyIn(Unit.of("K")));
        // A difference of 0.9 °F is one of 0.5 K.
        assertEquals(0.25, Quantity.of("70 ± 0.9 °F").standardUncertaintyIn(Unit.of("K")), 1e-15);
        assertEquals(0, Quantity.of("21.4 °C").standardUncertaintyIn(Unit.of("K")));
    }

    @Test
    void a_count_may_stand_without_a_unit_and_nothing_else() throws MisreadException {
        assertEquals(Unit.ONE, Quantity.parseCount("5").unit());
        assertEquals(Unit.ONE, Quantity.parse("5140", Unit.of("frames")).unit());
        assertThrows(MisreadException.class, () -> Quantity.parse("5140", Unit.of("W")));
    }

    @Test
    void accuracies_are_a_part_of_the_reading_and_a_fixed_part() throws MisreadException {
        Accuracy both = Accuracy.parse("0.5 % of reading + 10 mW");
        assertEquals(0, new BigDecimal("0.005").compareTo(both.ofReading()));
        assertEquals("10 mW", both.fixed().orElseThrow().toString());
        assertEquals("0.5 K", Accuracy.parse("± 0.5 K").fixed().orElseThrow().toString());
        assertTrue(Accuracy.parse("2 % of reading").fixed().isEmpty());
        for (String wrong : new String[] {"5 W of reading", "-1 % of reading", "1 % of range", "a + b"}) {
            assertThrows(MisreadException.class, () -> Accuracy.parse(wrong), wrong);
        }
    }

    @Test
    void a_bound_is_written_with_a_greater_than_sign() throws MisreadException {
        assertTrue(Censored.isWritten("> 45 min"));
        assertEquals("> 45 min", Censored.parse("> 45 min", Unit.of("s")).toString());
        MisreadException misread = assertThrows(MisreadException.class, () -> Censored.parse("> 45 W", Unit.of("s")));
        assertEquals(5, misread.start());
    }
}
