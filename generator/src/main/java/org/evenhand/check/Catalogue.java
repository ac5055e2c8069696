package org.evenhand.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.evenhand.check.rule.PowerRules;
import org.evenhand.check.rule.ProseRules;
import org.evenhand.check.rule.ReadingRules;
import org.evenhand.check.rule.RecordRules;
import org.evenhand.check.rule.RepeatsRules;
import org.evenhand.check.rule.SoundRules;
import org.evenhand.check.rule.SurroundingsRules;
import org.evenhand.check.rule.TimeRules;

/** All rules there are. */
public final class Catalogue {

    /** Those that look at studies, in the order in which they are listed. */
    static final List<Rule> RULES = Stream.of(
                    RecordRules.ALL,
                    TimeRules.ALL,
                    SurroundingsRules.ALL,
                    PowerRules.ALL,
                    SoundRules.ALL,
                    RepeatsRules.ALL,
                    ProseRules.ALL)
            .flatMap(List::stream)
            .toList();

    private Catalogue() {}

    /** The facts of all rules, those applied while reading included, by group and in the order listed. */
    public static List<RuleFacts> facts() {
        return Stream.of(
                        ReadingRules.ALL.stream(),
                        RULES.stream().map(Rule::facts),
                        ProseRules.OF_WORDS.stream().map(ProseRule::facts))
                .flatMap(facts -> facts)
                .sorted(Comparator.comparing(RuleFacts::group))
                .toList();
    }

    public static Optional<RuleFacts> find(String id) {
        return facts().stream().filter(f -> f.id().equals(id)).findFirst();
    }
}
