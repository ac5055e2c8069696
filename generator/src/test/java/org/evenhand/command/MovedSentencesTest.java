package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The data change after a publication: which sentences speak of a figure that has moved, and which of them still hold. */
class MovedSentencesTest {

    private static final String STUDY = "studies/plate/study.md";

    @TempDir
    private Path root;

    private Given given;
    private String site;

    @BeforeEach
    void publish() {
        given = Given.soundFolderIn(root.resolve("results"))
                .replacing(
                        STUDY,
                        "The plate was tried against none.",
                        "With the plate it runs [15 K cooler](evidence:plate-rise). It is\n"
                                + "[cooler](evidence:plate-rise) with the plate, too.");
        site = root.resolve("site").toString();
        Called.with("publish", given.root().toString(), "--to", site).ended(0);
    }

    private Called check() {
        return Called.with("check", given.root().toString(), "--against", site);
    }

    /** From the sixth minute on, so that the start is as it was; the second column is the temperature. */
    private void hotterByThreeKelvin(String log) {
        String[] rows = given.text(log).split("\n");
        for (int i = 7; i < rows.length; i++) {
            String[] fields = rows[i].split(",", 3);
            rows[i] = fields[0] + "," + new BigDecimal(fields[1]).add(BigDecimal.valueOf(3)) + "," + fields[2];
        }
        given.writing(log, String.join("\n", rows) + "\n");
    }

    @Test
    void nothingIsListedWhileNothingHasMoved() {
        Called called = check().ended(0);
        assertTrue(called.out().isEmpty(), called.out());
    }

    @Test
    void eachSentenceIsListedWithTheOldFigureAndTheNewAndWhetherItHolds() {
        for (int run = 1; run <= 3; run++) {
            hotterByThreeKelvin("studies/plate/logs/none-" + run + ".csv");
        }
        Called called = check().ended(1);
        List<String> moved = called.out()
                .lines()
                .filter(line -> line.contains("holds, plate-rise: "))
                .toList();
        String figures = "plate-rise: −14.94 K (differs), now −17.94 K (differs): ";
        assertEquals(
                List.of(
                        STUDY + ":17:1: no longer holds, " + figures
                                + "“With the plate it runs [15 K cooler](evidence:plate-rise).”",
                        STUDY + ":17:60: still holds, " + figures
                                + "“It is [cooler](evidence:plate-rise) with the plate, too.”"),
                moved);
        called.says("[change-unrecorded]", "figures of this final answer have moved since it was published");
    }
}
