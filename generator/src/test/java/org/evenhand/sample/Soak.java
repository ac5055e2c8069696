package org.evenhand.sample;

import java.util.List;

/**
 * A loaded stretch of time as the instruments saw it.
 *
 * @param log columns time, temperature, clock, power, ambient
 * @param frames frames encoded in the whole stretch
 */
record Soak(Log log, long frames) {

    static final List<String> HEADER =
            List.of("time [s]", "temperature [°C]", "clock [MHz]", "power [W]", "ambient [°C]");

    private static final double START_RISE_K = 1.0;

    /** Runs the model from a rested start, just above ambient, and takes a sample each {@code stepS} seconds. */
    static Soak run(
            Encoder encoder, Cooling cooling, double clockMhz, double share, int lengthS, int stepS, Noise noise) {
        Room room = Room.ofDay(noise);
        return run(encoder, cooling, clockMhz, share, lengthS, stepS, room, room.airC(0) + START_RISE_K, noise);
    }

    /** The same from a stated start and in a stated room. */
    static Soak run(
            Encoder encoder,
            Cooling cooling,
            double clockMhz,
            double share,
            int lengthS,
            int stepS,
            Room room,
            double startC,
            Noise noise) {
        ThermalModel model = new ThermalModel(encoder, cooling, clockMhz, share, startC);
        Log log = new Log(HEADER, 0, 1, 1, 3, 2);
        double gain = 1 + noise.normal(0.001);
        double contactC = noise.normal(0.15);
        for (int second = 0; second <= lengthS; second++) {
            if (second % stepS == 0) {
                log.row(
                        second,
                        model.temperatureC() + contactC + noise.normal(0.1),
                        model.clockMhz() + noise.between(-0.4, 0.4),
                        model.powerW() * gain * (1 + noise.normal(0.002)),
                        room.airC(second) + noise.normal(0.02));
            }
            model.advance(1, room.airC(second));
        }
        return new Soak(log, StrictMath.round(model.frames() * (1 + noise.normal(0.002))));
    }

    /** The ambient as a run file states it: mean over the run, with the probe's expanded uncertainty. */
    String ambient() {
        return Log.rounded(log.mean(4), 1) + " ± 0.5 °C";
    }
}
