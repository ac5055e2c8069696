package org.evenhand.sample;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/** How much sooner is the newer encoder done with the station's tasks? Three days, each with two runs of either kind. */
final class TaskRuns {

    /** Seconds that the older encoder takes for each task, and the share of them that the newer one needs. */
    private enum Task {
        ENCODE("encode-time", 412, 0.62),
        SCAN("scan-time", 96, 0.81),
        PACK("pack-time", 151, 0.93);

        private final String reading;
        private final double olderS;
        private final double share;

        Task(String reading, double olderS, double share) {
            this.reading = reading;
            this.olderS = olderS;
            this.share = share;
        }
    }

    private static final int SPECIMENS = 3;
    private static final int DAYS = 3;

    private TaskRuns() {}

    static void write(Path results) throws IOException {
        StudyFolder folder = StudyFolder.in(results, "station-tasks");
        Calendar calendar = new Calendar(LocalDate.of(2026, 4, 7), LocalTime.of(9, 10), 4, 70);
        Noise order = Noise.of("station-tasks");
        for (int day = 0; day < DAYS; day++) {
            for (int pair = 0; pair < 2; pair++) {
                List<String> items = new ArrayList<>(List.of("quillet-2", "quillet-3"));
                order.shuffle(items);
                for (int place = 0; place < 2; place++) {
                    String started = calendar.started(4 * day + 2 * pair + place, order);
                    write(folder, items.get(place), 2 * day + pair + 1, (day + pair) % SPECIMENS + 1, started);
                }
            }
        }
    }

    private static void write(StudyFolder folder, String item, int number, int specimen, String started)
            throws IOException {
        boolean newer = item.equals("quillet-3");
        String name = (newer ? "A" : "B") + specimen;
        String run = item + "-" + number;
        Noise noise = Noise.of("station-tasks/" + run);
        Fields readings = Fields.of();
        for (Task task : Task.values()) {
            double ofSpecimen = 1 + Noise.of("station-tasks/" + name + task).normal(0.006);
            double seconds = task.olderS * (newer ? task.share : 1) * ofSpecimen * (1 + noise.normal(0.004));
            readings.put(task.reading, Log.rounded(seconds, 2) + " s");
        }
        folder.writeJson(
                run,
                Fields.of("run", run, "method", "station-tasks", "item", item, "specimen", name)
                        .put(
                                "settings",
                                Fields.of(
                                        "cooling",
                                        "spreader",
                                        "clock",
                                        newer ? "1800 MHz" : "1500 MHz",
                                        "enclosure",
                                        "open",
                                        "firmware",
                                        newer ? "2026-02-11" : "2025-10-02",
                                        "supply",
                                        "bench supply"))
                        .put("started", started)
                        .put("length", "20 min")
                        .put("rested", "1 h")
                        .put("ambient", Log.rounded(21.6 + noise.normal(0.3), 1) + " ± 0.5 °C")
                        .put(
                                "instruments",
                                Fields.of(
                                        "encode-time", "workload-clock",
                                        "scan-time", "workload-clock",
                                        "pack-time", "workload-clock",
                                        "ambient", "ambient-probe"))
                        .put("readings", readings)
                        .put("outcome", "completed"));
    }
}
