package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenhand.chart.Charts;
import org.evenhand.chart.Figure;
import org.evenhand.chart.PixelSize;
import org.evenhand.chart.Plate;
import org.evenhand.page.Href;
import org.evenhand.page.PageSink;
import org.evenhand.page.view.Picture;

/** A quotation as a picture: the question, the figure with all that goes with it, its chart, its address. */
final class QuotationPicture {

    private static final int SCALE = 2;

    private QuotationPicture() {}

    static String path(Answer answer, String evidence) {
        return answer.beside("quotes/" + evidence + ".png");
    }

    /** Puts the picture; its text alternative is the quotation in plain text. */
    static Picture put(Answer answer, Quoted quoted, Optional<Figure> chart, PageSink sink) {
        List<Plate.Line> below = new ArrayList<>();
        if (!quoted.caveat().isEmpty()) {
            below.add(new Plate.Line(Plate.Style.CAVEAT, quoted.caveat()));
        }
        String source = answer.context().publication().invented()
                ? answer.words().say("quote.invented", quoted.source())
                : quoted.source();
        below.add(new Plate.Line(Plate.Style.SOURCE, source + ": " + quoted.link()));
        Plate plate = new Plate(
                chart,
                List.of(
                        new Plate.Line(Plate.Style.TITLE, answer.study().question()),
                        new Plate.Line(Plate.Style.FIGURE, quoted.about() + ": " + quoted.claim()),
                        new Plate.Line(Plate.Style.TEXT, quoted.behind().strip())),
                below);
        String path = path(answer, quoted.id());
        PixelSize size = answer.context().drawings().png(plate, Charts.COLUMN, SCALE, path, sink);
        return new Picture(
                Href.of(path), size.width(), size.height(), answer.study().question() + " " + quoted.plain(), "");
    }
}
