package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
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
