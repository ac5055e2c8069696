package org.evenhand.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What the guide for authors shows is so. */
class WritingAnswersTest {

    private static final Path GUIDE =
            Path.of(System.getProperty("evenhand.root", "..")).resolve("docs/writing-answers.md");
    private static final Pattern GALLERY = Pattern.compile("\\| `(.*)` \\| `([a-z-]+)` \\| `(.*)` \\|");
    private static final Pattern ADDRESS = Pattern.compile("\\| ([a-z-]+) \\| `((?:evidence|given):[^`]*)` \\| .*");
    private static final Pattern FORM = Pattern.compile("\\?as=([a-z-]+)");

    @TestFactory
    Stream<DynamicTest> eachFailingSentenceOfTheGalleryFailsAndItsMendedFormHolds() throws IOException {
        FixedEvidence evidence = new FixedEvidence("en");
        List<DynamicTest> tests = new ArrayList<>();
        for (Matcher row : rows(GALLERY)) {
            tests.add(DynamicTest.dynamicTest(row.group(1), () -> {
                assertEquals(List.of(row.group(2)), rules(row.group(1), evidence));
                assertEquals(List.of(), rules(row.group(3), evidence));
            }));
        }
        assertTrue(tests.size() >= 20, tests.size() + " rows");
        return tests.stream();
    }

    private static List<String> rules(String text, EvidenceResolver evidence) {
        return Verification.verify(ProseSource.body("f.md", 1, text), evidence).stream()
                .map(ProseFault::rule)
                .toList();
    }

    @TestFactory
    Stream<DynamicTest> eachAddressOfTheListLeadsToAFigure() throws IOException {
        SampleEvidence sample = new SampleEvidence();
        return rows(ADDRESS).stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.group(2),
                        () -> assertInstanceOf(
                                EvidenceResolver.Found.class,
                                sample.resolver(row.group(1)).resolve(row.group(2)))));
    }

    @Test
    void eachFormIsListed() throws IOException {
        String guide = Files.readString(GUIDE);
        for (EvidenceLink.Form form : EvidenceLink.Form.values()) {
            assertTrue(guide.contains("?as=" + form.word()), form.word());
        }
        Matcher forms = FORM.matcher(guide);
        while (forms.find()) {
            String word = forms.group(1);
            assertTrue(
                    Stream.of(EvidenceLink.Form.values()).anyMatch(f -> f.word().equals(word)), word);
        }
    }

    private static List<Matcher> rows(Pattern pattern) throws IOException {
        return Files.readAllLines(GUIDE).stream()
                .map(pattern::matcher)
                .filter(Matcher::matches)
                .toList();
    }
}
