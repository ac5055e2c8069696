package org.evenhand.sample;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** How many specimens hold the raised clock? Ten specimens, once each, in random order. */
final class YieldRuns {

    private static final int SPECIMENS = 10;

    /** Its highest clock lies just below the one asked of it. */
    private static final int WEAK_SPECIMEN = 7;

    private YieldRuns() {}

    static void write(Path results) throws IOException {
        StudyFolder folder = StudyFolder.in(results, "raised-clock-yield");
        Calendar calendar = new Calendar(LocalDate.of(2026, 4, 20), LocalTime.of(8, 50), 5, 100);
        Noise order = Noise.of("raised-clock-yield");
        List<Integer> specimens =
                new ArrayList<>(IntStream.rangeClosed(1, SPECIMENS).boxed().toList());
        order.shuffle(specimens);
        for (int place = 0; place < SPECIMENS; place++) {
            int number = specimens.get(place);
            String run = "hold-a" + number;
            Noise noise = Noise.of("raised-clock-yield/" + run);
            folder.writeJson(
                    run,
                    Fields.of("run", run, "method", "clock-hold", "item", "quillet-3", "specimen", "A" + number)
                            .put(
                                    "settings",
                                    Fields.of(
                                            "clock",
                                            "2100 MHz",
                                            "core-voltage",
                                            "0.99 V",
                                            "cooling",
                                            "spreader and fan",
                                            "enclosure",
                                            "open",
                                            "firmware",
                                            "2026-02-11",
                                            "supply",
                                            "bench supply"))
                            .put("started", calendar.started(place, order))
                            .put("length", "60 min")
                            .put("rested", "16 h")
                            .put("ambient", Log.rounded(22.4 + noise.normal(0.3), 1) + " ± 0.5 °C")
                            .put("instruments", Fields.of("holds", "frame-checker"))
                            .put("readings", Fields.of("holds", number == WEAK_SPECIMEN ? "no" : "yes"))
                            .put("outcome", "completed"));
        }
    }
}
