package org.evenhand.check.faults;

import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Sound studies with honest noise: what somebody careful would hand in. The true values, the room and every sample come from a
 * seed; nothing else differs between two studies of a kind.
 */
enum Sound {
    /** Two coolings, six soaks with logs. */
    SOAK("soak", "plate") {
        @Override
        void vary(TextFolder folder, SplittableRandom random) {
            double plate = 28 + 6 * random.nextDouble();
            double none = 42 + 6 * random.nextDouble();
            for (String log : folder.matching("studies/plate/logs/.*")) {
                String run = log.replaceAll(".*/|\\.csv", "");
                double room = 21.4 + normal(random, 0.25);
                double rise = (run.startsWith("plate") ? plate : none) + normal(random, 0.4);
                folder.rows(log, row -> soak(row, room, rise, random));
                folder.edit(
                        "studies/plate/runs/" + run + ".json",
                        "\"ambient\": \"[0-9.]+",
                        "\"ambient\": \"" + text(room, 1));
            }
        }
    },
    /** Two firmwares, readings only. */
    ENCODE("encode", "firmware") {
        @Override
        void vary(TextFolder folder, SplittableRandom random) {
            double gain = normal(random, 0.02);
            for (String run : folder.matching("studies/firmware/runs/.*")) {
                double frames = 61_000 * (1 + (run.contains("/new") ? gain : 0)) * (1 + normal(random, 0.003));
                folder.edit(run, "\"frames\": \"\\d+\"", "\"frames\": \"" + Math.round(frames) + "\"");
                folder.edit(run, "600\\.\\d+ s", text(600 + normal(random, 0.1) + 0.05, 1) + " s");
            }
        }
    },
    /** Two speeds of a fan, levels over their background. */
    FAN("fan", "fan") {
        @Override
        void vary(TextFolder folder, SplittableRandom random) {
            for (String run : folder.matching("studies/fan/runs/.*")) {
                double level = (run.contains("/full") ? 44 : 38.5) + normal(random, 0.4);
                folder.edit(run, "\"sound\": \"\\d+\\.\\d dB", "\"sound\": \"" + text(level, 1) + " dB");
                folder.edit(
                        run, "\"background\": \"\\d+\\.\\d", "\"background\": \"" + text(29 + normal(random, 0.3), 1));
            }
        }
    },
    /** Three clocks, a trend. */
    CLOCKS("clocks", "clock") {
        @Override
        void vary(TextFolder folder, SplittableRandom random) {
            double exponent = 0.6 + 0.4 * random.nextDouble();
            for (String run : folder.matching("studies/clock/runs/.*")) {
                double clock = Double.parseDouble(run.replaceAll(".*at-|-\\d\\.json", ""));
                double frames = 61_000 * Math.pow(clock / 1800, exponent) * (1 + normal(random, 0.003));
                folder.edit(run, "\"frames\": \"\\d+\"", "\"frames\": \"" + Math.round(frames) + "\"");
            }
        }
    },
    /** Three specimens watched for a night. */
    COUNTS("counts", "watch") {
        @Override
        void vary(TextFolder folder, SplittableRandom random) {
            for (String run : folder.matching("studies/watch/runs/.*")) {
                boolean holds = random.nextDouble() < 0.8;
                String readings = "\"readings\": {\"holds\": \"" + (holds ? "yes" : "no") + "\", \"failures\": \""
                        + (holds ? 0 : 1) + "\"}";
                folder.put(run, folder.get(run).replaceAll("(?s)\"readings\": \\{.*?\\}", readings));
            }
        }
    };

    private final String base;
    private final String study;

    Sound(String base, String study) {
        this.base = base;
        this.study = study;
    }

    abstract void vary(TextFolder folder, SplittableRandom random);

    String study() {
        return study;
    }

    TextFolder folder(long seed) {
        TextFolder folder = TextFolder.ofBase(base);
        vary(folder, new SplittableRandom(1000L * ordinal() + seed));
        return folder;
    }

    /** One row of a soak: an exponential approach, a room that wanders a little, an instrument that scatters. */
    private static String[] soak(String[] row, double room, double rise, SplittableRandom random) {
        double timeS = Double.parseDouble(row[0]);
        double ambient = room + normal(random, 0.04);
        double temperature = room + 0.5 + rise * (1 - Math.exp(-timeS / 380)) + normal(random, 0.08);
        double powerW = 6.2 + 0.12 * (temperature - room) / 46 + normal(random, 0.015);
        return new String[] {
            row[0], text(temperature, 1), Long.toString(1800 - random.nextInt(2)), text(powerW, 3), text(ambient, 2)
        };
    }

    /** The sum of twelve uniform numbers less six: near enough to normal, and never far off. */
    static double normal(SplittableRandom random, double deviation) {
        double sum = -6;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return deviation * sum;
    }

    static String text(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
