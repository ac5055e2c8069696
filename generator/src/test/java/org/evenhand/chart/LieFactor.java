package org.evenhand.chart;

import static org.junit.jupiter.api.Assertions.assertTrue;

/**
 * The size of an effect shown in a graphic over its size in the data, to lie between 0.95 and 1.05.
 *
 * <p>Source: E. R. Tufte, The Visual Display of Quantitative Information, second edition, 2001, chapter 2. Taken here as the
 * ratio of two lengths drawn over the ratio of the two differences; on a logarithmic axis the data enter as logarithms.
 */
public final class LieFactor {

    private LieFactor() {}

    /**
     * Holds what is drawn on one axis against the data; differences of less than a fiftieth of the widest are not judged.
     *
     * @param values in the unit of the axis, or their logarithms
     * @param pixels one for each value
     * @return how far the worst factor is from 1
     */
    public static double assertTrueToScale(double[] values, double[] pixels, String what) {
        int widest = 0;
        for (int i = 1; i < values.length; i++) {
            if (Math.abs(values[i] - values[0]) > Math.abs(values[widest] - values[0])) {
                widest = i;
            }
        }
        double worst = 0;
        for (int i = 0; i < values.length; i++) {
            double inData = (values[i] - values[0]) / (values[widest] - values[0]);
            double drawn = (pixels[i] - pixels[0]) / (pixels[widest] - pixels[0]);
            if (Math.abs(inData) > 0.02) {
                double lie = drawn / inData;
                assertTrue(lie > 0.95 && lie < 1.05, what + ": lie factor " + lie + " at " + values[i]);
                worst = Math.max(worst, Math.abs(lie - 1));
            }
        }
        return worst;
    }
}
