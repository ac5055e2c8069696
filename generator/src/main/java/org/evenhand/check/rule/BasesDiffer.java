package org.evenhand.check.rule;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.model.Comparison;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;

/** Percentages stand beside each other only if they are of the same base. */
public final class BasesDiffer implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("bases-differ", Group.REPEATS, Severity.REFUSE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        Map<MeasurandId, Comparison> firsts = new LinkedHashMap<>();
        for (Comparison plan : study.study().comparisons()) {
            if (plan.kind() == Comparison.Kind.RATIO) {
                Comparison first = firsts.putIfAbsent(plan.measurand().orElseThrow(), plan);
                if (first != null && !first.against().equals(plan.against())) {
                    differ(study, plan, first, plan, report);
                }
            } else if (plan.kind() == Comparison.Kind.GEOMETRIC_MEAN) {
                checkMean(study, plan, report);
            }
        }
    }

    /** A mean of ratios must be of ratios of the same two levels. */
    private static void checkMean(StudyView study, Comparison mean, Report report) {
        List<Comparison> parts = study.study().comparisons().stream()
                .filter(c -> mean.of().contains(c.id()))
                .toList();
        for (Comparison part : parts) {
            Comparison first = parts.get(0);
            if (!part.against().equals(first.against()) || !part.level().equals(first.level())) {
                differ(study, mean, first, part, report);
                return;
            }
        }
    }

    private static void differ(StudyView study, Comparison refused, Comparison one, Comparison other, Report report) {
        report.at(
                        study.study().places().of("comparisons/" + refused.id()),
                        Subject.comparison(study.study().id(), refused.id()))
                .meaning(report.say("rules-repeats.bases-differ.meaning"))
                .found(
                        report.say(
                                "rules-repeats.bases-differ.found",
                                one.id(),
                                pair(one, report),
                                other.id(),
                                pair(other, report)),
                        report.say("rules-repeats.bases-differ.remedy"));
    }

    private static String pair(Comparison ratio, Report report) {
        return report.say(
                "rules-repeats.bases-differ.pair",
                ratio.level().orElse(""),
                ratio.against().orElse(""));
    }
}
