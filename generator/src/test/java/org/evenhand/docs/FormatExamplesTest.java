package org.evenhand.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.FolderChecker;
import org.evenhand.docs.Guide.Block;
import org.evenhand.model.Finding;
import org.evenhand.model.Outcome;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The examples of the page on the format: the sound ones make one results folder, in which nothing is found beyond what
 * an example announces as {@code caveat=RULE}; each wrong one, put into that folder, brings the finding that it announces
 * as {@code finding=RULE}, and no other.
 */
class FormatExamplesTest {

    private static final Guide GUIDE = Guide.read("docs/file-format.md");
    private static final Predicate<Block> IS_WRONG = b -> !b.all("finding").isEmpty();

    @TempDir
    private Path temporary;

    private static List<Block> files(Predicate<Block> which) {
        return GUIDE.blocks().stream().filter(Block::isFile).filter(which).toList();
    }

    private static CheckedFolder checkWith(Path folder, List<Block> more) {
        files(IS_WRONG.negate()).forEach(b -> b.writeInto(folder));
        more.forEach(b -> b.writeInto(folder));
        return FolderChecker.check(folder);
    }

    /** Each as "file: rule". */
    private static Set<String> found(CheckedFolder checked) {
        Set<String> found = new TreeSet<>();
        for (Finding finding : checked.findings()) {
            if (finding.outcome() != Outcome.WAIVED) {
                found.add(finding.place().file() + ": " + finding.rule());
            }
        }
        return found;
    }

    private static Set<String> announced(List<Block> blocks, String word) {
        Set<String> announced = new TreeSet<>();
        blocks.forEach(b ->
                b.all(word).forEach(rule -> announced.add(b.all("file").get(0) + ": " + rule)));
        return announced;
    }

    @Test
    void theSoundExamplesAreOneFolderInWhichNothingUnannouncedIsFound() {
        List<Block> sound = files(IS_WRONG.negate());
        CheckedFolder checked = checkWith(temporary, List.of());
        assertEquals(
                announced(sound, "caveat"),
                found(checked),
                () -> checked.findings().toString());
        assertFalse(checked.withholds());
        long studies = sound.stream()
                .filter(b -> b.all("file").get(0).endsWith("/study.md"))
                .count();
        assertEquals(studies, checked.studies().size());
    }

    @TestFactory
    Stream<DynamicTest> aWrongExampleBringsTheFindingThatItAnnounces() {
        List<Block> wrong = files(IS_WRONG);
        assertFalse(wrong.isEmpty());
        return wrong.stream()
                .map(block -> DynamicTest.dynamicTest(GUIDE.file() + ":" + block.line(), () -> {
                    Set<String> expected = announced(files(IS_WRONG.negate()), "caveat");
                    expected.addAll(announced(List.of(block), "finding"));
                    Path folder = temporary.resolve("line-" + block.line());
                    CheckedFolder checked = checkWith(folder, List.of(block));
                    assertEquals(
                            expected, found(checked), () -> checked.findings().toString());
                }));
    }

    @Test
    void everyBlockOfStructuredTextIsTried() {
        List<Block> untried = GUIDE.blocks().stream()
                .filter(b -> Set.of("yaml", "json", "markdown", "csv").contains(b.language()))
                .filter(b -> !b.isFile())
                .toList();
        assertEquals(List.of(), untried);
    }
}
