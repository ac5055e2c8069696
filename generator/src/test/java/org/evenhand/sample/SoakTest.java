package org.evenhand.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The soaks of the sample are plausible as experiments. Limits: common practice, no source. */
class SoakTest {

    private static final int LENGTH_S = 2700;

    private static List<double[]> soak(String cooling) {
        return Soak.run(
                        Encoder.quillet3("A1"),
                        Cooling.named(cooling),
                        1800,
                        1,
                        LENGTH_S,
                        5,
                        Noise.of("test/" + cooling))
                .log()
                .rows();
    }

    @ParameterizedTest
    @ValueSource(strings = {"none", "spreader", "spreader and fan"})
    void aRestedSoakBeginsWithinTwoKelvinOfTheRoomAndLastsItsWholeLength(String cooling) {
        List<double[]> rows = soak(cooling);
        double[] first = rows.get(0);
        assertEquals(first[4] + 1, first[1], 1);
        assertEquals(LENGTH_S, rows.get(rows.size() - 1)[0]);
    }

    @ParameterizedTest
    @ValueSource(strings = {"none", "spreader", "spreader and fan"})
    void theRoomStaysWithinOneKelvinDuringASoak(String cooling) {
        List<double[]> rows = soak(cooling);
        double lowest = rows.stream().mapToDouble(row -> row[4]).min().orElseThrow();
        double highest = rows.stream().mapToDouble(row -> row[4]).max().orElseThrow();
        assertTrue(highest - lowest < 1, () -> "moved by " + (highest - lowest) + " K");
    }

    @ParameterizedTest
    @ValueSource(strings = {"spreader", "spreader and fan"})
    void aSoakThatIsNotHeldBackMovesByLessThanThreeKelvinInItsLastHalfHour(String cooling) {
        List<double[]> rows = soak(cooling);
        double before = meanC(rows, LENGTH_S - 1800, LENGTH_S - 1740);
        double after = meanC(rows, LENGTH_S - 60, LENGTH_S);
        assertEquals(before, after, 3);
    }

    private static double meanC(List<double[]> rows, int fromS, int toS) {
        return rows.stream()
                .filter(row -> row[0] >= fromS && row[0] <= toS)
                .mapToDouble(row -> row[1])
                .average()
                .orElseThrow();
    }
}
