package org.evenhand.statistics;

import java.util.Arrays;

/**
 * Means, sums and background correction of levels in decibels.
 *
 * <p>Source: ISO 3744:2010, 8.2.2 (energetic mean) and equation (16) (background); ISO 3746:2010, 8.3.3 (survey method).
 */
public final class SoundLevel {

    /** A smaller difference to the background gives an upper bound only. */
    private static final double LEAST_DIFFERENCE_DB = 3;

    /**
     * A level freed from its background.
     *
     * @param levelDb the level of the source
     * @param correctionDb what was taken off, not negative
     * @param upperBoundOnly true if the background was too near: the source is at most this loud
     */
    public record Corrected(double levelDb, double correctionDb, boolean upperBoundOnly) {}

    private SoundLevel() {}

    /** 10 lg of the mean of 10^(L/10): for positions or repeats of one steady sound. */
    public static double energeticMeanDb(double... levelsDb) {
        return energeticSumDb(levelsDb) - 10 * StrictMath.log10(levelsDb.length);
    }

    /**
     * The share of each level in the sum of their energies: how much the energetic mean changes with it, ∂L̄/∂Lᵢ.
     *
     * @param levelsDb at least one
     * @return as many, which add up to 1
     */
    public static double[] energyShares(double... levelsDb) {
        double loudest = Arrays.stream(levelsDb).max().orElseThrow();
        double[] shares = new double[levelsDb.length];
        double sum = 0;
        for (int i = 0; i < levelsDb.length; i++) {
            shares[i] = StrictMath.pow(10, (Arguments.finite(levelsDb[i], "level") - loudest) / 10);
            sum += shares[i];
        }
        for (int i = 0; i < shares.length; i++) {
            shares[i] /= sum;
        }
        return shares;
    }

    /**
     * Values whose arithmetic mean is the energetic mean of levels, and whose standard deviation over √n is its standard uncertainty
     * to first order: yᵢ = L̄ + (10/ln 10)·(n·wᵢ − 1), with the energy shares wᵢ. Levels that are all equal are their own.
     *
     * <p>Source: JCGM 100:2008, 5.1.2, applied to L̄ = 10 lg(mean of 10^(L/10)), of which the mean energy is the input.
     *
     * @param levelsDb at least one
     */
    public static double[] linearisedDb(double... levelsDb) {
        double[] shares = energyShares(levelsDb);
        double mean = energeticMeanDb(levelsDb);
        if (Arrays.stream(levelsDb).allMatch(level -> level == levelsDb[0])) {
            return levelsDb.clone();
        }
        double perNeper = 10 / StrictMath.log(10);
        return Arrays.stream(shares)
                .map(share -> mean + perNeper * (share * shares.length - 1))
                .toArray();
    }

    /** 10 lg of the sum of 10^(L/10): for sources that sound at once without being coherent. */
    public static double energeticSumDb(double... levelsDb) {
        double[] once = new double[levelsDb.length];
        Arrays.fill(once, 1);
        return weightedSumDb(levelsDb, once);
    }

    /**
     * Equivalent level over intervals of different length.
     *
     * @param levelsDb level in each interval
     * @param durations length of each interval in one unit, not negative, not all zero
     */
    public static double equivalentDb(double[] levelsDb, double[] durations) {
        double total = 0;
        for (double duration : durations) {
            total += Arguments.notNegative(duration, "duration");
        }
        return weightedSumDb(levelsDb, durations)
                - 10 * StrictMath.log10(Arguments.positive(total, "sum of the durations"));
    }

    /**
     * L = 10 lg(10^(L₁/10) − 10^(L₀/10)) by the formula. With less than 3 dB between the two the correction stays at that of 3 dB
     * and the result is an upper bound.
     *
     * @param withSourceDb L₁, source and background together
     * @param backgroundDb L₀, background alone
     * @param negligibleFromDb above this difference nothing is taken off: 15 dB (ISO 3744) or 10 dB (ISO 3746)
     */
    public static Corrected correctedForBackground(double withSourceDb, double backgroundDb, double negligibleFromDb) {
        double difference = Arguments.finite(withSourceDb, "level") - Arguments.finite(backgroundDb, "background");
        if (difference > negligibleFromDb) {
            return new Corrected(withSourceDb, 0, false);
        }
        boolean tooNear = difference < LEAST_DIFFERENCE_DB;
        double correction = backgroundCorrectionDb(Math.max(difference, LEAST_DIFFERENCE_DB));
        return new Corrected(withSourceDb - correction, correction, tooNear);
    }

    /** K₁ = −10 lg(1 − 10^(−ΔL/10)), for a positive difference ΔL. */
    static double backgroundCorrectionDb(double differenceDb) {
        double ratio = StrictMath.pow(10, -Arguments.positive(differenceDb, "difference") / 10);
        return -10 * StrictMath.log1p(-ratio) / StrictMath.log(10);
    }

    private static double weightedSumDb(double[] levelsDb, double[] weights) {
        Arguments.sameLength(levelsDb, weights);
        if (levelsDb.length == 0) {
            throw new IllegalArgumentException("at least one level is needed");
        }
        // Taking the loudest out keeps the powers from overflowing and does not change the sum.
        double loudest = Double.NEGATIVE_INFINITY;
        for (double level : levelsDb) {
            loudest = Math.max(loudest, Arguments.finite(level, "level"));
        }
        double power = 0;
        for (int i = 0; i < levelsDb.length; i++) {
            power += weights[i] * StrictMath.pow(10, (levelsDb[i] - loudest) / 10);
        }
        return loudest + 10 * StrictMath.log10(power);
    }
}
