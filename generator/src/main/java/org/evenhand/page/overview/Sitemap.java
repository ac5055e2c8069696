package org.evenhand.page.overview;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.page.Directory;
import org.evenhand.page.Made;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.view.Address;

/** The map of the site for search engines. Source: sitemaps.org, protocol 0.9. */
public final class Sitemap {

    /** What the protocol allows in one file. */
    private static final int MOST = 50_000;

    public static final String PATH = "sitemap.xml";

    private Sitemap() {}

    /** @param made all pages there are */
    public static void build(PageContext context, Directory directory, History history, Made made, PageSink sink) {
        SortedMap<String, LocalDate> changed = changed(context, directory, history);
        StringBuilder map = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<urlset xmlns=\"http://www.sitemaps.org/schemas/sitemap/0.9\">\n");
        made.files().keySet().stream()
                .filter(path -> path.endsWith(Address.INDEX))
                .limit(MOST)
                .forEach(path -> {
                    map.append("  <url>\n")
                            .append(Xml.element("    ", "loc", context.frames().permanent(path)));
                    Optional.ofNullable(changed.get(path))
                            .ifPresent(on -> map.append(Xml.element("    ", "lastmod", on.toString())));
                    map.append("  </url>\n");
                });
        sink.put(PATH, map.append("</urlset>\n").toString().getBytes(StandardCharsets.UTF_8));
    }

    /** When each page last changed, as far as the data tell. */
    private static SortedMap<String, LocalDate> changed(PageContext context, Directory directory, History history) {
        SortedMap<String, LocalDate> changed = new TreeMap<>();
        history.newest().ifPresent(on -> {
            changed.put(Address.INDEX, on);
            changed.put(Address.CHANGES, on);
        });
        for (String id : context.checked().studies().keySet()) {
            history.newest(id).ifPresent(on -> changed.put(Address.answer(id), on));
        }
        for (MeasuredRun run : directory.runs()) {
            String path = Address.run(run.run().study(), run.run().id());
            run.run()
                    .started()
                    .map(on -> on.withOffsetSameInstant(ZoneOffset.UTC).toLocalDate())
                    .ifPresent(on -> changed.put(path, on));
        }
        return changed;
    }
}
