package org.evenhand.sample;

/**
 * The true properties of one encoder computer of the sample.
 *
 * @param ratedClockMhz clock at which {@code dynamicW} is dissipated, in MHz
 * @param idleW power that depends on neither clock nor temperature, in W
 * @param dynamicW switching power at the rated clock under full load, in W
 * @param leakageW leakage at 25 °C, in W; it grows by the factor e for each 50 K
 * @param framesPerSecond frames encoded in a second at the rated clock
 * @param resistanceFactor thermal resistance relative to the kind's nominal one
 */
record Encoder(
        double ratedClockMhz,
        double idleW,
        double dynamicW,
        double leakageW,
        double framesPerSecond,
        double resistanceFactor) {

    /** The part of a frame's time at rated clock that waits for memory and does not follow the clock. */
    static final double MEMORY_PART = 0.18;

    private static final double LEAKAGE_STEP_K = 50;

    /** A specimen of the newer kind; specimens differ by a per cent or so in power, cooling contact and speed. */
    static Encoder quillet3(String specimen) {
        Noise noise = Noise.of("quillet-3/" + specimen);
        return new Encoder(
                1800,
                1.6,
                6.2 * (1 + noise.normal(0.008)),
                0.25 * (1 + noise.normal(0.05)),
                1.904 * (1 + noise.normal(0.003)),
                1 + noise.normal(0.012));
    }

    /** A specimen of the older kind: slower, and with more power for the work. */
    static Encoder quillet2(String specimen) {
        Noise noise = Noise.of("quillet-2/" + specimen);
        return new Encoder(
                1500,
                2.2,
                5.0 * (1 + noise.normal(0.008)),
                0.35 * (1 + noise.normal(0.05)),
                1.21 * (1 + noise.normal(0.003)),
                1 + noise.normal(0.012));
    }

    /**
     * Power at the direct-current input, in W.
     *
     * @param share share of full load, 0 to 1
     */
    double powerW(double clockMhz, double share, double temperatureC) {
        double clock = clockMhz / ratedClockMhz;
        double voltage = 0.75 + 0.25 * clock;
        double leakage = leakageW * StrictMath.exp((temperatureC - 25) / LEAKAGE_STEP_K);
        return idleW + share * dynamicW * clock * voltage * voltage + leakage;
    }

    /** Frames encoded in a second: part of a frame's time follows the clock, part waits for memory. */
    double framesPerSecond(double clockMhz) {
        return framesPerSecond / ((1 - MEMORY_PART) * ratedClockMhz / clockMhz + MEMORY_PART);
    }
}
