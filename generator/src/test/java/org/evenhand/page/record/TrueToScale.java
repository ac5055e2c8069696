package org.evenhand.page.record;

import java.util.ArrayList;
import java.util.List;
import org.evenhand.chart.LieFactor;

/** Values of the file beside the pixels at which they were drawn. */
final class TrueToScale {
    private final List<double[]> pairs = new ArrayList<>();

    void add(double value, double pixel) {
        pairs.add(new double[] {value, pixel});
    }

    void assertTrueToScale(String what) {
        LieFactor.assertTrueToScale(
                pairs.stream().mapToDouble(p -> p[0]).toArray(),
                pairs.stream().mapToDouble(p -> p[1]).toArray(),
                what);
    }
}
