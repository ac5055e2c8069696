package org.evenhand.chart;

/** How the line of a series looks: colour and dashes, so that either alone tells it apart. */
record LineLook(Ink ink, double widthPx, float[] dash) {

    private static final float[][] DASHES = {null, {7, 3}, {2, 2.5f}, {9, 3, 2, 3}, {12, 4}, {4, 2, 1, 2, 1, 2}};

    /** The look of the series with the given index from 0. */
    static LineLook series(int index) {
        return new LineLook(Ink.series(index), 1.5, DASHES[index % DASHES.length]);
    }

    /** The look of what stays in the back. */
    static LineLook back() {
        return new LineLook(Ink.MUTED, 1.1, new float[] {1.5f, 2.5f});
    }
}
