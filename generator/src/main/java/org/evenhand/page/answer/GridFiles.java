package org.evenhand.page.answer;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.evenhand.page.Href;
import org.evenhand.page.PageSink;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.TableFiles;

/** The tables of a page as files to take away. */
final class GridFiles {

    private GridFiles() {}

    /** Puts each of the tables in each form. */
    static List<TableFiles> put(Answer answer, List<Grid> grids, PageSink sink) {
        return grids.stream()
                .filter(grid -> !grid.rows().isEmpty())
                .map(grid -> put(answer, grid, sink))
                .toList();
    }

    private static TableFiles put(Answer answer, Grid grid, PageSink sink) {
        String path = answer.beside("tables/" + grid.id());
        String source = SourceLine.words(answer);
        String address = answer.permalink(grid.id());
        return new TableFiles(
                grid.id(),
                List.of(
                        file("CSV", path + ".csv", GridText.csv(grid, answer.words()), sink),
                        file("Markdown", path + ".md", GridText.markdown(grid, source, address), sink),
                        // As text, so that it is shown to be copied, and is no page without its surroundings.
                        file("HTML", path + ".html.txt", GridText.html(grid, source, address), sink)));
    }

    private static Link file(String form, String path, String text, PageSink sink) {
        sink.put(path, text.getBytes(StandardCharsets.UTF_8));
        return Link.to(form, Href.of(path));
    }
}
