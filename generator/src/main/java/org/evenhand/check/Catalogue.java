package org.evenhand.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.evenhand.check.rule.AmbientMissing;
import org.evenhand.check.rule.AmbientSpread;
import org.evenhand.check.rule.LengthShortOfLog;
import org.evenhand.check.rule.LengthSpread;
import org.evenhand.check.rule.ReadingRules;
import org.evenhand.check.rule.SeveralThingsChanged;
import org.evenhand.check.rule.SingleRun;
import org.evenhand.check.rule.SingleSpecimen;

/** All rules there are. */
public final class Catalogue {

    /** Those that look at studies, in the order in which they are listed. */
    static final List<Rule> RULES = List.of(
            new SingleSpecimen(),
            new LengthSpread(),
            new LengthShortOfLog(),
            new AmbientMissing(),
            new AmbientSpread(),
            new SeveralThingsChanged(),
            new SingleRun());

    private Catalogue() {}

    /** The facts of all rules, those applied while reading included, by group and in the order listed. */
    public static List<RuleFacts> facts() {
        return Stream.concat(ReadingRules.ALL.stream(), RULES.stream().map(Rule::facts))
                .sorted(java.util.Comparator.comparing(RuleFacts::group))
                .toList();
    }

    public static Optional<RuleFacts> find(String id) {
        return facts().stream().filter(f -> f.id().equals(id)).findFirst();
    }
}
