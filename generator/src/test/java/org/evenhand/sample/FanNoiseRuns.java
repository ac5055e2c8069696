package org.evenhand.sample;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;

/** Can the fan be heard in the studio? Three fans at half and full speed, twice each, in pairs with the order drawn by lot. */
final class FanNoiseRuns {

    private static final List<String> SPECIMENS = List.of("F1", "F2", "F3");
    private static final int PAIRS = 6;
    private static final int MINUTES_BEFORE = 3;
    private static final double HALF_DB = 30.4;
    private static final double FULL_DB = 38.2;

    private FanNoiseRuns() {}

    static void write(Path results) throws IOException {
        StudyFolder folder = StudyFolder.in(results, "fan-noise");
        Calendar calendar = new Calendar(LocalDate.of(2026, 4, 13), LocalTime.of(19, 30), 4, 30);
        Noise order = Noise.of("fan-noise");
        for (int pair = 0; pair < PAIRS; pair++) {
            List<String> speeds = new ArrayList<>(List.of("half", "full"));
            order.shuffle(speeds);
            for (int place = 0; place < 2; place++) {
                String run = speeds.get(place) + "-" + (pair + 1);
                String specimen = SPECIMENS.get(pair % SPECIMENS.size());
                write(folder, run, speeds.get(place), specimen, calendar.started(2 * pair + place, order));
            }
        }
    }

    private static void write(StudyFolder folder, String run, String speed, String specimen, String started)
            throws IOException {
        Noise noise = Noise.of("fan-noise/" + run);
        double backgroundDb = 23.9 + noise.normal(0.25);
        double fanDb = (speed.equals("half") ? HALF_DB : FULL_DB)
                + Noise.of("harrow-fan/" + specimen).normal(0.5)
                + noise.normal(0.25);
        folder.writeJson(
                run,
                Fields.of("run", run, "method", "fan-sound", "item", "harrow-fan", "specimen", specimen)
                        .put("settings", Fields.of("fan-speed", speed, "place", "studio", "supply", "bench supply"))
                        .put("started", started)
                        .put("length", "5 min")
                        .put("ambient", Log.rounded(22.6 + noise.normal(0.3), 1) + " ± 0.5 °C")
                        .put("background", Log.rounded(backgroundDb, 1) + " dB(A)")
                        .put("background-read", before(started))
                        .put("distance", "1.00 m")
                        .put("instruments", Fields.of("sound", "sound-meter-1", "heard", "listener"))
                        .put(
                                "readings",
                                Fields.of(
                                        "sound",
                                        Log.rounded(together(fanDb, backgroundDb), 1) + " dB(A)",
                                        "heard",
                                        heard(fanDb + noise.normal(0.5))))
                        .put("outcome", "completed"));
    }

    /** When the background was read: with the fan off, before the run. */
    private static String before(String started) {
        return OffsetDateTime.parse(started)
                .minusMinutes(MINUTES_BEFORE)
                .format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }

    /** Energetic sum of two levels: what a meter shows that hears both. */
    private static double together(double firstDb, double secondDb) {
        return 10 * StrictMath.log10(StrictMath.pow(10, firstDb / 10) + StrictMath.pow(10, secondDb / 10));
    }

    /** What a listener in the next room says of a fan of this level. */
    private static String heard(double fanDb) {
        return fanDb < 34 ? "silent" : fanDb < 38.9 ? "faint" : "clear";
    }
}
