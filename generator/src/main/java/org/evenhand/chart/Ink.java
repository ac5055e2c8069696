package org.evenhand.chart;

import java.awt.Color;
import java.util.HexFormat;

/**
 * The colours of a chart by their role.
 *
 * <p>In SVG each is a class, {@code c-ink-f} for fills and {@code c-ink-s} for strokes, so that a style sheet may set
 * it for light, dark and print; the value below is the fallback. The series are those of Okabe and Ito that reach a
 * contrast of 3:1 on white, then two more, chosen dark.
 *
 * <p>Source: M. Okabe, K. Ito, "Color Universal Design", 2008; WCAG 2.2, 1.4.11.
 */
enum Ink {
    INK(0x1A1A1A, "ink"),
    PAPER(0xFFFFFF, "paper"),
    MUTED(0x5C5C5C, "muted"),
    ACCENT(0x8C2F39, "accent"),
    SERIES_1(0x0072B2, "s1"),
    SERIES_2(0xD55E00, "s2"),
    SERIES_3(0x009E73, "s3"),
    SERIES_4(0xCC79A7, "s4"),
    SERIES_5(0x7A5C00, "s5"),
    SERIES_6(0x4B3F8F, "s6");

    private final Color color;
    private final String role;

    Ink(int rgb, String role) {
        this.color = new Color(rgb);
        this.role = role;
    }

    Color color() {
        return color;
    }

    /** The colour with the given opacity, 0 to 1. */
    Color tint(double opacity) {
        return new Color(color.getRed(), color.getGreen(), color.getBlue(), (int) StrictMath.round(opacity * 255));
    }

    /** The colour of the series with the given index from 0; begins again after six. */
    static Ink series(int index) {
        return values()[SERIES_1.ordinal() + index % 6];
    }

    /** The role of a colour, whatever its opacity. */
    static Ink of(Color color) {
        for (Ink ink : values()) {
            if ((ink.color.getRGB() & 0xFFFFFF) == (color.getRGB() & 0xFFFFFF)) {
                return ink;
            }
        }
        throw new IllegalArgumentException("no role for the colour " + color);
    }

    String fillClass() {
        return "c-" + role + "-f";
    }

    String strokeClass() {
        return "c-" + role + "-s";
    }

    String hex() {
        return "#" + HexFormat.of().toHexDigits(color.getRGB(), 6);
    }
}
