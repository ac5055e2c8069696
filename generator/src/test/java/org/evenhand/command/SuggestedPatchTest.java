package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is suggested can be applied by the usual tool, and mends what it is for. */
class SuggestedPatchTest {

    private static final String STUDY = "studies/plate/study.md";

    @TempDir
    private Path folder;

    private Given given;

    @BeforeEach
    void aFolderWithWrongWords() {
        given = Given.soundFolderIn(folder.resolve("results"));
        given.replacing(
                STUDY,
                "The plate was tried against none.",
                "With the plate it runs [16 K cooler](evidence:plate-rise).\n\nOne.\n\nTwo.\n\nThree.\n\nFour.\n\nFive.\n\n"
                        + "Again: it runs [about 20 K cooler](evidence:plate-rise).");
    }

    @Test
    void thePatchNamesTheRightWords() {
        Called called = Called.with("check", given.root().toString(), "--suggest")
                .ended(1)
                .says("2 corrections");
        assertEquals(
                String.join(
                        "\n",
                        "--- a/studies/plate/study.md",
                        "+++ b/studies/plate/study.md",
                        "@@ -14,7 +14,7 @@",
                        " authors: [R. Ambrose]",
                        " ---",
                        " ",
                        "-With the plate it runs [16 K cooler](evidence:plate-rise).",
                        "+With the plate it runs [15 K cooler](evidence:plate-rise).",
                        " ",
                        " One.",
                        " ",
                        "@@ -26,4 +26,4 @@",
                        " ",
                        " Five.",
                        " ",
                        "-Again: it runs [about 20 K cooler](evidence:plate-rise).",
                        "+Again: it runs [about 15 K cooler](evidence:plate-rise).",
                        ""),
                called.out());
    }

    /** Each way in which YAML writes a text: folded, literal, quoted, over several lines. */
    private void wrongWordsInEveryField() {
        given.replacing(STUDY, "short-answer: Yes.\n", "")
                .replacing(STUDY, "[16 K cooler]", "[15 K cooler]")
                .replacing(STUDY, "[about 20 K cooler]", "[about 15 K cooler]")
                .replacing(STUDY, "authors: [R. Ambrose]\n", """
                        authors: [R. Ambrose]
                        short-answer: >-
                          Yes. With the plate
                          it runs [16 K
                          cooler](evidence:plate-rise), or
                          [17 K cooler](evidence:plate-rise).
                        caveats:
                          - "It is \\"only\\" [18 K
                            cooler](evidence:plate-rise) \\
                            and [19\\u00a0K cooler](evidence:plate-rise)."
                          - 'It''s [20 K cooler](evidence:plate-rise)
                            with the plate.'
                          - It runs
                            [21 K cooler](evidence:plate-rise).
                        revisions:
                          - on: 2026-03-21
                            what: |
                              It was said that it runs
                              [22 K cooler](evidence:plate-rise).
                            why: A slip.
                        """)
                .replacing(
                        "publication.yaml",
                        "title:",
                        "about: |2\n    Its limit is\n  [23 °C](given:quillet-3/limits/temperature).\ntitle:");
    }

    @Test
    void whereverItStandsAWrongNumberIsFoundAtTheVeryWord() {
        wrongWordsInEveryField();
        List<String> lines = given.text(STUDY).lines().toList();
        List<String> found = new ArrayList<>();
        Called called = Called.with("check", given.root().toString()).ended(1);
        String told = called.out() + called.err();
        Matcher place = Pattern.compile(
                        "(?m)^(studies/plate/study.md|publication.yaml):(\\d+):(\\d+): error: \\[number-mismatch\\]")
                .matcher(told);
        while (place.find()) {
            List<String> of = place.group(1).equals(STUDY)
                    ? lines
                    : given.text("publication.yaml").lines().toList();
            found.add(of.get(Integer.parseInt(place.group(2)) - 1)
                    .substring(Integer.parseInt(place.group(3)) - 1)
                    .substring(0, 2));
        }
        assertEquals(
                List.of("16", "17", "18", "19", "20", "21", "22", "23"),
                found.stream().sorted().toList(),
                told);
    }

    @Test
    void whereverItStandsAWrongNumberIsMendedByThePatch() throws IOException, InterruptedException {
        wrongWordsInEveryField();
        gitAppliesItAndNothingIsWrongAnyMore();
        assertTrue(given.text(STUDY).contains("it runs [15 K\n  cooler](evidence:plate-rise)"), given.text(STUDY));
        assertTrue(given.text(STUDY).contains("'It''s [15 K cooler]"), given.text(STUDY));
        assertTrue(given.text("publication.yaml").contains("  [85 °C](given"), given.text("publication.yaml"));
    }

    /** RFC 8259, 7: a quotation mark, a degree sign and a line break as escapes. */
    @Test
    void aTextOfJsonWithEscapesIsMendedInItsPlace() throws IOException, InterruptedException {
        given.replacing(STUDY, "[16 K cooler]", "[15 K cooler]")
                .replacing(STUDY, "[about 20 K cooler]", "[about 15 K cooler]");
        given.writing("instruments/extra.json", """
                { "instrument": "extra", "reads": "power",
                  "notes": "The \\"limit\\"\\u00b0\\n\\nis [23 \\u00b0C](given:quillet-3/limits/temperature)." }
                """);
        String before = given.text("instruments/extra.json");
        String line = before.lines().toList().get(1);
        Called.with("check", given.root().toString())
                .ended(1)
                .says("instruments/extra.json:2:" + (line.indexOf("23") + 1) + ": error: [number-mismatch]");
        gitAppliesItAndNothingIsWrongAnyMore();
        assertEquals(before.replace("23", "85"), given.text("instruments/extra.json"));
    }

    @Test
    void gitAppliesItAndNothingIsWrongAnyMore() throws IOException, InterruptedException {
        Path patch = folder.resolve("words.patch");
        Files.writeString(
                patch,
                Called.with("check", given.root().toString(), "--suggest").out());
        Process git = new ProcessBuilder("git", "apply", "-p1", patch.toString())
                .directory(given.root().toFile())
                .redirectErrorStream(true)
                .start();
        assertEquals("", new String(git.getInputStream().readAllBytes()));
        git.waitFor(10, TimeUnit.SECONDS);
        assertEquals(0, git.exitValue());
        Called.with("check", given.root().toString()).ended(0).says("0 errors");
    }
}
