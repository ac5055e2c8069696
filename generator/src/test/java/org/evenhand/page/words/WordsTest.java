package org.evenhand.page.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.evenhand.model.Hazard;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.Interval;
import org.evenhand.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class WordsTest {

    private static final Direction ENERGY = Direction.of(Unit.of("mWh"));

    /** 88 against 112 mWh: 21.4 % less energy, and 27.3 % more the other way round. Common practice, no source. */
    @Test
    void onePairIsTwoPercentagesWithTwoBases() {
        Optional<Interval> interval = Optional.of(new Interval(0.776, 0.796));
        assertEquals("21.4\u00a0% less", Change.of(88.0 / 112, interval, ENERGY).words());
        assertEquals(
                "27.3\u00a0% more", Change.inverse(88.0 / 112, interval, ENERGY).words());
        assertEquals(
                "20.4\u00a0% to 22.4\u00a0% less",
                Change.of(88.0 / 112, interval, ENERGY).interval());
    }

    @Test
    void aChangeThatMayGoEitherWaySaysBothDirections() {
        Change change = Change.of(1.004, Optional.of(new Interval(0.99, 1.02)), Direction.of(Unit.of("W")));
        assertEquals("1.0\u00a0% lower to 2.0\u00a0% higher", change.interval());
    }

    /** The examples of JCGM 100:2008, 7.2.6, and the rule of docs/methods.md. */
    @Test
    void aFigureIsWrittenToTwoDigitsOfItsUncertainty() {
        Written resistance =
                Written.of(OptionalDouble.of(10.05762), Optional.of(new Interval(10.03062, 10.08462)), "Ω");
        assertEquals("10.058\u00a0±\u00a00.027\u00a0Ω", resistance.withUncertainty());
        assertEquals("10.031\u00a0Ω to 10.085\u00a0Ω", resistance.interval());
        Written large = Written.of(OptionalDouble.of(4106.8), Optional.of(new Interval(3975, 4238.6)), "frames");
        assertEquals("4110\u00a0±\u00a0130\u00a0frames", large.withUncertainty());
    }

    @Test
    void whatDoesNotExistIsEmpty() {
        Written nothing = Written.of(OptionalDouble.empty(), Optional.empty(), "K");
        assertTrue(nothing.isAbsent());
        assertEquals("", nothing.withUncertainty());
        assertEquals("", nothing.interval());
    }

    @Test
    void aRateIsReadAsSomethingForEachHour() {
        assertEquals("0.062\u00a0per\u00a0hour", Written.alone(0.062, "1/h").withUnit());
        assertEquals("3", Written.alone(3, "1").withUnit());
    }

    @ParameterizedTest
    @CsvSource({"mWh,more", "frames,more", "ms,longer", "K,higher", "°C,higher", "dB,higher", "%,higher", "W,higher"})
    void moreIsCalledWhatItIsOfThisQuantity(String unit, String word) {
        assertEquals(word, Direction.of(Unit.of(unit)).more());
    }

    @ParameterizedTest
    @CsvSource({
        "0,0",
        "0.1,0.1",
        "-12.5,-12.5",
        "5140,5140",
        "1e-10,1e-10",
        "1.5e300,1.5e300",
        "123456789012345680,123456789012345680",
        "2e-3,0.002",
        "0.30000000000000004,0.30000000000000004"
    })
    void aNumberForMachinesIsTheShortestThatReadsBack(double number, String written) {
        assertEquals(written, Exact.of(number));
    }

    @Test
    void everyNumberForMachinesReadsBack() {
        Random random = new Random(20260302);
        for (int i = 0; i < 100_000; i++) {
            double number = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(number)) {
                assertEquals(number, Double.parseDouble(Exact.of(number)));
            }
        }
        assertThrows(IllegalArgumentException.class, () -> Exact.of(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Exact.of(Double.NEGATIVE_INFINITY));
    }

    @Test
    void numbersAndNounsAgree() {
        assertEquals("1 run", Counting.of(1, "run"));
        assertEquals("0 runs", Counting.of(0, "run"));
        assertEquals("n = 3 specimens (6 runs)", Counting.n(3, org.evenhand.compare.Counts.SPECIMENS, 6));
    }

    @Test
    void valuesOfSettingsGetTheirNoBreakSpaceAndDatesStay() {
        assertEquals("\u221210\u00a0°C", Names.value("-10 °C"));
        assertEquals("2026-02-11", Names.value("2026-02-11"));
        assertEquals("spreader and fan", Names.value("spreader and fan"));
        assertEquals("Core voltage", Names.label("core-voltage"));
    }

    @Test
    void smallValuesOfPAreBounds() {
        assertEquals("<\u00a00.0001", PValues.of(3e-7));
        assertEquals("0.0024", PValues.of(0.00241));
        assertEquals("1", PValues.of(1));
    }

    @ParameterizedTest
    @EnumSource(Hazard.class)
    void everyHazardHasACaution(Hazard hazard) {
        assertFalse(Hazards.caution(hazard, Words.english()).hazard().isBlank());
        assertTrue(Hazards.caution(hazard, Words.english()).text().endsWith("."));
    }
}
