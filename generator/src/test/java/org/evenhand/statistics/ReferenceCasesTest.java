package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Runs the independent cases of {@code reference/open.json}; the source of each stands in its display name. */
public class ReferenceCasesTest {

    /** The cases of the reference that run here, by their ids. */
    public static List<String> referenceCases() {
        return cases().stream().map(ReferenceCase::id).toList();
    }

    private static final Map<String, Consumer<ReferenceCase>> RUNNERS = runners();

    /** Methods that belong to other packages, with the reason. */
    private static final Map<String, String> ELSEWHERE = Map.of(
            "units", "factors and kinds of units belong to the package quantity",
            "trapezoid", "integrals of logs over their own times belong to the package measure");

    private static Map<String, Consumer<ReferenceCase>> runners() {
        Map<String, Consumer<ReferenceCase>> all = new HashMap<>();
        all.putAll(ReferenceOfMeans.RUNNERS);
        all.putAll(ReferenceOfCounts.RUNNERS);
        all.putAll(ReferenceOfFits.RUNNERS);
        all.putAll(ReferenceOfUncertainty.RUNNERS);
        return Map.copyOf(all);
    }

    static List<ReferenceCase> cases() {
        return ReferenceCase.all().stream()
                .filter(each -> RUNNERS.containsKey(each.method()))
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void agreesWithTheReference(ReferenceCase reference) {
        RUNNERS.get(reference.method()).accept(reference);
        reference.requireAllChecked();
    }

    @Test
    void everyMethodIsRunHereOrNamedAsBelongingElsewhere() {
        Set<String> methods =
                ReferenceCase.all().stream().map(ReferenceCase::method).collect(Collectors.toSet());
        Set<String> known = Stream.concat(RUNNERS.keySet().stream(), ELSEWHERE.keySet().stream())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(methods), known);
    }
}
