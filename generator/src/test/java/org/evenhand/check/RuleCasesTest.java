package org.evenhand.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.evenhand.model.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every rule finds its fault, stays silent on the near miss, and is explained.
 *
 * <p>{@code -Devenhand.renew=true} writes the expected findings anew; read the difference before committing it.
 */
class RuleCasesTest {

    private static final boolean RENEW = Boolean.getBoolean("evenhand.renew");

    static Stream<RuleCase> cases() {
        return RuleCase.all().stream();
    }

    static Stream<RuleFacts> rules() {
        return Catalogue.facts().stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theFindingsAreThoseExpected(RuleCase ruleCase, @TempDir Path folder) {
        CheckedFolder checked = FolderChecker.check(ruleCase.assembleIn(folder), ruleCase.former());
        List<String> found = checked.findings().stream().map(RuleCase::line).toList();
        if (RENEW) {
            ruleCase.renew(found);
        }
        boolean fired = checked.findings().stream()
                .anyMatch(f -> f.rule().equals(ruleCase.rule()) && f.outcome() == Outcome.FOUND);
        assertEquals(ruleCase.triggers(), fired, () -> "fires as its name says; found: " + found);
        assertEquals(ruleCase.expected(), found);
    }

    @ParameterizedTest
    @ValueSource(strings = {"soak", "record", "load", "fan", "encode", "counts", "clocks"})
    void theBasesAreSound(String base) {
        CheckedFolder checked = FolderChecker.check(Path.of("src/test/resources/rules/bases", base));
        assertEquals(List.of(), checked.findings().stream().map(RuleCase::line).toList());
        assertFalse(checked.studies().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("rules")
    void everyRuleHasATriggerANearMissAndAnExplanation(RuleFacts rule) {
        List<RuleCase> own =
                RuleCase.all().stream().filter(c -> c.rule().equals(rule.id())).toList();
        assertTrue(own.stream().anyMatch(RuleCase::triggers), "a folder that triggers it");
        assertTrue(own.stream().anyMatch(c -> c.name().startsWith("near-miss")), "a near miss");
        Explanation explanation = Explanation.of(rule);
        for (String heading : List.of(
                Explanation.MEANING, Explanation.WHY, Explanation.MEND, Explanation.SOURCE, Explanation.WAIVE)) {
            assertFalse(explanation.section(heading).isBlank(), heading);
        }
    }

    @Test
    void noCaseIsForARuleThatDoesNotExist() {
        TreeSet<String> known = new TreeSet<>();
        Catalogue.facts().forEach(f -> assertTrue(known.add(f.id()), "named twice: " + f.id()));
        RuleCase.all().forEach(c -> assertTrue(known.contains(c.rule()), c.toString()));
    }
}
