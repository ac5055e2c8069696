package org.evenhand.sample;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Does the old supply still do? A study with faults of many kinds, as they happen when a supply was borrowed for a day. */
final class SupplyRuns {

    private static final double MAINS_IDLE_W = 0.9;
    private static final double MAINS_EFFICIENCY = 0.86;

    private SupplyRuns() {}

    static void write(Path results) throws IOException {
        StudyFolder folder = StudyFolder.in(results, "supply");
        writeOld(folder);
        writeNew(folder);
        folder.writeJson(
                "old-2",
                run("old-2", "old supply", "2026-02-11", "2026-02-24T14:05:00Z", "mains-meter")
                        .put("length", "45 min")
                        .put("ambient", "21.5 ± 0.5 °C")
                        .put("outcome", "failed")
                        .put("why", "The fuse in the borrowed lead blew when the load began; no spare was at hand."));
        folder.writeJson(
                "new-2",
                run("new-2", "new supply", "2026-03-30", "2026-04-03T09:10:00Z", "dc-meter-1")
                        .put("length", "45 min")
                        .put("ambient", "22.0 ± 0.5 °C")
                        .put("outcome", "failed")
                        .put("why", "The log was lost when the logger's card filled up during the night before."));
    }

    /** Three quarters of an hour, cold, in the workshop, with a meter at the wall whose calibration had lapsed. */
    private static void writeOld(StudyFolder folder) throws IOException {
        Noise noise = Noise.of("supply/old-1");
        Room workshop = new Room(21.6, 0.2, 1900, 1, 0);
        Soak soak = Soak.run(Encoder.quillet3("A1"), Cooling.SPREADER, 1800, 1, 2700, 10, workshop, 22.6, noise);
        Log log = new Log(Soak.HEADER, 0, 1, 1, 1, 2);
        for (double[] sample : soak.log().rows()) {
            log.row(sample[0], sample[1], sample[2], MAINS_IDLE_W + sample[3] / MAINS_EFFICIENCY, sample[4]);
        }
        folder.writeCsv("old-1", log);
        folder.writeJson(
                "old-1",
                run("old-1", "old supply", "2026-02-11", "2026-02-24T10:20:00Z", "mains-meter")
                        .put("length", "45 min")
                        .put("rested", "16 h")
                        .put("ambient", soak.ambient())
                        .put("log", "../logs/old-1.csv")
                        .put("outcome", "completed"));
    }

    /** A night, begun warm from other work, in the machine room as it warmed up, with the meter at the encoder's input. */
    private static void writeNew(StudyFolder folder) throws IOException {
        Noise noise = Noise.of("supply/new-1");
        Room machineRoom = new Room(24.6, 0.2, 5200, 2, 0.32);
        Soak soak = Soak.run(Encoder.quillet3("A1"), Cooling.SPREADER, 1800, 1, 43200, 60, machineRoom, 58.3, noise);
        folder.writeCsv("new-1", soak.log());
        folder.writeJson(
                "new-1",
                run("new-1", "new supply", "2026-03-30", "2026-04-02T19:45:00Z", "dc-meter-1")
                        .put("length", "12 h")
                        .put("rested", "0 min")
                        .put("ambient", soak.ambient())
                        .put("log", "../logs/new-1.csv")
                        .put(
                                "deviations",
                                List.of(Fields.of(
                                        "from",
                                        "run-length",
                                        "why",
                                        "It was started at the end of the day and nobody was there to stop it.")))
                        .put("outcome", "completed"));
    }

    private static Fields run(String run, String supply, String firmware, String started, String meter) {
        return Fields.of("run", run, "method", "supply-check", "item", "quillet-3", "specimen", "A1")
                .put(
                        "settings",
                        Fields.of(
                                "supply",
                                supply,
                                "cooling",
                                "spreader",
                                "clock",
                                "1800 MHz",
                                "enclosure",
                                "sealed",
                                "firmware",
                                firmware))
                .put("started", started)
                .put(
                        "instruments",
                        Fields.of(
                                "temperature", "die-sensor",
                                "clock", "clock-counter",
                                "power", meter,
                                "ambient", "ambient-probe"));
    }
}
