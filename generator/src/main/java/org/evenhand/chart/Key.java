package org.evenhand.chart;

import java.util.ArrayList;
import java.util.List;

/** Samples of marks with the words that say what they mean, in as many lines as the width asks for. */
final class Key {

    static final double LINE = 18;

    private static final double SAMPLE = 28;
    private static final double GAP = 20;

    /** Draws a sample some 20 px wide from {@code x} on, centred on {@code y}. */
    interface Sample {
        void paint(Sheet sheet, double x, double y);
    }

    private record Entry(Sample sample, String words) {
        double width() {
            return SAMPLE + Lettering.width(words, Sheet.SMALL);
        }
    }

    private final List<Entry> entries = new ArrayList<>();

    /** Adds an entry; one without words is left out. */
    Key with(Sample sample, String words) {
        if (!words.isEmpty()) {
            entries.add(new Entry(sample, words));
        }
        return this;
    }

    static Sample sign(Sign sign, Ink ink) {
        return (sheet, x, y) -> sheet.sign(sign, ink, sign == Sign.AT_MOST ? x + 16 : x + 10, y, 7);
    }

    static Sample interval() {
        return (sheet, x, y) -> {
            sheet.line(Ink.INK, 1.6, x, y, x + 21, y);
            sheet.sign(Sign.DIAMOND, Ink.INK, x + 10.5, y, 7);
        };
    }

    static Sample meanInBand() {
        return (sheet, x, y) -> {
            sheet.shade(Ink.INK, 0.35, x, y - 5, x + 21, y + 5);
            sheet.line(Ink.INK, 1.5, x, y, x + 21, y);
        };
    }

    static Sample shade(Ink ink, double opacity) {
        return (sheet, x, y) -> sheet.shade(ink, opacity, x, y - 5, x + 21, y + 5);
    }

    static Sample line(Ink ink, double widthPx, float[] dash) {
        return (sheet, x, y) -> sheet.dashes(ink, widthPx, dash, x, y, x + 22, y);
    }

    double height(double width) {
        double x = 0;
        int lines = entries.isEmpty() ? 0 : 1;
        for (Entry entry : entries) {
            if (x > 0 && x + entry.width() > width) {
                lines++;
                x = 0;
            }
            x += entry.width() + GAP;
        }
        return lines * LINE;
    }

    /** Draws the key below the line at {@code top}. */
    void paint(Sheet sheet, double left, double width, double top) {
        double x = 0;
        double baseline = top + LINE - 4;
        for (Entry entry : entries) {
            if (x > 0 && x + entry.width() > width) {
                baseline += LINE;
                x = 0;
            }
            entry.sample().paint(sheet, left + x, baseline - 4);
            String words = Lettering.shorten(entry.words(), Sheet.SMALL, width - SAMPLE);
            sheet.text(Ink.MUTED, Sheet.SMALL, Sheet.Anchor.START, left + x + SAMPLE, baseline, words);
            x += entry.width() + GAP;
        }
    }
}
