package org.evenhand.page;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Supplier;
import org.evenhand.cache.Cache;
import org.evenhand.chart.Caption;
import org.evenhand.chart.Charts;
import org.evenhand.chart.Figure;
import org.evenhand.chart.PixelSize;
import org.evenhand.chart.Plate;
import org.evenhand.page.view.Markup;
import org.evenhand.words.Words;

/**
 * Charts as pages carry them: drawn twice, so that a phone need not scroll; the style sheet shows the one that fits.
 *
 * @param cache of those drawn before
 * @param words of the language
 */
public record Drawings(Cache cache, Words words) {

    /** Width in CSS pixels that a phone shows without scrolling. */
    public static final int NARROW = 320;

    /**
     * Draws a figure.
     *
     * @param id begins the ids within the drawing; unique on its page; letters, digits and hyphens, a letter first
     * @param title a few words, plain text
     * @param description the text alternative, plain text
     */
    public Markup of(Figure figure, String id, String title, String description) {
        return new Markup(
                text("drawing", List.of(figure, id, title, description), () -> drawn(figure, id, title, description)));
    }

    /** A drawing that stands for itself, as SVG. */
    public String file(Plate plate, Caption caption, int width) {
        return text(
                "file",
                List.of(plate, caption, width),
                () -> Charts.file(plate, caption, width, words).svg());
    }

    /**
     * The same as a picture, which is put into a site if it is wanted there.
     *
     * @param path the picture's, from the site's root
     * @return how large it is, wanted or not
     */
    public PixelSize png(Plate plate, int width, int scale, String path, PageSink sink) {
        if (sink.wants(path)) {
            sink.put(
                    path, bytes("picture", List.of(plate, width, scale), () -> Charts.png(plate, width, scale, words)));
        }
        return Charts.pixels(plate, width, scale, words);
    }

    private String text(String purpose, List<Object> of, Supplier<String> drawing) {
        byte[] bytes = bytes(purpose, of, () -> drawing.get().getBytes(StandardCharsets.UTF_8));
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private byte[] bytes(String purpose, List<Object> of, Supplier<byte[]> drawing) {
        String key = cache.key(purpose, words.language(), of);
        return cache.get(key).orElseGet(() -> {
            byte[] drawn = drawing.get();
            cache.put(key, drawn);
            return drawn;
        });
    }

    private String drawn(Figure figure, String id, String title, String description) {
        String wide = Charts.svg(figure, new Caption(id, title, description), Charts.COLUMN, words)
                .svg();
        String narrow = Charts.svg(figure, new Caption(id + "-narrow", title, description), NARROW, words)
                .svg();
        return "<div class=\"wide-only\">" + wide + "</div><div class=\"narrow-only\">" + narrow + "</div>";
    }
}
