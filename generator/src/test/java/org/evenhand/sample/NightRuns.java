package org.evenhand.sample;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;

/** What does a night without failure prove? Four specimens, a night each. */
final class NightRuns {

    private static final List<String> SPECIMENS = List.of("A3", "A1", "A4", "A2");

    private NightRuns() {}

    static void write(Path results) throws IOException {
        StudyFolder folder = StudyFolder.in(results, "night-run");
        Calendar calendar = new Calendar(LocalDate.of(2026, 4, 27), LocalTime.of(19, 40), 1, 0);
        Noise order = Noise.of("night-run");
        for (int night = 0; night < SPECIMENS.size(); night++) {
            String run = "night-" + (night + 1);
            Noise noise = Noise.of("night-run/" + run);
            folder.writeYaml(
                    run,
                    Fields.of("run", run, "method", "night-watch", "item", "quillet-3")
                            .put("specimen", SPECIMENS.get(night))
                            .put(
                                    "settings",
                                    Fields.of(
                                            "clock",
                                            "2000 MHz",
                                            "core-voltage",
                                            "0.96 V",
                                            "cooling",
                                            "spreader and fan",
                                            "enclosure",
                                            "sealed",
                                            "firmware",
                                            "2026-02-11",
                                            "supply",
                                            "relay battery"))
                            .put("started", calendar.started(night, order))
                            .put("length", "12 h")
                            .put("rested", "8 h")
                            .put("ambient", Log.rounded(20.8 + noise.normal(0.4), 1) + " ± 0.5 °C")
                            .put("instruments", Fields.of("failures", "frame-checker"))
                            .put("readings", Fields.of("failures", "0"))
                            .put("outcome", "completed"));
        }
    }
}
