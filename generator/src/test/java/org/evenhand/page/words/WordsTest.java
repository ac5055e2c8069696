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

    private static final Words ENGLISH = Words.english();
    private static final Words GERMAN = Words.in("de");
    private static final Direction ENERGY = Direction.of(Unit.of("mWh"), ENGLISH);

    /** 88 against 112 mWh: 21.4 % less energy, and 27.3 % more the other way round. Common practice, no source. */
    @Test
    void onePairIsTwoPercentagesWithTwoBases() {
        Optional<Interval> interval = Optional.of(new Interval(0.776, 0.796));
        assertEquals(
                "21.4\u00a0% less",
                Change.of(88.0 / 112, interval, ENERGY, ENGLISH).words());
        assertEquals(
                "27.3\u00a0% more",
                Change.inverse(88.0 / 112, interval, ENERGY, ENGLISH).words());
        assertEquals(
                "20.4\u00a0% to 22.4\u00a0% less",
                Change.of(88.0 / 112, interval, ENERGY, ENGLISH).interval());
    }

    @Test
    void aChangeThatMayGoEitherWaySaysBothDirections() {
        Change change =
                Change.of(1.004, Optional.of(new Interval(0.99, 1.02)), Direction.of(Unit.of("W"), ENGLISH), ENGLISH);
        assertEquals("1.0\u00a0% lower to 2.0\u00a0% higher", change.interval());
    }

    /** The examples of JCGM 100:2008, 7.2.6, and the rule of docs/methods.md. */
    @Test
    void aFigureIsWrittenToTwoDigitsOfItsUncertainty() {
        Written resistance =
                Written.of(OptionalDouble.of(10.05762), Optional.of(new Interval(10.03062, 10.08462)), "Ω", ENGLISH);
        assertEquals("10.058\u00a0±\u00a00.027\u00a0Ω", resistance.withUncertainty());
        assertEquals("10.031\u00a0Ω to 10.085\u00a0Ω", resistance.interval());
        Written large =
                Written.of(OptionalDouble.of(4106.8), Optional.of(new Interval(3975, 4238.6)), "frames", ENGLISH);
        assertEquals("4110\u00a0±\u00a0130\u00a0frames", large.withUncertainty());
    }

    @Test
    void whatDoesNotExistIsEmpty() {
        Written nothing = Written.of(OptionalDouble.empty(), Optional.empty(), "K", ENGLISH);
        assertTrue(nothing.isAbsent());
        assertEquals("", nothing.withUncertainty());
        assertEquals("", nothing.interval());
    }

    @Test
    void aRateIsReadAsSomethingForEachHour() {
        assertEquals(
                "0.062\u00a0per\u00a0hour", Written.alone(0.062, "1/h", ENGLISH).withUnit());
        assertEquals("3", Written.alone(3, "1", ENGLISH).withUnit());
    }

    @ParameterizedTest
    @CsvSource({"mWh,more", "frames,more", "ms,longer", "K,higher", "°C,higher", "dB,higher", "%,higher", "W,higher"})
    void moreIsCalledWhatItIsOfThisQuantity(String unit, String word) {
        assertEquals(word, Direction.of(Unit.of(unit), ENGLISH).more());
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
        assertEquals("1 run", Counting.of(1, "run", ENGLISH));
        assertEquals("0 runs", Counting.of(0, "run", ENGLISH));
        assertEquals("n = 3 specimens (6 runs)", Counting.n(3, org.evenhand.compare.Counts.SPECIMENS, 6, ENGLISH));
    }

    @Test
    void valuesOfSettingsGetTheirNoBreakSpaceAndDatesStay() {
        assertEquals("\u221210\u00a0°C", Names.value("-10 °C", ENGLISH));
        assertEquals("2026-02-11", Names.value("2026-02-11", ENGLISH));
        assertEquals("spreader and fan", Names.value("spreader and fan", ENGLISH));
        assertEquals("Core voltage", Names.label("core-voltage"));
    }

    @Test
    void smallValuesOfPAreBounds() {
        assertEquals("<\u00a00.0001", PValues.of(3e-7, ENGLISH));
        assertEquals("0.0024", PValues.of(0.00241, ENGLISH));
        assertEquals("1", PValues.of(1, ENGLISH));
    }

    @ParameterizedTest
    @EnumSource(Hazard.class)
    void everyHazardHasACaution(Hazard hazard) {
        assertFalse(Hazards.caution(hazard, Words.english()).hazard().isBlank());
        assertTrue(Hazards.caution(hazard, Words.english()).text().endsWith("."));
    }

    /** Source: DIN 1333 for the comma; in a figure from data it would be a point. */
    @Test
    void germanWritesFiguresWithACommaAndItsOwnWords() {
        Written written = Written.of(OptionalDouble.of(31.24), Optional.of(new Interval(30.31, 32.17)), "K", GERMAN);
        assertEquals("31,24\u00a0±\u00a00,93\u00a0K", written.withUncertainty());
        assertEquals("30,31\u00a0K bis 32,17\u00a0K", written.interval());
        assertEquals(
                "0,062\u00a0je\u00a0Stunde", Written.alone(0.062, "1/h", GERMAN).withUnit());
        assertEquals(
                "1,5\u00a0Prozentpunkte",
                Written.alone(1.5, "percentage points", GERMAN).withUnit());
        Direction energy = Direction.of(Unit.of("mWh"), GERMAN);
        Change change = Change.of(88.0 / 112, Optional.of(new Interval(0.75, 0.82)), energy, GERMAN);
        assertEquals("21,4\u00a0% weniger", change.words());
        assertEquals("18,0\u00a0% bis 25,0\u00a0% weniger", change.interval());
        assertEquals("n = 3 Exemplare (6 Läufe)", Counting.n(3, org.evenhand.compare.Counts.SPECIMENS, 6, GERMAN));
        assertEquals("0,0024", PValues.of(0.00241, GERMAN));
    }

    @Test
    void whatMayBeAVersionKeepsItsPoint() {
        assertEquals("2,5\u00a0GHz", Names.value("2.5 GHz", GERMAN));
        assertEquals("6.1.21", Names.value("6.1.21", GERMAN));
        assertEquals("6.1", Names.value("6.1", GERMAN));
        assertEquals("2026-02-11", Names.value("2026-02-11", GERMAN));
    }
}
