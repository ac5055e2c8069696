package org.evenhand.command.start;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;

/** Made-up soaks: a temperature that approaches its plateau, and a power that rises a little with it. */
final class ExampleRuns {

    static final int REPEATS = 3;

    private static final int LENGTH_S = 30 * 60;
    private static final int STEP_S = 20;
    private static final double TIME_CONSTANT_S = 240;

    private ExampleRuns() {}

    /** The log of a repeat, both numbered from 0; the same at each call. */
    static String log(int level, int repeat) {
        // The numbers of this generator are part of Java's specification: the same everywhere.
        Random random = new Random(1000L * level + repeat);
        double plateauK = 30 * StrictMath.pow(0.8, level) + 0.5 * (repeat - 1);
        double ambient = ambient(level, repeat);
        StringBuilder csv = new StringBuilder("time [s],temperature [°C],power [W],ambient [°C]\n");
        for (int t = 0; t <= LENGTH_S; t += STEP_S) {
            double rise = 0.4 + plateauK * (1 - StrictMath.exp(-t / TIME_CONSTANT_S));
            double room = ambient + 0.1 * StrictMath.sin(2 * Math.PI * t / LENGTH_S);
            csv.append(t).append(',');
            csv.append(number(room + rise + 0.08 * random.nextGaussian(), 1)).append(',');
            csv.append(number(5.8 + 0.006 * rise + 0.02 * random.nextGaussian(), 3))
                    .append(',');
            csv.append(number(room + 0.02 * random.nextGaussian(), 2)).append('\n');
        }
        return csv.toString();
    }

    /** The temperature of the room, in °C. */
    static double ambient(int level, int repeat) {
        return 21.4 + 0.2 * repeat + 0.1 * (level % 3);
    }

    /** When the repeat began: one block of all levels a day, in another order each day. */
    static String started(int level, int repeat, int levels) {
        int place = repeat % 2 == 0 ? level : levels - 1 - level;
        return "2026-03-0" + (2 + repeat) + "T" + (place + 9 < 10 ? "0" : "") + (9 + 2 * place) + ":10:00Z";
    }

    static String number(double value, int decimals) {
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
    }
}
