package org.evenhand.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import org.junit.jupiter.api.Test;

class InkTest {

    /** Source: WCAG 2.2, "relative luminance" and "contrast ratio". */
    private static double contrastOnWhite(Color color) {
        double luminance =
                0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
        return 1.05 / (luminance + 0.05);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    /** Source: WCAG 2.2, 1.4.11: 3:1 for what is needed to understand a graphic. */
    @Test
    void marks_stand_out_from_white_paper() {
        for (int i = 0; i < 6; i++) {
            double contrast = contrastOnWhite(Ink.series(i).color());
            assertTrue(contrast >= 3, Ink.series(i) + ": " + contrast);
        }
    }

    /** Source: WCAG 2.2, 1.4.3: 4.5:1 for text. */
    @Test
    void text_stands_out_from_white_paper() {
        for (Ink ink : new Ink[] {Ink.INK, Ink.MUTED, Ink.ACCENT}) {
            assertTrue(contrastOnWhite(ink.color()) >= 4.5, ink.name());
        }
    }

    /** Source: Okabe and Ito, "Color Universal Design", 2008: blue, vermilion, bluish green, reddish purple. */
    @Test
    void the_first_four_series_are_those_made_for_colour_blind_readers() {
        assertEquals(new Color(0, 114, 178), Ink.series(0).color());
        assertEquals(new Color(213, 94, 0), Ink.series(1).color());
        assertEquals(new Color(0, 158, 115), Ink.series(2).color());
        assertEquals(new Color(204, 121, 167), Ink.series(3).color());
    }
}
