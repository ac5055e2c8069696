package org.evenhand.sample;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/** Does the sealed relay box need a heat spreader? Six days, each with the three levels in random order; six specimens, each once at each level. */
final class HeatSpreaderRuns {

    private static final List<String> LEVELS = List.of("none", "spreader", "spreader and fan");
    private static final List<String> SPECIMENS = List.of("A1", "A2", "A3", "A4", "A5", "A6");
    private static final int DAYS = 6;

    private HeatSpreaderRuns() {}

    static void write(Path results) throws IOException {
        StudyFolder folder = StudyFolder.in(results, "heat-spreader");
        Calendar calendar = new Calendar(LocalDate.of(2026, 3, 2), LocalTime.of(9, 5), LEVELS.size(), 130);
        Noise order = Noise.of("heat-spreader");
        for (int day = 0; day < DAYS; day++) {
            List<String> today = new ArrayList<>(LEVELS);
            order.shuffle(today);
            for (int place = 0; place < today.size(); place++) {
                String level = today.get(place);
                String run = level.replace(' ', '-') + "-" + (day + 1);
                // Over the six days each level meets each specimen once.
                String specimen = SPECIMENS.get((day + LEVELS.indexOf(level)) % SPECIMENS.size());
                String started = calendar.started(day * LEVELS.size() + place, order);
                write(folder, run, level, specimen, started);
            }
        }
    }

    private static void write(StudyFolder folder, String run, String level, String specimen, String started)
            throws IOException {
        Soak soak = Soak.run(
                Encoder.quillet3(specimen), Cooling.named(level), 1800, 1, 2700, 5, Noise.of("heat-spreader/" + run));
        folder.writeCsv(run, soak.log());
        folder.writeJson(
                run,
                Fields.of("run", run, "method", "thermal-soak", "item", "quillet-3", "specimen", specimen)
                        .put(
                                "settings",
                                Fields.of(
                                        "cooling",
                                        level,
                                        "clock",
                                        "1800 MHz",
                                        "enclosure",
                                        "sealed",
                                        "firmware",
                                        "2026-02-11",
                                        "supply",
                                        "bench supply"))
                        .put("started", started)
                        .put("length", "45 min")
                        .put("rested", "16 h")
                        .put("ambient", soak.ambient())
                        .put("instruments", Instruments.SOAK)
                        .put("log", "../logs/" + run + ".csv")
                        .put("readings", Fields.of("frames", Long.toString(soak.frames())))
                        .put("outcome", "completed"));
    }
}
