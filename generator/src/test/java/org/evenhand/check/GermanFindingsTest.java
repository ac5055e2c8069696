package org.evenhand.check;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenhand.check.rule.ProseRules;
import org.evenhand.check.rule.ReadingRules;
import org.evenhand.model.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the rules on studies, folders, logs and texts find in a German publication is said in German; names and units stay
 * as they are.
 */
class GermanFindingsTest {

    /** Short words of English that are no words of German; from memory. */
    private static final Pattern ENGLISH = Pattern.compile(
            "\\b(the|of|and|is|were|with|from|that|this|than|not|for|it|its|by|to|are|has|have|other|run|runs)\\b");

    /** What somebody else wrote stands in quotation marks, or is the name of a field or a unit. */
    private static final Pattern QUOTED = Pattern.compile("„[^“]*“|\\{ from: |[a-z0-9]+(?:-[a-z0-9]+)+|% of reading");

    private static final Pattern DECIMAL_POINT = Pattern.compile("\\d\\.\\d");

    /** What other stages say, in English still: why a run has no value, how a figure moved. */
    private static final Set<String> SAID_ELSEWHERE = Set.of("not-settled", "plateau-far", "change-unrecorded");

    private static final Set<String> OF_STUDIES = Stream.of(
                    Catalogue.RULES.stream().map(Rule::facts),
                    ReadingRules.OF_FOLDER.stream().map(FolderRule::facts),
                    ProseRules.OF_WORDS.stream().map(ProseRule::facts))
            .flatMap(facts -> facts)
            .map(RuleFacts::id)
            .filter(id -> !SAID_ELSEWHERE.contains(id))
            .collect(Collectors.toSet());

    static Stream<RuleCase> cases() {
        return RuleCase.all().stream().filter(RuleCase::triggers).filter(c -> OF_STUDIES.contains(c.rule()));
    }

    private static List<Finding> findings(RuleCase ruleCase, Path folder) throws IOException {
        Path publication = ruleCase.assembleIn(folder).resolve("publication.yaml");
        String text = Files.readString(publication);
        Files.writeString(publication, text.replaceFirst("(?m)^language:.*\\n", "") + "\nlanguage: de\n");
        return FolderChecker.check(folder, ruleCase.former()).findings().stream()
                .filter(f -> OF_STUDIES.contains(f.rule()))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void whatIsFoundInAGermanPublicationIsSaidInGerman(RuleCase ruleCase, @TempDir Path folder) throws IOException {
        for (Finding finding : findings(ruleCase, folder)) {
            for (String text : List.of(finding.message(), finding.consequence(), finding.remedy())) {
                String own = QUOTED.matcher(text).replaceAll("");
                assertFalse(ENGLISH.matcher(own).find(), text);
            }
            assertFalse(DECIMAL_POINT.matcher(finding.message()).find(), finding.message());
        }
    }

    @Test
    void numbersInGermanFindingsHaveADecimalComma(@TempDir Path folder) throws IOException {
        RuleCase warm = RuleCase.all().stream()
                .filter(c -> c.rule().equals("warm-start") && c.name().equals("triggers"))
                .findFirst()
                .orElseThrow();
        List<String> said = findings(warm, folder).stream()
                .filter(f -> f.rule().equals("warm-start"))
                .map(Finding::message)
                .toList();
        assertTrue(
                said.contains("der Lauf none-1 beginnt mit „temperature“ um 35,1 K über der Umgebungstemperatur"),
                said::toString);
    }
}
