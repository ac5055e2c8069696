package org.evenhand.check.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.CheckedStudy;
import org.evenhand.check.FolderChecker;
import org.evenhand.model.Finding;
import org.evenhand.model.Outcome;
import org.evenhand.model.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Planted faults are found by the right rule, and sound studies are left in peace. docs/rules/README.md has the figures. */
class PlantedFaultsTest {

    private static final int STUDIES_PER_FAULT = 3;
    private static final int SOUND_STUDIES_PER_KIND = 110;

    @TempDir
    private Path place;

    @Test
    void everyPlantedFaultIsFoundByItsRule() throws IOException {
        List<Faults.Fault> faults = Faults.all();
        List<String> missed = IntStream.range(0, faults.size() * STUDIES_PER_FAULT)
                .parallel()
                .mapToObj(i -> missed(faults.get(i / STUDIES_PER_FAULT), i % STUDIES_PER_FAULT + 1))
                .flatMap(List::stream)
                .toList();
        int planted = faults.size() * STUDIES_PER_FAULT;
        told(String.format(
                Locale.ROOT,
                "planted faults: %d kinds, %d studies, %d found by the right rule",
                faults.size(),
                planted,
                planted - missed.size()));
        assertTrue(faults.size() >= 60, "kinds of faults");
        assertEquals(List.of(), missed);
    }

    /** Says a figure, which the page of the rules has to say too. */
    private static void told(String figure) throws IOException {
        System.out.println(figure);
        String page = Files.readString(Path.of("../docs/rules/README.md"));
        assertTrue(page.contains("- " + figure + "\n"), () -> "docs/rules/README.md says: " + figure);
    }

    private List<String> missed(Faults.Fault fault, int seed) {
        TextFolder folder = fault.kind().folder(seed);
        fault.plant().accept(folder);
        Path root = place.resolve(Integer.toHexString(fault.name().hashCode()) + "-" + seed);
        List<Finding> findings = FolderChecker.check(folder.writeTo(root)).findings();
        boolean found = findings.stream().anyMatch(f -> f.rule().equals(fault.rule()) && f.outcome() == Outcome.FOUND);
        return found
                ? List.of()
                : List.of(fault + ", study " + seed + "; found: "
                        + findings.stream()
                                .map(f -> f.rule() + " " + f.outcome().word())
                                .distinct()
                                .toList());
    }

    @Test
    void soundStudiesAreNeitherWithheldNorRefused() throws IOException {
        List<String> blocked = new ArrayList<>();
        int studies = 0;
        for (Sound kind : Sound.values()) {
            Map<String, String> files = new TreeMap<>();
            for (int seed = 1; seed <= SOUND_STUDIES_PER_KIND; seed++) {
                kind.folder(seed).moveStudyInto(kind.study(), kind.study() + "-" + seed, files);
            }
            Path root = place.resolve(kind.name());
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path target = root.resolve(file.getKey());
                Files.createDirectories(target.getParent());
                Files.writeString(target, file.getValue());
            }
            CheckedFolder checked = FolderChecker.check(root);
            studies += checked.studies().size();
            assertEquals(SOUND_STUDIES_PER_KIND, checked.studies().size(), kind::name);
            for (CheckedStudy study : checked.studies().values()) {
                study.findings().stream()
                        .filter(f -> f.outcome() == Outcome.FOUND)
                        .filter(f -> f.severity() == Severity.WITHHOLD || f.severity() == Severity.REFUSE)
                        .findFirst()
                        .ifPresent(f -> blocked.add(f.place() + " " + f.rule() + ": " + f.message()));
            }
        }
        told(String.format(
                Locale.ROOT,
                "sound studies: %d, of which %d were withheld or refused by mistake",
                studies,
                blocked.size()));
        assertTrue(studies >= 500, "sound studies");
        assertTrue(blocked.size() < studies / 100.0, blocked::toString);
    }
}
