package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.evenhand.check.FolderChecker;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * A folder whose language is German, as a reader gets it: no word and no figure of its pages is English. The folder is
 * invented, as the sample is.
 */
class GermanSiteTest {

    private static final Path GERMAN = Path.of("src", "test", "resources", "german");

    /** Short words of English that no German sentence has; from memory. Such as "was", "so", "an", "in" are both. */
    private static final Pattern ENGLISH = Pattern.compile(
            "(?<![\\p{L}\\p{N}-])(the|of|and|is|were|with|not|for|this|that"
                    + "|which|from|by|each|are|to|at|on|as|or|no|it|its|than|has|have|be|been|below|above|where|when|how|what|run|runs"
                    + "|level|levels|value|values|yes|partly|failed|stopped|completed|none)(?![\\p{L}\\p{N}-])",
            Pattern.CASE_INSENSITIVE);

    /** What quotes a file: its name, its text, an id, a digest; and what is said to be in English. */
    private static final String QUOTED = "code, pre, script, style, .digest, [lang=en]";

    private static final List<String> SPOKEN = List.of("aria-label", "title", "alt", "content", "placeholder");

    /** A clause of a standard, "IEC 62301:2011, 4.4", and the version of a licence are no figures. */
    private static final Pattern DECIMAL_POINT = Pattern.compile("(?<![\\d.]|:\\d{4}, |CC-BY-)\\d+\\.\\d+(?![\\d.])");

    /** Addresses, and names of files. */
    private static final Pattern ADDRESS =
            Pattern.compile("https?://\\S+|[\\w.-]+\\.(csv|json|yaml|html|md|png|svg)\\b");

    private static final SortedMap<String, byte[]> SITE = new TreeMap<>();
    private static final SortedMap<String, Document> PAGES = new TreeMap<>();

    @BeforeAll
    static void build() {
        SITE.putAll(built(GERMAN));
        SITE.forEach((path, bytes) -> {
            if (path.endsWith(".html")) {
                PAGES.put(path, Jsoup.parse(new String(bytes, StandardCharsets.UTF_8)));
            }
        });
    }

    @Test
    void noWordOfAPageIsEnglish() {
        List<String> found = new ArrayList<>();
        PAGES.forEach((path, page) -> said(page).forEach(text -> {
            Matcher word = ENGLISH.matcher(text);
            if (word.find()) {
                found.add(path + ": " + around(text, word));
            }
        }));
        assertEquals(List.of(), found);
    }

    @Test
    void noFigureOfAPageHasADecimalPoint() {
        List<String> found = new ArrayList<>();
        PAGES.forEach((path, page) -> said(page).forEach(text -> {
            Matcher figure = DECIMAL_POINT.matcher(text);
            while (figure.find()) {
                found.add(path + ": " + around(text, figure));
            }
        }));
        assertEquals(List.of(), found);
    }

    @Test
    void thePagesAreSoundHtml() {
        NuChecker checker = new NuChecker();
        PAGES.keySet().forEach(path -> checker.check(path, SITE.get(path)));
        assertEquals(List.of(), checker.found());
    }

    private static SortedMap<String, byte[]> built(Path folder) {
        SortedMap<String, byte[]> files = new ConcurrentSkipListMap<>();
        Pages.build(FolderChecker.check(folder), folder, Templates.bundled(), "Evenhand test", files::put);
        return files;
    }

    /** What a page shows, block by block, and what it says to those who do not see it. */
    private static Set<String> said(Document page) {
        Document own = page.clone();
        own.select(QUOTED).remove();
        Set<String> said = new TreeSet<>();
        for (Element each : own.getAllElements()) {
            if (!each.ownText().isBlank()) {
                said.add(each.ownText());
            }
            for (String attribute : SPOKEN) {
                if (each.hasAttr(attribute)
                        && !each.hasAttr("http-equiv")
                        && !each.attr("name").matches("generator|viewport|referrer|color-scheme")) {
                    said.add(each.attr(attribute));
                }
            }
        }
        return said.stream()
                .map(text -> ADDRESS.matcher(text).replaceAll(""))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String around(String text, Matcher at) {
        return text.substring(Math.max(0, at.start() - 60), Math.min(text.length(), at.end() + 60));
    }
}
