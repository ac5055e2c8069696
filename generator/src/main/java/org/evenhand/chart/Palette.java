package org.evenhand.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The colours of a picture: all of them if they are at most 256, else the commonest of those that an eye tells apart.
 * What is left over are shades of smooth edges.
 */
final class Palette {

    private static final int MOST = 256;

    /** Squared distance within which two shades of an edge look alike: some twelve steps of 256 in each of the three. */
    private static final int ALIKE = 3 * 12 * 12;

    private final int[] colours;

    /** One more than the index of each colour met so far. */
    private final Colours indices = new Colours();

    private Palette(int[] colours) {
        this.colours = colours;
        for (int i = 0; i < colours.length; i++) {
            indices.add(colours[i], i + 1);
        }
    }

    /**
     * @param pixels as {@code 0xRRGGBB}, row by row; what stands above does not matter
     * @param width of a row
     */
    static Palette of(int[] pixels, int width) {
        List<Colour> all = count(pixels, width);
        all.sort(Comparator.comparing((Colour c) -> -c.count()).thenComparing(Colour::rgb));
        int alike = all.size() > MOST ? ALIKE : 0;
        int[] chosen = new int[Math.min(MOST, all.size())];
        int count = 0;
        for (int i = 0; i < all.size() && count < chosen.length; i++) {
            int rgb = all.get(i).rgb();
            if (count == 0 || distance(rgb, chosen[nearest(rgb, chosen, count)]) > alike) {
                chosen[count++] = rgb;
            }
        }
        return new Palette(Arrays.stream(chosen, 0, count).sorted().toArray());
    }

    private record Colour(int rgb, int count) {}

    private static List<Colour> count(int[] pixels, int width) {
        Colours counts = new Colours();
        for (int row = 0; row < pixels.length; ) {
            int alike = row + width;
            while (alike < pixels.length && Arrays.equals(pixels, row, row + width, pixels, alike, alike + width)) {
                alike += width;
            }
            int rows = (alike - row) / width;
            int from = row;
            for (int i = row + 1; i <= row + width; i++) {
                if (i == row + width || pixels[i] != pixels[from]) {
                    counts.add(pixels[from] & 0xFFFFFF, rows * (i - from));
                    from = i;
                }
            }
            row = alike;
        }
        List<Colour> colours = new ArrayList<>(counts.size());
        counts.forEach((rgb, count) -> colours.add(new Colour(rgb, count)));
        return colours;
    }

    /** Red, green and blue of each colour, one after the other. */
    byte[] bytes() {
        byte[] bytes = new byte[3 * colours.length];
        for (int i = 0; i < colours.length; i++) {
            bytes[3 * i] = (byte) (colours[i] >> 16);
            bytes[3 * i + 1] = (byte) (colours[i] >> 8);
            bytes[3 * i + 2] = (byte) colours[i];
        }
        return bytes;
    }

    /** Writes the index of each of {@code count} pixels from {@code from} on. */
    void indices(int[] pixels, int from, int count, byte[] to, int at) {
        int last = -1;
        byte index = 0;
        for (int i = 0; i < count; i++) {
            int rgb = pixels[from + i] & 0xFFFFFF;
            if (rgb != last) {
                index = (byte) index(rgb);
                last = rgb;
            }
            to[at + i] = index;
        }
    }

    private int index(int rgb) {
        int known = indices.value(rgb);
        if (known > 0) {
            return known - 1;
        }
        int nearest = nearest(rgb, colours, colours.length);
        indices.add(rgb, nearest + 1);
        return nearest;
    }

    /** Of equally near ones the first. */
    private static int nearest(int rgb, int[] among, int count) {
        int best = 0;
        for (int i = 1; i < count; i++) {
            if (distance(rgb, among[i]) < distance(rgb, among[best])) {
                best = i;
            }
        }
        return best;
    }

    /** The sum of squares over red, green and blue. */
    private static int distance(int one, int other) {
        int red = (one >> 16 & 255) - (other >> 16 & 255);
        int green = (one >> 8 & 255) - (other >> 8 & 255);
        int blue = (one & 255) - (other & 255);
        return red * red + green * green + blue * blue;
    }
}
