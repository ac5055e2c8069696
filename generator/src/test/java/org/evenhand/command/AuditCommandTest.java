package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.command.audit.TagsOf;
import org.evenhand.read.Sha256;
import org.evenhand.site.Manifest;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A site that was altered in any way is told from one that was not. */
class AuditCommandTest {

    private static final String PAGE = "answers/plate/index.html";

    @TempDir
    private Path folder;

    private Given given;
    private Path site;

    @BeforeEach
    void aSite() {
        given = Given.soundFolderIn(folder.resolve("results"));
        site = folder.resolve("site");
        publish(site);
    }

    private void publish(Path to) {
        Called.with("publish", given.root().toString(), "--to", to.toString()).ended(0);
    }

    private Called audit(String... more) {
        List<String> arguments = new ArrayList<>(List.of("audit", site.toString()));
        arguments.addAll(List.of(more));
        return Called.with(arguments.toArray(String[]::new));
    }

    /** Alters a page and its digest too, as somebody would who knows how a manifest works. */
    private void forge(String what, String by) throws IOException {
        String page = Files.readString(site.resolve(PAGE));
        assertTrue(page.contains(what), page);
        Files.writeString(site.resolve(PAGE), page.replace(what, by));
        SortedMap<String, String> digests = new TreeMap<>(Manifest.of(site).digests());
        digests.put(PAGE, Sha256.of(Files.readAllBytes(site.resolve(PAGE))));
        StringBuilder text = new StringBuilder();
        digests.forEach((path, sha256) -> text.append(sha256 + "  " + path + "\n"));
        Files.writeString(site.resolve(Manifest.FILE), text);
    }

    @Test
    void aSiteAsItWasPublishedIsComplete() {
        Called called = audit("--from", given.root().toString()).ended(0);
        assertEquals("", called.out());
        called.says("0 things differ", "the folder gives the same site");
    }

    @Test
    void anAlteredAMissingAndAStrangeFileAreNamed() throws IOException {
        Files.writeString(site.resolve(PAGE), Files.readString(site.resolve(PAGE)) + " ");
        Files.delete(site.resolve("feed.xml"));
        Files.writeString(site.resolve("notes.txt"), "");
        Called called = audit().ended(1);
        assertTrue(called.out().contains(PAGE + ": is altered"), called.out());
        assertTrue(called.out().contains("feed.xml: is missing"), called.out());
        assertTrue(called.out().contains("notes.txt: is not of this site"), called.out());
    }

    @Test
    void aForgedPageWithAForgedManifestDoesNotComeOutOfTheFolder() throws IOException {
        forge("<h1", "<h1 title=\"x\"");
        assertEquals("", audit().ended(0).out());
        assertEquals(
                PAGE + ": comes out of the folder otherwise\n",
                audit("--from", given.root().toString()).ended(1).out());
    }

    @Test
    void aLinkAndAFragmentThatLeadNowhereAreNamed() throws IOException {
        forge("<h1", "<a href=\"gone.html\">x</a><a href=\"#nowhere\">x</a><a href=\"index.html#\">x</a><h1");
        String out = audit().ended(1).out();
        assertEquals(
                PAGE + ": leads to #nowhere, which is not there\n" + PAGE
                        + ": leads to gone.html, which is not there\n",
                out);
    }

    @Test
    void linksAndIdsAreThoseThatAParserOfHtmlFinds() throws IOException {
        // The outside check: jsoup, of every page that was published.
        for (String path : Manifest.of(site).digests().keySet()) {
            if (path.endsWith(".html")) {
                String html = Files.readString(site.resolve(path));
                List<String> hrefs = Jsoup.parse(html).select("[href], [src]").stream()
                        .map(e -> e.hasAttr("href") ? e.attr("href") : e.attr("src"))
                        .toList();
                assertFalse(hrefs.isEmpty());
                assertEquals(hrefs, TagsOf.links(html), path);
                assertEquals(
                        new TreeSet<>(Jsoup.parse(html).select("[id]").eachAttr("id")),
                        new TreeSet<>(TagsOf.ids(html)),
                        path);
            }
        }
    }

    @Test
    void aManifestThatPointsOutOfTheSiteIsNotFollowed() throws IOException {
        Files.writeString(folder.resolve("secret"), "s");
        String line = Sha256.of("s".getBytes(StandardCharsets.UTF_8)) + "  ../secret\n";
        Files.writeString(site.resolve(Manifest.FILE), Files.readString(site.resolve(Manifest.FILE)) + line);
        audit().ended(1).says("../secret: is named by the manifest, and lies outside of the site");
    }

    @Test
    void whatChangedBetweenTwoPublicationsIsToldFigureByFigure() {
        Path before = folder.resolve("before");
        publish(before);
        assertEquals("", audit("--against", before.toString()).ended(0).out());
        given.replacing("studies/plate/logs/none-1.csv", ",6.206,", ",6.306,");
        site = folder.resolve("after");
        publish(site);
        String out = audit("--against", before.toString()).ended(0).out();
        Matcher power = Pattern.compile("run none-1, values, mean-power, value: ([0-9.]+), before ([0-9.]+)\n")
                .matcher(out);
        assertTrue(power.find(), out);
        // By hand: the first sample stands for half of the minute to the next, 0.1 W × 30 s = 3 J, in 45 min.
        assertEquals(3.0 / 2700, Double.parseDouble(power.group(1)) - Double.parseDouble(power.group(2)), 1e-9);
        assertTrue(out.contains("answers/plate/evidence.json: summary none, mean-power, mean: "), out);
        assertFalse(out.contains("none-2") || out.contains("summary plate"), out);
    }

    @Test
    void aFolderThatIsNoSiteIsRefused() {
        Called.with("audit", given.root().toString()).ended(2).says("it is no site of ours");
    }
}
