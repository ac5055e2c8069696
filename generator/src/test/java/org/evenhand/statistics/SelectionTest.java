package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A value found by its rank is the one that stands there once all are sorted by the platform's own sort. */
class SelectionTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void the_value_of_a_rank_is_that_of_the_sorted_values(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 500; round++) {
            double[] values = new double[1 + random.nextInt(300)];
            int distinct = 1 + random.nextInt(values.length);
            int shape = random.nextInt(4);
            for (int i = 0; i < values.length; i++) {
                values[i] = switch (shape) {
                    case 0 -> random.nextInt(distinct) - 5;
                    case 1 -> i;
                    case 2 -> values.length - i;
                    default -> Math.min(i, values.length - i); // what misleads a median of three
                };
            }
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            int index = random.nextInt(values.length);
            assertEquals(sorted[index], Selection.find(values.clone(), index));
            int middle = values.length / 2;
            double median = values.length % 2 == 1 ? sorted[middle] : sorted[middle - 1] / 2 + sorted[middle] / 2;
            assertEquals(median, Selection.median(values));
        }
    }
}
