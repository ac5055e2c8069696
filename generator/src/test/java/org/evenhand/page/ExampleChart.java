package org.evenhand.page;

import java.util.Locale;
import org.evenhand.page.view.Markup;

/** A small drawing in the manner of the charts: colours as presentation attributes with the style sheet's classes. */
final class ExampleChart {
    private static final double[][] RISE_K = {
        {51.9, 50.3, 51.2, 52.4, 51.2}, {32.4, 31.3, 32.9, 31.7, 32.2}, {31.1, 30.4, 31.6, 30.6, 30.5}
    };
    private static final String[] LEVELS = {"none", "spreader", "spreader and fan"};

    private ExampleChart() {}

    static Markup dots() {
        StringBuilder svg =
                new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"680\" height=\"200\""
                        + " viewBox=\"0 0 680 200\" aria-label=\"Every run as a dot, by cooling\" font-family=\"Archivo, Arial, sans-serif\""
                        + " font-size=\"13\">");
        for (int tick = 25; tick <= 55; tick += 5) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<path d=\"M%1$.1f 10V165\" stroke=\"#ccc\" class=\"c-muted-s\" stroke-width=\"0.4\"/><text x=\"%1$.1f\" y=\"182\" text-anchor=\"middle\" class=\"c-muted-f\">%2$d K</text>",
                    x(tick),
                    tick));
        }
        for (int level = 0; level < LEVELS.length; level++) {
            int y = 35 + 50 * level;
            svg.append(String.format(
                    Locale.ROOT, "<text x=\"0\" y=\"%d\" class=\"c-ink-f\">%s</text>", y + 4, LEVELS[level]));
            for (double rise : RISE_K[level])
                svg.append(String.format(
                        Locale.ROOT,
                        "<circle cx=\"%.1f\" cy=\"%d\" r=\"4.5\" fill=\"#0072b2\" class=\"c-s%d-f\"/>",
                        x(rise),
                        y,
                        level + 1));
        }
        return new Markup(svg.append("</svg>").toString());
    }

    private static double x(double riseK) {
        return 130 + (riseK - 25) * 17.5;
    }
}
