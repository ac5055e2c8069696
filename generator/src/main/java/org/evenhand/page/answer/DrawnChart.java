package org.evenhand.page.answer;

import java.util.List;
import java.util.Optional;
import org.evenhand.chart.Figure;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Caveat;
import org.evenhand.page.view.ChartFigure;
import org.evenhand.page.view.Link;

/**
 * A chart on the way to the page and to its files.
 *
 * @param name which no other chart of the page has
 * @param title a few words
 * @param description the text alternative: what it shows, with the uncertainty
 * @param figure that is drawn
 * @param source how to read it; empty where the chart says all
 * @param data file with the figures behind it
 * @param caveats of the figures shown, worst first
 */
record DrawnChart(
        String name,
        String title,
        String description,
        Figure figure,
        String source,
        String data,
        List<Caveat> caveats) {

    DrawnChart {
        caveats = List.copyOf(caveats);
    }

    String id() {
        return Address.chart(name);
    }

    /** @param pictures the same as files */
    ChartFigure view(Answer answer, List<Link> pictures) {
        return new ChartFigure(
                id(),
                title,
                answer.context().drawings().of(figure, idWithin(), title, description),
                source,
                Optional.of(Link.to(answer.words().say("chart.data"), answer.beside(data))),
                pictures,
                caveats);
    }

    /** Begins the ids within the drawing, which take ASCII letters, digits and hyphens. */
    String idWithin() {
        StringBuilder id = new StringBuilder("chart-");
        name.codePoints().forEach(c -> {
            if (c < 128 && (Character.isLetterOrDigit(c) || c == '-')) {
                id.appendCodePoint(c);
            } else {
                id.append('u').append(Integer.toHexString(c));
            }
        });
        return id.toString();
    }
}
