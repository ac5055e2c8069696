package org.evenhand.page.answer;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenhand.chart.Caption;
import org.evenhand.chart.Charts;
import org.evenhand.chart.PixelSize;
import org.evenhand.chart.Plate;
import org.evenhand.page.Drawings;
import org.evenhand.page.Href;
import org.evenhand.page.PageSink;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Caveat;
import org.evenhand.page.view.Link;
import org.evenhand.quantity.Figures;

/**
 * A chart as files for somebody's article: SVG, and PNG for the screen and for print, each with its title above, and its
 * caveat and its source below.
 */
final class ChartFiles {

    private static final int SCREEN = 2;

    /** Three pixels to a CSS pixel are 288 to an inch. */
    private static final int PRINT = 3;

    private ChartFiles() {}

    /** Puts the files of a chart, and returns the links to them. */
    static List<Link> put(Answer answer, DrawnChart chart, PageSink sink) {
        String path = answer.beside("charts/" + Address.slug(chart.name()));
        Plate plate = plate(answer, chart);
        Caption caption = new Caption(chart.idWithin(), chart.title(), chart.description());
        String svg = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + answer.context().drawings().file(plate, caption, Charts.COLUMN);
        sink.put(path + ".svg", svg.getBytes(StandardCharsets.UTF_8));
        Drawings drawings = answer.context().drawings();
        PixelSize screen = drawings.png(plate, Charts.COLUMN, SCREEN, path + ".png", sink);
        PixelSize print = drawings.png(plate, Charts.COLUMN, PRINT, path + ".print.png", sink);
        return List.of(
                Link.to("SVG", Href.of(path + ".svg")),
                Link.to(answer.words().say("chart.png-screen", size(screen)), Href.of(path + ".png")),
                Link.to(answer.words().say("chart.png-print", size(print)), Href.of(path + ".print.png")));
    }

    private static String size(PixelSize picture) {
        return picture.width() + Figures.NO_BREAK_SPACE + "×" + Figures.NO_BREAK_SPACE + picture.height();
    }

    private static Plate plate(Answer answer, DrawnChart chart) {
        List<Plate.Line> below = new ArrayList<>();
        if (!chart.source().isEmpty()) {
            below.add(new Plate.Line(Plate.Style.SOURCE, chart.source()));
        }
        caveat(answer, chart.caveats()).ifPresent(c -> below.add(new Plate.Line(Plate.Style.CAVEAT, c)));
        below.add(new Plate.Line(Plate.Style.SOURCE, SourceLine.of(answer, chart.id())));
        return new Plate(
                Optional.of(chart.figure()),
                List.of(
                        new Plate.Line(Plate.Style.TITLE, chart.title()),
                        new Plate.Line(Plate.Style.TEXT, answer.study().question())),
                below);
    }

    /** The worst, and how many more the page has; else the author's first. */
    private static Optional<String> caveat(Answer answer, List<Caveat> caveats) {
        List<String> all = new ArrayList<>(caveats.stream().map(Caveat::text).toList());
        all.addAll(answer.authorsCaveats());
        return all.stream()
                .findFirst()
                .map(worst -> all.size() > 1
                        ? answer.words().say("chart.caveat-more", worst, all.size() - 1)
                        : answer.words().say("quote.caveat", worst));
    }
}
