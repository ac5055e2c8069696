package org.evenhand.sample;

import java.util.List;

/**
 * A seeded stream of random numbers that gives the same bits on every platform and Java version.
 *
 * <p>The generator is SplitMix64; normal deviates come from the Box–Muller transform through StrictMath. Source: Steele, Lea and
 * Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014; Box and Muller, Ann. Math. Stat. 29 (1958) 610.
 */
final class Noise {

    private static final long GOLDEN_GAMMA = 0x9E3779B97F4A7C15L;

    private long state;

    Noise(long seed) {
        state = seed;
    }

    /** A stream of its own for a named thing, so that adding one run leaves the others as they were. */
    static Noise of(String name) {
        long hash = 1125899906842597L;
        for (int i = 0; i < name.length(); i++) {
            hash = 31 * hash + name.charAt(i);
        }
        return new Noise(hash);
    }

    long nextLong() {
        state += GOLDEN_GAMMA;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** Uniform in [0, 1). */
    double uniform() {
        return (nextLong() >>> 11) * 0x1.0p-53;
    }

    /** Uniform in [low, high). */
    double between(double low, double high) {
        return low + (high - low) * uniform();
    }

    /** Normal with mean zero and the standard deviation given. */
    double normal(double standardDeviation) {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - uniform()));
        return standardDeviation * radius * StrictMath.cos(2 * StrictMath.PI * uniform());
    }

    /** Puts a mutable list into random order (Fisher–Yates). */
    <T> void shuffle(List<T> list) {
        for (int i = list.size() - 1; i > 0; i--) {
            int j = (int) (uniform() * (i + 1));
            T kept = list.get(i);
            list.set(i, list.get(j));
            list.set(j, kept);
        }
    }
}
