package org.evenhand.chart;

import java.util.Arrays;

/** A number for each colour, how often it was met or where it stands: with open addressing, since a picture has millions of pixels. */
final class Colours {

    private static final int NONE = -1;

    private int[] rgb = new int[1024];
    private int[] values = new int[1024];
    private int size;

    Colours() {
        Arrays.fill(rgb, NONE);
    }

    int size() {
        return size;
    }

    /** Adds to the value of a colour, which is 0 at first. */
    void add(int colour, int value) {
        int at = slot(colour);
        if (rgb[at] == NONE) {
            rgb[at] = colour;
            size++;
        }
        values[at] += value;
        if (2 * size > rgb.length) {
            grow();
        }
    }

    /** The value of a colour; 0 if there is none. */
    int value(int colour) {
        return values[slot(colour)];
    }

    /** Takes a colour, as {@code 0xRRGGBB}, and its value. */
    interface Each {
        void take(int colour, int value);
    }

    /** In no order. */
    void forEach(Each each) {
        for (int at = 0; at < rgb.length; at++) {
            if (rgb[at] != NONE) {
                each.take(rgb[at], values[at]);
            }
        }
    }

    private int slot(int colour) {
        int mask = rgb.length - 1;
        // Fibonacci hashing (D. E. Knuth, The Art of Computer Programming 3, 6.4): the upper bits are those well mixed.
        int at = (colour * 0x9E3779B1) >>> Integer.numberOfLeadingZeros(mask);
        while (rgb[at] != NONE && rgb[at] != colour) {
            at = at + 1 & mask;
        }
        return at;
    }

    private void grow() {
        int[] colours = rgb;
        int[] of = values;
        rgb = new int[2 * colours.length];
        values = new int[2 * colours.length];
        Arrays.fill(rgb, NONE);
        for (int i = 0; i < colours.length; i++) {
            if (colours[i] != NONE) {
                int at = slot(colours[i]);
                rgb[at] = colours[i];
                values[at] = of[i];
            }
        }
    }
}
