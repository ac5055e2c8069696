package org.evenhand.chart;

/** Arranges one kind of chart. */
interface Layout {

    /** Height in pixels that the chart needs at a width. */
    int height(int width);

    /** Draws the chart on a sheet of that width and height. */
    void paint(Sheet sheet);
}
