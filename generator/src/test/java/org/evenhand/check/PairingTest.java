package org.evenhand.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.model.Finding;
import org.evenhand.model.MeasurandId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two levels of any studies are held to the rules that hold within a study. */
class PairingTest {

    private static final Path SAMPLE =
            Path.of(System.getProperty("evenhand.root", "..")).resolve("sample-results");
    private static final CheckedFolder CHECKED = FolderChecker.check(SAMPLE);
    private static final MeasurandId ENERGY = new MeasurandId("thermal-soak", "energy");

    private static Pairing.Side side(CheckedFolder folder, String study, String level) {
        return new Pairing.Side(folder.studies().get(study), level);
    }

    private static Set<String> rules(List<Finding> findings) {
        Set<String> rules = new TreeSet<>();
        findings.forEach(f -> rules.add(f.rule()));
        return rules;
    }

    /** The study itself is the other way to the same refusals and the same difference. */
    @Test
    void whatAStudyHoldsAgainstEachOtherIsRefusedForTheSameRulesHere() {
        Pairing pairing = new Pairing(CHECKED);
        int compared = 0;
        int refused = 0;
        for (CheckedStudy study : CHECKED.studies().values()) {
            for (ComparisonResult result : study.evidence().comparisons()) {
                if (result instanceof ComparisonResult.Contrasted r
                        && r.plan().pairedBy().isEmpty()) {
                    Pairing.Judgement judgement = pairing.judge(
                            new Pairing.Side(study, r.plan().level().orElseThrow()),
                            new Pairing.Side(study, r.plan().against().orElseThrow()),
                            r.plan().measurand().orElseThrow());
                    assertEquals(
                            rules(study.refusals(r.plan().id())),
                            rules(judgement.refusals()),
                            r.plan().id());
                    if (r.unit().equals(judgement.result().unit())) {
                        assertEquals(r.estimate(), judgement.result().estimate());
                        assertEquals(r.interval(), judgement.result().interval());
                    }
                    compared++;
                    refused += judgement.isRefused() ? 1 : 0;
                }
            }
        }
        assertTrue(compared >= 10 && refused >= 2, compared + " comparisons, " + refused + " refused");
    }

    @Test
    void levelsOfTwoStudiesThatDifferInOneThingMayBeComparedAndElseNot(@TempDir Path folder) throws IOException {
        copy(SAMPLE, folder);
        copy(folder.resolve("studies/heat-spreader"), folder.resolve("studies/again"));
        edit(folder.resolve("studies/again/study.md"), "study: heat-spreader", "study: again");
        CheckedFolder same = FolderChecker.check(folder);
        assertFalse(new Pairing(same)
                .judge(side(same, "heat-spreader", "spreader"), side(same, "again", "none"), ENERGY)
                .isRefused());

        try (Stream<Path> runs = Files.list(folder.resolve("studies/again/runs"))) {
            for (Path run : runs.toList()) edit(run, "\"firmware\": \"2026-02-11\"", "\"firmware\": \"2026-03-30\"");
        }
        CheckedFolder changed = FolderChecker.check(folder);
        Pairing.Judgement judgement = new Pairing(changed)
                .judge(side(changed, "heat-spreader", "spreader"), side(changed, "again", "none"), ENERGY);
        assertEquals(Set.of("several-things-changed"), rules(judgement.refusals()));
        assertEquals("cooling", judgement.factor());
        assertEquals(
                "beside the cooling, the firmware differs too: 2026-02-11, 2026-03-30",
                judgement.refusals().get(0).message());
        // With one cooling on both sides, the firmware is the one thing that changed.
        Pairing.Judgement ofFirmware = new Pairing(changed)
                .judge(side(changed, "heat-spreader", "spreader"), side(changed, "again", "spreader"), ENERGY);
        assertEquals("firmware", ofFirmware.factor());
        assertFalse(ofFirmware.isRefused());
    }

    @Test
    void aLevelIsNotHeldAgainstTheRunsThatItRestsOn() {
        Pairing.Judgement judgement = new Pairing(CHECKED)
                .judge(side(CHECKED, "heat-spreader", "none"), side(CHECKED, "heat-spreader", "none"), ENERGY);
        assertTrue(judgement.isRefused());
        assertEquals("heat-spreader/none-1", judgement.shared().get(0));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) Files.createDirectories(target);
                else Files.copy(file, target);
            }
        }
    }

    private static void edit(Path file, String from, String to) throws IOException {
        String text = Files.readString(file);
        assertTrue(text.contains(from), file + " has no " + from);
        Files.writeString(file, text.replace(from, to));
    }
}
