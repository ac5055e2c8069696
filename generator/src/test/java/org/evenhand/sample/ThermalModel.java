package org.evenhand.sample;

/**
 * First-order thermal model of a loaded encoder: one heat capacity behind one resistance, leakage that grows with temperature,
 * and a controller that drops the clock at a limit and raises it again below it.
 *
 * <p>A step assumes constant power and solves C dT/dt = P − (T − Ta)/R exactly. Source: lumped-capacitance method, e.g. Incropera
 * and DeWitt, Fundamentals of Heat and Mass Transfer, chapter 5.
 */
final class ThermalModel {

    static final double LIMIT_C = 85;
    private static final double RELEASE_C = 83.5;
    private static final double THROTTLED_MHZ = 1000;

    private final Encoder encoder;
    private final double resistanceKPerW;
    private final double timeConstantS;
    private final double requestedMhz;
    private final double share;
    private double temperatureC;
    private double clockMhz;
    private double frames;

    /** @param share share of full load, 0 to 1 */
    ThermalModel(Encoder encoder, Cooling cooling, double requestedMhz, double share, double startC) {
        this.encoder = encoder;
        this.resistanceKPerW = cooling.resistanceKPerW() * encoder.resistanceFactor();
        this.timeConstantS = resistanceKPerW * cooling.capacityJPerK();
        this.requestedMhz = requestedMhz;
        this.share = share;
        this.temperatureC = startC;
        this.clockMhz = requestedMhz;
    }

    void advance(double seconds, double ambientC) {
        double steadyC = ambientC + resistanceKPerW * powerW();
        temperatureC = steadyC + (temperatureC - steadyC) * StrictMath.exp(-seconds / timeConstantS);
        frames += encoder.framesPerSecond(clockMhz) * seconds;
        if (temperatureC >= LIMIT_C) {
            clockMhz = StrictMath.min(THROTTLED_MHZ, requestedMhz);
        } else if (temperatureC <= RELEASE_C) {
            clockMhz = requestedMhz;
        }
    }

    double temperatureC() {
        return temperatureC;
    }

    double clockMhz() {
        return clockMhz;
    }

    double powerW() {
        return encoder.powerW(clockMhz, share, temperatureC);
    }

    /** Frames encoded since the start. */
    double frames() {
        return frames;
    }

    double timeConstantS() {
        return timeConstantS;
    }
}
