package org.evenhand.sample;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/** Which encoder takes less from the battery for an hour of programme? Three days, each with two hours of either kind. */
final class BatteryRuns {

    /** Frames in a second that the live programme asks of the encoder, whichever it is. */
    private static final double PROGRAMME_FRAMES_PER_SECOND = 0.95;

    private static final int SPECIMENS = 3;
    private static final int DAYS = 3;

    private BatteryRuns() {}

    static void write(Path results) throws IOException {
        StudyFolder folder = StudyFolder.in(results, "battery");
        Calendar calendar = new Calendar(LocalDate.of(2026, 3, 16), LocalTime.of(8, 40), 4, 110);
        Noise order = Noise.of("battery");
        for (int day = 0; day < DAYS; day++) {
            // Two pairs a day, each pair in an order drawn by lot.
            for (int pair = 0; pair < 2; pair++) {
                List<String> items = new ArrayList<>(List.of("quillet-2", "quillet-3"));
                order.shuffle(items);
                int number = 2 * day + pair + 1;
                int specimen = (day + pair) % SPECIMENS + 1;
                for (int place = 0; place < 2; place++) {
                    String started = calendar.started(4 * day + 2 * pair + place, order);
                    write(folder, items.get(place), number, specimen, started);
                }
            }
        }
    }

    private static void write(StudyFolder folder, String item, int number, int specimen, String started)
            throws IOException {
        boolean newer = item.equals("quillet-3");
        String name = (newer ? "A" : "B") + specimen;
        String run = item + "-" + number;
        Encoder encoder = newer ? Encoder.quillet3(name) : Encoder.quillet2(name);
        double share = PROGRAMME_FRAMES_PER_SECOND / encoder.framesPerSecond();
        Noise noise = Noise.of("battery/" + run);
        Soak hour = Soak.run(encoder, Cooling.SPREADER, encoder.ratedClockMhz(), share, 3600, 10, noise);
        folder.writeCsv(run, hour.log());
        folder.writeYaml(
                run,
                Fields.of("run", run, "method", "encode-battery", "item", item, "specimen", name)
                        .put(
                                "settings",
                                Fields.of(
                                        "cooling",
                                        "spreader",
                                        "clock",
                                        newer ? "1800 MHz" : "1500 MHz",
                                        "enclosure",
                                        "sealed",
                                        "firmware",
                                        newer ? "2026-02-11" : "2025-10-02",
                                        "supply",
                                        "relay battery"))
                        .put("started", started)
                        .put("length", "60 min")
                        .put("rested", "16 h")
                        .put("ambient", hour.ambient())
                        .put("instruments", Instruments.BATTERY)
                        .put("log", "../logs/" + run + ".csv")
                        .put("readings", Fields.of("delay", delayMs(name, newer, noise) + " ms"))
                        .put("outcome", "completed"));
    }

    /** From microphone to stream; the two kinds are nearly alike here, and specimens scatter more than they differ. */
    private static String delayMs(String specimen, boolean newer, Noise noise) {
        double ofSpecimen = (newer ? 209 : 212) + Noise.of("delay/" + specimen).normal(6);
        return Log.rounded(ofSpecimen + noise.normal(4), 0);
    }
}
