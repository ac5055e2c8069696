package org.evenhand.sample;

/**
 * A way of cooling, as one thermal resistance to the surroundings and one heat capacity.
 *
 * @param resistanceKPerW steady rise above ambient for each watt, in K/W
 * @param capacityJPerK heat taken up for each kelvin, in J/K
 */
record Cooling(double resistanceKPerW, double capacityJPerK) {

    static final Cooling NONE = new Cooling(9.6, 34);
    static final Cooling SPREADER = new Cooling(5.3, 58);
    static final Cooling SPREADER_AND_FAN = new Cooling(2.9, 60);

    /** By the name that the sample's runs give to the level. */
    static Cooling named(String level) {
        return switch (level) {
            case "none" -> NONE;
            case "spreader" -> SPREADER;
            case "spreader and fan" -> SPREADER_AND_FAN;
            default -> throw new IllegalArgumentException("no cooling is called " + level);
        };
    }
}
