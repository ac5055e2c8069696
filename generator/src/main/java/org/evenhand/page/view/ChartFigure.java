package org.evenhand.page.view;

import java.util.List;
import java.util.Optional;

/**
 * A chart, drawn by the generator. The same figures stand in a table of the page.
 *
 * @param id of the figure on the page, as {@link Address#chart} forms it
 * @param caption what it shows, in one sentence
 * @param svg with {@code role="img"}, title and description; colours as presentation attributes with the classes
 *     of the style sheet
 * @param source how to read it: what a dot is, what the line across it is; empty for none
 * @param data the figures behind it, as CSV
 * @param pictures the same as files, with title, caveat and source
 * @param caveats of the figures shown
 */
public record ChartFigure(
        String id,
        String caption,
        Markup svg,
        String source,
        Optional<Link> data,
        List<Link> pictures,
        List<Caveat> caveats) {
    public ChartFigure {
        pictures = List.copyOf(pictures);
        caveats = List.copyOf(caveats);
    }
}
