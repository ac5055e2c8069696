package org.evenhand.check;

/** The groups in which rules are listed. */
public enum Group {
    READING("Reading"),
    RECORD("Record"),
    TIME("Time and soak"),
    SURROUNDINGS("Surroundings"),
    POWER("Power, energy, clock"),
    SOUND("Sound"),
    REPEATS("Repeats and comparisons"),
    PROSE("Prose");

    private final String title;

    Group(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
