package org.evenhand.chart;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Text, set in the one font that travels with the program and drawn as outlines.
 *
 * <p>Glyphs are taken at the size of the font's own grid, where every coordinate is a whole number. Nothing is left
 * for a rasteriser, a hinting engine or a font of the machine to decide, and no shaping takes place: text is set
 * character by character.
 */
final class Lettering {

    /** Units of the font's grid in one em. */
    static final int EM = 2048;

    private static final FontRenderContext GRID = new FontRenderContext(null, true, true);
    private static final Font FONT = load();

    /** What was asked of the font before; there are no more entries than characters in it. */
    private static final Map<Integer, Letter> LETTERS = new ConcurrentHashMap<>();

    private static final Map<Integer, Shape> OUTLINES = new ConcurrentHashMap<>();

    private Lettering() {}

    /** One glyph of a line of text: its code in the font and its place on the baseline, in grid units. */
    record Glyph(int code, long x) {}

    /** A character by itself: its glyph's code, and how far the next one stands from it, in grid units. */
    private record Letter(int code, double advance) {}

    /** Something that keeps glyphs as such, instead of a filled shape for each. */
    interface Sink {
        void glyphs(List<Glyph> glyphs, double x, double y, double sizePx);
    }

    /** The font, for libraries that ask for one. */
    static Font font(float sizePx) {
        return FONT.deriveFont(sizePx);
    }

    static FontRenderContext context() {
        return GRID;
    }

    /** Length of a text on its baseline in pixels. */
    static double width(String text, double sizePx) {
        String cleaned = clean(text);
        double x = 0;
        for (int i = 0; i < cleaned.length(); i += Character.charCount(cleaned.codePointAt(i))) {
            x += letter(cleaned.codePointAt(i)).advance();
        }
        return x * sizePx / EM;
    }

    /** Draws text in the current colour; {@code x} is the left end of its baseline. */
    static void draw(Graphics2D g, String text, double x, double y, double sizePx) {
        List<Glyph> line = line(text);
        if (g instanceof Sink sink) {
            sink.glyphs(line, x, y, sizePx);
            return;
        }
        Path2D outline = new Path2D.Float();
        line.forEach(glyph -> outline.append(
                outline(glyph.code()).getPathIterator(AffineTransform.getTranslateInstance(glyph.x(), 0)), false));
        AffineTransform toPage = AffineTransform.getTranslateInstance(x, y);
        toPage.scale(sizePx / EM, sizePx / EM);
        g.fill(toPage.createTransformedShape(outline));
    }

    /** Outline of a glyph in grid units, y downwards; empty for a blank. Not to be altered. */
    static Shape outline(int code) {
        return OUTLINES.computeIfAbsent(
                code, c -> FONT.createGlyphVector(GRID, new int[] {c}).getOutline());
    }

    private static Letter letter(int character) {
        return LETTERS.computeIfAbsent(character, c -> {
            GlyphVector alone = FONT.createGlyphVector(GRID, Character.toString(c));
            double advance = alone.getGlyphPosition(alone.getNumGlyphs()).getX();
            return new Letter(alone.getGlyphCode(0), advance);
        });
    }

    /**
     * Breaks a text at blanks into lines no wider than asked; a word that is too long, and what comes after the last
     * line allowed, end in an ellipsis.
     */
    static List<String> wrap(String text, double sizePx, double widthPx, int mostLines) {
        List<String> lines = new ArrayList<>();
        String line = "";
        String[] words = clean(text).trim().split(" +");
        for (int i = 0; i < words.length; i++) {
            String longer = line.isEmpty() ? words[i] : line + " " + words[i];
            if (line.isEmpty() || width(longer, sizePx) <= widthPx) {
                line = longer;
            } else if (lines.size() + 1 < mostLines) {
                lines.add(shorten(line, sizePx, widthPx));
                line = words[i];
            } else {
                line = longer;
            }
        }
        lines.add(shorten(line, sizePx, widthPx));
        return List.copyOf(lines);
    }

    /** The text if it fits, else as much of it as fits before an ellipsis. */
    static String shorten(String text, double sizePx, double widthPx) {
        if (width(text, sizePx) <= widthPx) {
            return text;
        }
        String kept = text;
        while (!kept.isEmpty() && !(width(kept + "…", sizePx) <= widthPx)) {
            kept = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1));
        }
        return kept.strip() + "…";
    }

    private static List<Glyph> line(String text) {
        List<Glyph> glyphs = new ArrayList<>();
        double x = 0;
        String cleaned = clean(text);
        for (int i = 0; i < cleaned.length(); i += Character.charCount(cleaned.codePointAt(i))) {
            Letter letter = letter(cleaned.codePointAt(i));
            glyphs.add(new Glyph(letter.code(), StrictMath.round(x)));
            x += letter.advance();
        }
        return glyphs;
    }

    /** Composed characters, and a blank for whatever has no shape of its own, such as a mark that turns the direction. */
    private static String clean(String text) {
        if (text.chars().allMatch(c -> c >= ' ' && c < 0x7F)) {
            return text;
        }
        StringBuilder cleaned = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(c -> {
            int type = Character.getType(c);
            boolean shapeless = type == Character.CONTROL
                    || type == Character.FORMAT
                    || type == Character.SURROGATE
                    || type == Character.LINE_SEPARATOR
                    || type == Character.PARAGRAPH_SEPARATOR;
            cleaned.appendCodePoint(shapeless ? ' ' : c);
        });
        return cleaned.toString();
    }

    private static Font load() {
        System.setProperty("java.awt.headless", "true");
        try {
            doWithoutInstalledFonts();
            try (InputStream in = Lettering.class.getResourceAsStream("DejaVuSans.ttf")) {
                if (in == null) {
                    throw new IllegalStateException("the font DejaVuSans.ttf is missing from the program");
                }
                return Font.createFont(Font.TRUETYPE_FONT, in).deriveFont((float) EM);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the font of the charts cannot be read", e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the font of the charts is damaged", e);
        }
    }

    /**
     * On Linux, AWT fails when no font is installed, even for a font from a stream, unless it is given a list of the
     * machine's fonts. It is given an empty one, before it looks.
     */
    private static void doWithoutInstalledFonts() throws IOException {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (!system.contains("linux") || System.getProperty("sun.awt.fontconfig") != null) {
            return;
        }
        Path list = Files.createTempFile("fonts", ".properties");
        list.toFile().deleteOnExit();
        Files.writeString(list, "version=1\nsequence.allfonts=default\n");
        System.setProperty("sun.awt.fontconfig", list.toString());
    }
}
