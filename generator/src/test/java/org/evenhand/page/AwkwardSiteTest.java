package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.evenhand.check.FolderChecker;
import org.evenhand.page.view.Address;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sample's folder with things in it that sites have stumbled over. */
class AwkwardSiteTest {

    private static final String HOSTILE = "</title><script>alert(1)</script> ${7*7} & co";
    private static final Map<String, byte[]> SITE = new TreeMap<>();
    private static final Map<String, Document> PAGES = new TreeMap<>();

    @TempDir
    private static Path folder;

    @BeforeAll
    static void build() throws IOException {
        copy(SampleSiteFiles.SAMPLE, folder);
        Path cable = folder.resolve("studies/cable");
        edit(cable.resolve("study.md"), "question: .*", "question: \"" + HOSTILE + "\"");
        edit(cable.resolve("runs/long-1.json"), "\\.\\./logs/long-1.csv", "../logs/index.html");
        Files.move(cable.resolve("logs/long-1.csv"), cable.resolve("logs/index.html"));
        edit(cable.resolve("runs/long-2.json"), "\\.\\./logs/long-2.csv", "../logs/a b#2%20é.csv");
        Files.move(cable.resolve("logs/long-2.csv"), cable.resolve("logs/a b#2%20é.csv"));
        // No ambient, neither stated nor logged: a method that needs it cannot be answered from such runs.
        edit(folder.resolve("studies/fan-noise/runs/full-1.json"), "  \"ambient\": .*\\n", "");
        edit(folder.resolve("studies/battery/study.md"), "method: .*", "method: no-such-method");
        SITE.putAll(SampleSiteFiles.build(FolderChecker.check(folder), folder));
        SITE.forEach((path, bytes) -> {
            if (path.endsWith(Address.INDEX)) {
                PAGES.put(path, Jsoup.parse(new String(bytes, StandardCharsets.UTF_8)));
            }
        });
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            files.forEach(file -> {
                try {
                    Path target = to.resolve(from.relativize(file).toString());
                    if (Files.isDirectory(file)) {
                        Files.createDirectories(target);
                    } else {
                        Files.copy(file, target);
                    }
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }

    private static void edit(Path file, String pattern, String replacement) throws IOException {
        String text = Files.readString(file);
        String edited = text.replaceFirst(pattern, java.util.regex.Matcher.quoteReplacement(replacement));
        assertTrue(!edited.equals(text), file + " has no " + pattern);
        Files.writeString(file, edited);
    }

    @Test
    void everyLinkStillLeadsToAPlaceThatExists() {
        PAGES.forEach((path, page) -> {
            for (Element link : page.select("[href]")) {
                String href = link.attr("href");
                if (href.startsWith("http") || href.endsWith("manifest-sha256.txt")) {
                    continue;
                }
                String[] parts = href.split("#", 2);
                String target = parts[0].isEmpty()
                        ? path
                        : Path.of(path)
                                .resolveSibling(URLDecoder.decode(parts[0].replace("+", "%2B"), StandardCharsets.UTF_8))
                                .normalize()
                                .toString();
                assertTrue(SITE.containsKey(target), () -> path + " leads to " + href);
                if (parts.length == 2) {
                    String id = URLDecoder.decode(parts[1], StandardCharsets.UTF_8);
                    assertNotNull(PAGES.get(target).getElementById(id), () -> path + " leads to " + href);
                }
            }
        });
    }

    @Test
    void aHostileQuestionIsShownAndNotObeyed() {
        for (String path : new String[] {Address.INDEX, Address.run("cable", "long-1"), Address.CHANGES}) {
            for (Element script : PAGES.get(path).select("script")) {
                assertTrue(script.attr("src").endsWith(".js") && script.data().isEmpty(), script::toString);
            }
            assertTrue(PAGES.get(path).text().contains(HOSTILE), path);
        }
        String feed = new String(SITE.get("feed.xml"), StandardCharsets.UTF_8);
        assertTrue(feed.contains("&lt;/title&gt;&lt;script&gt;alert(1)&lt;/script&gt; ${7*7} &amp; co"));
    }

    @Test
    void aLogKeepsItsNameUnlessThePageHasIt() throws IOException {
        assertArrayEquals(
                Files.readAllBytes(folder.resolve("studies/cable/logs/index.html")),
                SITE.get("runs/cable/long-1/raw-index.html"));
        assertArrayEquals(
                Files.readAllBytes(folder.resolve("studies/cable/logs/a b#2%20é.csv")),
                SITE.get("runs/cable/long-2/a b#2%20é.csv"));
    }

    @Test
    void aWithheldStudyShowsNoFigureButItsRunsAndWhy() {
        Element question = PAGES.get(Address.INDEX).select("article:has(.state-withheld)").stream()
                .filter(each -> each.text().contains("Can the fan be heard"))
                .findFirst()
                .orElseThrow();
        assertTrue(question.select(".figure").isEmpty());
        assertTrue(question.text().contains("Withheld: "), question.text());
        assertTrue(PAGES.containsKey(Address.run("fan-noise", "full-1")));
        assertTrue(PAGES.get(Address.run("fan-noise", "full-1")).text().contains("ambient-missing"));
        String feed = new String(SITE.get("feed.xml"), StandardCharsets.UTF_8);
        assertTrue(feed.contains("Answered, and withheld because of what was found."));
    }

    @Test
    void aStudyThatCannotBeReadHasAPageThatSaysSo() {
        Document page = PAGES.get(Address.answer("battery"));
        assertNotNull(page);
        assertEquals(1, page.select(".state-withheld").size());
        assertTrue(PAGES.get(Address.INDEX)
                        .select("a[href=answers/battery/index.html]")
                        .size()
                == 1);
    }
}
