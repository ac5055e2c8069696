package org.evenhand.sample;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/**
 * Does the long supply cable cost speed? Each of five specimens once with either cable on one day. The logs are those of a logger
 * with habits of its own: semicolons, decimal commas, thousandths of a degree, and a word of status bits.
 */
final class CableRuns {

    private static final List<String> SPECIMENS = List.of("A1", "A2", "A3", "A4", "A5");
    private static final int LENGTH_S = 1200;
    private static final int STEP_S = 5;
    private static final double SUPPLY_V = 12.1;
    private static final double SHORT_OHM = 0.02;
    private static final double LONG_OHM = 0.4;

    /** Bit 0: link up. Bit 2, undervoltage, is never raised. Bit 3: storage idle. */
    private static final int STATUS = 0b1001;

    private CableRuns() {}

    static void write(Path results) throws IOException {
        StudyFolder folder = StudyFolder.in(results, "cable");
        Calendar calendar = new Calendar(LocalDate.of(2026, 3, 23), LocalTime.of(9, 15), 2, 250);
        Noise order = Noise.of("cable");
        for (int day = 0; day < SPECIMENS.size(); day++) {
            List<String> cables = new ArrayList<>(List.of("short cable", "long cable"));
            order.shuffle(cables);
            for (int place = 0; place < 2; place++) {
                String run = cables.get(place).replace(" cable", "") + "-" + (day + 1);
                String started = calendar.started(2 * day + place, order);
                write(folder, run, cables.get(place), SPECIMENS.get(day), started);
            }
        }
    }

    private static void write(StudyFolder folder, String run, String cable, String specimen, String started)
            throws IOException {
        Noise noise = Noise.of("cable/" + run);
        Soak soak = Soak.run(Encoder.quillet3(specimen), Cooling.SPREADER_AND_FAN, 1800, 1, LENGTH_S, STEP_S, noise);
        folder.writeCsv(run, foreign(soak, cable.startsWith("long") ? LONG_OHM : SHORT_OHM, noise));
        String seconds = Log.rounded(LENGTH_S + noise.between(-0.02, 0.02), 3);
        folder.writeJson(
                run,
                Fields.of("run", run, "method", "supply-lead", "item", "quillet-3", "specimen", specimen)
                        .put(
                                "settings",
                                Fields.of(
                                        "cable",
                                        cable,
                                        "cooling",
                                        "spreader and fan",
                                        "clock",
                                        "1800 MHz",
                                        "enclosure",
                                        "open",
                                        "firmware",
                                        "2026-02-11",
                                        "supply",
                                        "bench supply",
                                        "supply-voltage",
                                        Log.rounded(SUPPLY_V, 1) + " V"))
                        .put("started", started)
                        .put("length", "20 min")
                        .put("rested", "3 h")
                        .put("ambient", soak.ambient())
                        .put("instruments", Instruments.CABLE)
                        .put("log", "../logs/" + run + ".csv")
                        .put("separator", ";")
                        .put("decimal", ",")
                        .put("columns", mapping())
                        .put(
                                "readings",
                                Fields.of("frames", Long.toString(soak.frames()), "encode-time", seconds + " s"))
                        .put("outcome", "completed"));
    }

    private static Log foreign(Soak soak, double cableOhm, Noise noise) {
        List<String> header = List.of("time [s]", "t_soc", "f_cpu", "p_in", "u_in", "status");
        Log log = new Log(';', true, header, 0, 0, 1, 3, 3, 0);
        for (double[] sample : soak.log().rows()) {
            double powerW = sample[3];
            // U = U0 − R P/U, solved for U.
            double inputV = SUPPLY_V / 2 + StrictMath.sqrt(SUPPLY_V * SUPPLY_V / 4 - cableOhm * powerW);
            log.row(sample[0], 1000 * sample[1], sample[2], powerW, inputV + noise.normal(0.003), STATUS);
        }
        return log;
    }

    private static Fields mapping() {
        return new Fields()
                .put("temperature", Fields.of("from", "t_soc", "unit", "m°C"))
                .put("clock", Fields.of("from", "f_cpu", "unit", "MHz"))
                .put("power", Fields.of("from", "p_in", "unit", "W"))
                .put("voltage", Fields.of("from", "u_in", "unit", "V"))
                .put("undervoltage", Fields.of("from", "status").put("bit", 2));
    }
}
