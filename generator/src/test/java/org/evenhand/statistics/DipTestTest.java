package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The dip against values of another program. They were computed with Python and {@code scipy.optimize.linprog} of SciPy
 * 1.17.1, straight from the definition: for each place of the mode, the linear programme of least greatest distance to a
 * function convex before and concave after; the least of them is the dip.
 */
class DipTestTest {

    @Test
    void evenlySpacedValuesHaveTheSmallestDip() {
        // Hartigan & Hartigan (1985): the dip is at least 1/(2n), which a uniform sample attains.
        double[] even = new double[20];
        Arrays.setAll(even, i -> i);
        assertEquals(1 / 40.0, DipTest.dip(even), 1e-15);
    }

    @Test
    void twoPointsOfHalfTheMassEachHaveTheLargest() {
        // Hartigan & Hartigan (1985): the dip is at most 1/4.
        double[] two = new double[20];
        Arrays.fill(two, 0, 10, 80);
        Arrays.fill(two, 10, 20, 100);
        assertEquals(0.25, DipTest.dip(two), 1e-15);
        assertTrue(DipTest.of(Sample.of(two)).p() < 0.05);
    }

    @Test
    void agreesWithTheLinearProgrammeOfItsDefinition() {
        agrees(0.1904059040590406, 0.36, 0.49, 3.07, 3.97, 4.11);
        agrees(0.16666666666666666, 1, 2, 3, 4, 10, 11, 12, 13);
        agrees(0.10519480519480526, -1.9, -1.84, -1.34, -1.29, -1.27, -0.46, -0.24, 0.16, 0.27, 0.7);
        agrees(0.0804878048780488, 0.04, 0.58, 0.74, 1.4, 1.49, 1.54, 1.54, 1.89, 2.08, 2.75);
        agrees(0.13063829787234055, -0.81, -0.58, -0.03, 0.88, 1.06, 2.77, 3.89, 4.06, 4.08, 4.11);
        agrees(0.07516339869281041, -1.55, -1.2, -0.64, -0.19, 0.07, 0.12, 0.58, 0.68, 0.76, 0.86, 1.36, 2);
        agrees(0.0892857142857142, 0.29, 0.45, 0.72, 1.14, 1.21, 1.32, 1.77, 1.82, 1.91, 2.03, 2.9, 2.94);
        agrees(0.1325622775800711, -1.99, -1.32, -0.79, -0.46, -0.1, 0.65, 3.63, 3.67, 3.75, 4.69, 5.26, 5.52);
        agrees(
                0.06617647058823527,
                -2.04,
                -1.69,
                -1.29,
                -1.11,
                -0.44,
                -0.43,
                -0.34,
                -0.3,
                -0.2,
                -0.12,
                -0.02,
                -0.01,
                -0.01,
                0.35,
                0.35,
                0.58,
                0.65,
                0.67,
                1.05,
                1.17);
        agrees(
                0.09087378640776728,
                -2.13,
                -2,
                -1.75,
                -1.13,
                -0.59,
                -0.12,
                0.09,
                0.36,
                0.76,
                0.85,
                2.46,
                3.02,
                3.15,
                3.73,
                3.84,
                3.93,
                4.13,
                4.78,
                5.25,
                5.44);
    }

    @Test
    void equalValuesAreOneMode() {
        assertEquals(0.05, DipTest.dip(new double[10]), 1e-15);
        assertEquals(1, DipTest.of(Sample.of(new double[10])).p());
    }

    @Test
    void neitherOrderNorUnitMatters() {
        double[] values = {3.1, 0.4, 2.2, 9.5, 8.8, 9.1, 1.0, 9.9, 0.7, 8.5};
        double[] other = new double[values.length];
        Arrays.setAll(other, i -> 20 - 3 * values[values.length - 1 - i]);
        assertEquals(DipTest.dip(values), DipTest.dip(other), 1e-12);
    }

    /**
     * Shares of 20 000 uniform samples with a dip as large, drawn by NumPy's default generator (seed 1) and a program of its
     * own in Python. The tolerance is four standard deviations of a share of 1999.
     */
    @Test
    void thePValuesAreThoseOfAnotherSimulation() {
        agreesP(0.1016, -0.81, -0.58, -0.03, 0.88, 1.06, 2.77, 3.89, 4.06, 4.08, 4.11);
        agreesP(0.3617, -1.9, -1.84, -1.34, -1.29, -1.27, -0.46, -0.24, 0.16, 0.27, 0.7);
        agreesP(
                0.1717, -2.13, -2, -1.75, -1.13, -0.59, -0.12, 0.09, 0.36, 0.76, 0.85, 2.46, 3.02, 3.15, 3.73, 3.84,
                3.93, 4.13, 4.78, 5.25, 5.44);
    }

    private static void agreesP(double expected, double... values) {
        assertEquals(expected, DipTest.of(Sample.of(values)).p(), 4 * Math.sqrt(expected * (1 - expected) / 1999));
    }

    @Test
    void uniformSamplesAreSuspectedAsOftenAsTheLevelSays() {
        // The dip of uniform samples has the level 5 % by construction; 400 trials scatter by 1.1 % (binomial).
        Random random = new Random(42);
        int suspected = 0;
        for (int trial = 0; trial < 400; trial++) {
            double[] values = random.doubles(12).toArray();
            suspected += DipTest.of(Sample.of(values)).p() < 0.05 ? 1 : 0;
        }
        assertEquals(0.05, suspected / 400.0, 3.3 * 0.011);
    }

    private static void agrees(double expected, double... values) {
        assertEquals(expected, DipTest.dip(values), 1e-12);
    }
}
