package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.evenhand.check.FolderChecker;
import org.evenhand.page.Pages;
import org.evenhand.page.Templates;
import org.evenhand.read.Sha256;
import org.evenhand.site.Manifest;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What was sealed stays as it was, whatever becomes of the answer.
 *
 * <p>The digests are those that {@code sha256sum} would compute: SHA-256, FIPS 180-4, as the platform has it.
 */
class SealCommandTest {

    private static final String VERSION = "answers/plate/v/1/";
    private static final String REVISED =
            "status: final\nrevisions:\n  - { on: 2026-05-02, what: A run was read again., why: A digit was wrong. }";

    @TempDir
    private Path place;

    private Given given;
    private Path site;

    @BeforeEach
    void aFolder() {
        given = Given.soundFolderIn(place.resolve("results"));
        site = place.resolve("site");
    }

    private Called seal(String... more) {
        return Called.with(
                Stream.concat(Stream.of("seal", "plate", "--in", given.root().toString()), Stream.of(more))
                        .toArray(String[]::new));
    }

    private Called publish(int status, String... more) {
        return Called.with(Stream.concat(
                                Stream.of("publish", given.root().toString(), "--to", site.toString()), Stream.of(more))
                        .toArray(String[]::new))
                .ended(status);
    }

    private Called audit(String... more) {
        return Called.with(Stream.concat(Stream.of("audit", site.toString()), Stream.of(more))
                .toArray(String[]::new));
    }

    private static SortedMap<String, byte[]> files(Path folder) throws IOException {
        SortedMap<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> entries = Files.walk(folder)) {
            for (Path file : entries.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
        return files;
    }

    private Path sealed(String path) {
        return given.root().resolve("sealed").resolve(path);
    }

    private String page() throws IOException {
        return Files.readString(site.resolve(VERSION + "index.html"));
    }

    private static String withoutBanner(String page) {
        return page.replaceAll(
                "(?s)(<!-- sealed: nothing but what stands from here -->).*?(<!-- to here may change -->)", "$1$2");
    }

    /** Everything that was sealed stands on the site byte for byte; of the page, all but what stands in its one place. */
    private void assertSealedVersionStands() throws IOException {
        SortedMap<String, byte[]> sealed = files(given.root().resolve("sealed"));
        assertTrue(sealed.size() >= 14, () -> sealed.keySet().toString());
        for (var file : sealed.entrySet()) {
            byte[] published = Files.readAllBytes(site.resolve(file.getKey()));
            if (file.getKey().equals(VERSION + "index.html")) {
                String text = new String(published, StandardCharsets.UTF_8);
                assertFalse(text.equals(new String(file.getValue(), StandardCharsets.UTF_8)), "there is a banner");
                published = withoutBanner(text).getBytes(StandardCharsets.UTF_8);
            }
            assertArrayEquals(file.getValue(), published, file.getKey());
        }
    }

    @Test
    void aSealedVersionStandsAtAnAddressOfItsOwn() throws IOException {
        seal().ended(0).says("version 1 of “plate” is sealed", VERSION);
        publish(0);
        assertSealedVersionStands();
        Called audit = audit("--from", given.root().toString()).ended(0);
        audit.says("1 sealed version held", "0 things differ", "the folder gives the same site");
        Document page = Jsoup.parse(page());
        assertTrue(page.selectFirst("div.notice").text().contains("kept as it was sealed. It is the latest."));
        assertEquals(
                "https://results.example.org/trials/" + VERSION,
                page.selectFirst("link[rel=canonical]").attr("href"));
        assertTrue(page.select("#cite").text().contains(VERSION), "the citation names the version");
        assertTrue(page.select("link[rel=stylesheet]")
                .attr("href")
                .matches("(\\.\\./){4}assets/[0-9a-f]{16}/evenhand.css"));
        assertEquals(List.of("application/ld+json"), page.select("script").eachAttr("type"), "data, and no script");
        assertEquals(1, page.select("script").size());
        assertTrue(page.selectFirst("script").data().contains("https://results.example.org/trials/" + VERSION));
        String latest = Files.readString(site.resolve("answers/plate/index.html"));
        assertTrue(latest.contains("href=\"../../" + VERSION + "index.html\""), "the answer leads to it");
        for (String file : new String[] {"changes/index.html", "feed.xml", "sitemap.xml"}) {
            assertTrue(Files.readString(site.resolve(file)).contains(VERSION), file);
        }
    }

    @Test
    void theListsHoldTheDigestsOfWhatWasSealedAndOfWhatItWasMadeFrom() throws Exception {
        seal().ended(0);
        for (String list : new String[] {"seal-sha256.txt", "inputs-sha256.txt"}) {
            Path root = list.startsWith("seal") ? given.root().resolve("sealed") : given.root();
            var lines = Files.readAllLines(sealed(VERSION + list));
            assertTrue(lines.size() >= 12, () -> lines.toString());
            for (String line : lines) {
                byte[] bytes = Files.readAllBytes(root.resolve(line.substring(66)));
                byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
                assertEquals(HexFormat.of().formatHex(digest), line.substring(0, 64), line);
            }
        }
        String inputs = Files.readString(sealed(VERSION + "inputs-sha256.txt"));
        for (String input : new String[] {
            "publication.yaml", "studies/plate/study.md", "studies/plate/logs/none-1.csv", "methods/soak.md", "items/"
        }) {
            assertTrue(inputs.contains("  " + input), input);
        }
    }

    @Test
    void dataTemplatesAndProgramChangeAndTheSealedVersionDoesNot() throws IOException {
        seal().ended(0);
        publish(0);
        given.replacing("studies/plate/study.md", "status: final", REVISED)
                .replacing("studies/plate/study.md", "The plate was tried", "The plate was tried twice")
                .replacing("studies/plate/logs/none-1.csv", ",1799,", ",1801,")
                .replacing("publication.yaml", "title: ", "title: Other ");
        Path own = Files.createDirectories(place.resolve("templates/assets")).getParent();
        Files.writeString(own.resolve("assets/evenhand.css"), "p { color: black }\n");
        Files.writeString(own.resolve("answer.ftlh"), "<!DOCTYPE html><title>x</title><p id=\"own\">${question}</p>\n");
        publish(0, "--templates", own.toString());
        assertSealedVersionStands();
        assertTrue(Files.readString(site.resolve("answers/plate/index.html")).contains("id=\"own\""));
        String notice = Jsoup.parse(page()).selectFirst("div.notice").text();
        assertTrue(
                notice.contains("Not the latest") && notice.contains("On 2026-05-02: A run was read again."), notice);
        assertTrue(notice.contains("A digit was wrong.") && notice.contains("version 2"), notice);

        SortedMap<String, byte[]> later = new TreeMap<>();
        Path root = given.root();
        Pages.build(FolderChecker.check(root), root, Templates.bundled(), "9.9 of another day", (path, bytes) -> {
            synchronized (later) {
                later.put(path, bytes);
            }
        });
        String page = new String(later.get(VERSION + "index.html"), StandardCharsets.UTF_8);
        assertEquals(withoutBanner(page()), withoutBanner(page));
        assertTrue(
                new String(later.get("answers/plate/index.html"), StandardCharsets.UTF_8).contains("9.9 of another"));
    }

    @Test
    void theSecondVersionIsSealedBesideTheFirst() throws IOException {
        seal().ended(0);
        byte[] first = Files.readAllBytes(sealed(VERSION + "index.html"));
        given.replacing("studies/plate/study.md", "status: final", REVISED);
        seal().ended(0).says("version 2");
        assertArrayEquals(first, Files.readAllBytes(sealed(VERSION + "index.html")));
        publish(0);
        audit().ended(0).says("2 sealed versions");
        try (Stream<Path> assets = Files.list(sealed("assets"))) {
            assertEquals(1, assets.count(), "versions that look alike share style and fonts");
        }
    }

    @Test
    void aVersionIsSealedOnce() throws IOException {
        seal().ended(0);
        SortedMap<String, byte[]> before = files(given.root());
        seal().ended(2).says("version 1 of “plate” is sealed already", "an entry in revisions makes a new version");
        SortedMap<String, byte[]> after = files(given.root());
        assertEquals(before.keySet(), after.keySet());
        before.forEach((path, bytes) -> assertArrayEquals(bytes, after.get(path), path));
    }

    @Test
    void whatIsWithheldOrNoAnswerIsNotSealed() throws IOException {
        given.replacing("studies/plate/runs/none-1.json", "\"ambient\":", "\"ambience\":");
        seal().ended(1).says("ambience", "mend them first");
        given.replacing("studies/plate/runs/none-1.json", "\"ambience\":", "\"ambient\":")
                .replacing("studies/plate/study.md", "answered: 2026-03-20", "answered: 2020-03-20");
        seal().ended(1).says("dates-out-of-order", "what is withheld is not sealed");
        given.replacing("studies/plate/study.md", "answered: 2020-03-20", "answered: 2026-03-20")
                .replacing("studies/plate/study.md", "status: final", "status: draft");
        seal().ended(2).says("only an answer is sealed");
        Called.with("seal", "plat", "--in", given.root().toString())
                .ended(2)
                .says("there is no study “plat”; did you mean “plate”?");
        assertFalse(Files.exists(given.root().resolve("sealed")));
    }

    @Test
    void anAlteredSealIsNotPublishedAndNoAuditPassesIt() throws IOException {
        seal().ended(0);
        publish(0);
        String page = page();
        Files.writeString(
                site.resolve(VERSION + "index.html"), page.replace("The plate was tried", "The plate was tired"));
        SortedMap<String, String> digests = new TreeMap<>(Manifest.of(site).digests());
        digests.put(VERSION + "index.html", Sha256.of(Files.readAllBytes(site.resolve(VERSION + "index.html"))));
        StringBuilder manifest = new StringBuilder();
        digests.forEach((path, digest) -> manifest.append(digest + "  " + path + "\n"));
        Files.writeString(site.resolve(Manifest.FILE), manifest);
        audit().ended(1).says(VERSION, "is not what was sealed");

        given.replacing("sealed/" + VERSION + "index.html", "The plate was tried", "The plate was tired");
        Files.walk(site)
                .sorted(Comparator.reverseOrder())
                .forEach(entry -> entry.toFile().delete());
        publish(1).says("seal-broken");
        assertTrue(page().contains("not what was sealed"));
        assertFalse(page().contains("tired"));
    }

    @Test
    void aStudyThatIsGoneLeavesItsSealedVersionsAndAPageThatSaysSo() throws IOException {
        seal().ended(0);
        given.withASecondStudy();
        publish(0);
        Path study = given.root().resolve("studies/plate");
        Files.walk(study)
                .sorted(Comparator.reverseOrder())
                .forEach(entry -> entry.toFile().delete());
        publish(0);
        assertSealedVersionStands();
        Document gone = Jsoup.parse(Files.readString(site.resolve("answers/plate/index.html")));
        assertEquals("Does the plate keep it cooler?", gone.selectFirst("h1").text());
        assertTrue(gone.text().contains("removed from the results since; what was sealed of it stays"), gone.text());
        assertTrue(
                Files.readString(site.resolve("runs/plate/none-1/index.html")).contains("This run was published"));
        assertTrue(Jsoup.parse(page()).selectFirst("div.notice").text().contains("Removed"));
        audit("--from", given.root().toString()).ended(0).says("the folder gives the same site");

        site = place.resolve("elsewhere");
        publish(0);
        audit().ended(0);
        assertSealedVersionStands();
        assertTrue(Files.exists(site.resolve("answers/plate/index.html")), "the seals alone keep the address");
    }

    @Test
    void aPageOfAFormerSiteWhoseSubjectIsGoneSaysSo() throws IOException {
        given.withASecondStudy();
        publish(0);
        Path study = given.root().resolve("studies/copy");
        Files.walk(study)
                .sorted(Comparator.reverseOrder())
                .forEach(entry -> entry.toFile().delete());
        for (int times = 0; times < 2; times++) {
            publish(0);
            String gone = Files.readString(site.resolve("answers/copy/index.html"));
            assertTrue(gone.contains("This answer was published at this address."), gone);
            assertFalse(Files.exists(site.resolve("answers/copy/evidence.json")));
            audit("--from", given.root().toString()).ended(0);
        }
    }

    @Test
    void aSealThatTheFolderLostStaysOnTheSiteAndIsMissedAnywhereElse() throws IOException {
        seal().ended(0);
        publish(0);
        SortedMap<String, byte[]> before = files(site.resolve(VERSION));
        Files.walk(given.root().resolve("sealed"))
                .sorted(Comparator.reverseOrder())
                .forEach(e -> e.toFile().delete());
        publish(0);
        SortedMap<String, byte[]> after = files(site.resolve(VERSION));
        assertEquals(before.keySet(), after.keySet());
        before.forEach((path, bytes) -> assertArrayEquals(bytes, after.get(path), path));

        Path former = site;
        site = place.resolve("elsewhere");
        publish(0);
        audit("--against", former.toString()).ended(1).says(VERSION + ": was sealed on the former site, and is gone");
    }

    @Test
    void withdrawalAndSupersessionAreToldOnTheSealedPageTheChangesAndTheFeed() throws IOException {
        seal().ended(0);
        given.replacing(
                "studies/plate/study.md",
                "status: final",
                "status: withdrawn\non: 2026-06-01\nwhy: the meter was broken");
        publish(0);
        assertSealedVersionStands();
        Document page = Jsoup.parse(page());
        assertTrue(page.select("div.notice")
                .text()
                .contains("Withdrawn. The answer no longer stands. The meter was broken."));
        String changes = Jsoup.parse(Files.readString(site.resolve("changes/index.html")))
                .text();
        assertTrue(
                changes.contains("2026-06-01") && changes.contains("Withdrawn: the answer no longer stands."), changes);
        String feed = Files.readString(site.resolve("feed.xml"));
        assertTrue(feed.contains("<updated>2026-06-01T00:00:00Z</updated>") && feed.contains("#withdrawn</id>"), feed);

        given.withASecondStudy()
                .replacing(
                        "studies/copy/study.md",
                        "status: withdrawn\non: 2026-06-01\nwhy: the meter was broken",
                        "status: final")
                .replacing(
                        "studies/plate/study.md",
                        "status: withdrawn\non: 2026-06-01\nwhy: the meter was broken",
                        "status: superseded\non: 2026-06-02\nby: copy");
        publish(0);
        assertSealedVersionStands();
        assertTrue(Jsoup.parse(page())
                .select("div.notice a")
                .eachAttr("href")
                .contains("../../../../answers/copy/index.html"));
        assertTrue(Files.readString(site.resolve("feed.xml")).contains("#superseded</id>"));
    }
}
