package org.evenhand.sample;

/** The air around the item: a mean, a slow swing of less than a kelvin as the heating cycles, and a steady drift. */
record Room(double meanC, double swingK, double periodS, double phase, double driftKPerHour) {

    static Room ofDay(Noise noise) {
        return new Room(
                22.3 + noise.normal(0.35),
                noise.between(0.1, 0.3),
                noise.between(1500, 3000),
                noise.between(0, 2 * StrictMath.PI),
                0);
    }

    double airC(double seconds) {
        return meanC
                + swingK * StrictMath.sin(2 * StrictMath.PI * seconds / periodS + phase)
                + driftKPerHour * seconds / 3600;
    }
}
