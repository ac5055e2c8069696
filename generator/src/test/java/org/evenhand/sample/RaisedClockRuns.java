package org.evenhand.sample;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/** Does speed follow the clock? Three days with four clocks each, in random order, on three specimens. */
final class RaisedClockRuns {

    private record Step(int clockMhz, String coreVoltage) {}

    private static final List<Step> STEPS = List.of(
            new Step(1500, "0.83 V"), new Step(1800, "0.90 V"), new Step(2000, "0.96 V"), new Step(2100, "0.99 V"));
    private static final List<String> SPECIMENS = List.of("A1", "A2", "A3");
    private static final int LENGTH_S = 900;

    private RaisedClockRuns() {}

    static void write(Path results) throws IOException {
        StudyFolder folder = StudyFolder.in(results, "raised-clock");
        Calendar calendar = new Calendar(LocalDate.of(2026, 4, 7), LocalTime.of(9, 20), STEPS.size(), 115);
        Noise order = Noise.of("raised-clock");
        for (int day = 0; day < SPECIMENS.size(); day++) {
            List<Step> today = new ArrayList<>(STEPS);
            order.shuffle(today);
            for (int place = 0; place < today.size(); place++) {
                Step step = today.get(place);
                String specimen = SPECIMENS.get((day + STEPS.indexOf(step)) % SPECIMENS.size());
                String run = "clock-" + step.clockMhz() + "-" + (day + 1);
                write(folder, run, step, specimen, calendar.started(day * STEPS.size() + place, order));
            }
        }
    }

    private static void write(StudyFolder folder, String run, Step step, String specimen, String started)
            throws IOException {
        Noise noise = Noise.of("raised-clock/" + run);
        Soak soak =
                Soak.run(Encoder.quillet3(specimen), Cooling.SPREADER_AND_FAN, step.clockMhz(), 1, LENGTH_S, 5, noise);
        folder.writeCompressed(run, soak.log());
        String seconds = Log.rounded(LENGTH_S + noise.between(-0.02, 0.02), 3);
        folder.writeYaml(
                run,
                Fields.of("run", run, "method", "clock-sweep", "item", "quillet-3", "specimen", specimen)
                        .put(
                                "settings",
                                Fields.of(
                                        "clock",
                                        step.clockMhz() + " MHz",
                                        "core-voltage",
                                        step.coreVoltage(),
                                        "cooling",
                                        "spreader and fan",
                                        "enclosure",
                                        "open",
                                        "firmware",
                                        "2026-02-11",
                                        "supply",
                                        "bench supply"))
                        .put("started", started)
                        .put("length", "15 min")
                        .put("rested", "85 min")
                        .put("ambient", soak.ambient())
                        .put("instruments", Instruments.CLOCK)
                        .put("log", "../logs/" + run + ".csv.gz")
                        .put(
                                "readings",
                                Fields.of("frames", Long.toString(soak.frames()), "encode-time", seconds + " s"))
                        .put("outcome", "completed"));
    }
}
