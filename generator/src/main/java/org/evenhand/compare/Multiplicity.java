package org.evenhand.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.statistics.Equivalence;
import org.evenhand.statistics.Holm;

/** Gives verdicts, once the p values of all comparisons of a study are known. */
final class Multiplicity {

    /** The chance of any false alarm in one study. */
    private static final double ALPHA = 0.05;

    private Multiplicity() {}

    static List<ComparisonResult> judge(List<ComparisonResult> results) {
        double[] p = results.stream()
                .filter(r -> r.p().isPresent())
                .mapToDouble(r -> r.p().getAsDouble())
                .toArray();
        double[] adjusted = Holm.adjust(p);
        List<ComparisonResult> judged = new ArrayList<>();
        int next = 0;
        for (ComparisonResult result : results) {
            judged.add(result.p().isPresent() ? judge(result, adjusted[next++]) : result);
        }
        return judged;
    }

    private static ComparisonResult judge(ComparisonResult result, double adjusted) {
        boolean differs = adjusted < ALPHA;
        Optional<Verdict> verdict = Optional.of(differs ? Verdict.DIFFERS : Verdict.NOT_SHOWN);
        OptionalDouble pAdjusted = OptionalDouble.of(adjusted);
        if (result instanceof ComparisonResult.Contrasted r) {
            boolean same = r.equivalence().filter(Equivalence::equivalent).isPresent();
            return new ComparisonResult.Contrasted(
                    r.plan(),
                    r.unit(),
                    same ? Optional.of(Verdict.SAME_WITHIN_MARGIN) : verdict,
                    differs,
                    r.why(),
                    r.estimate(),
                    r.interval(),
                    r.degreesOfFreedom(),
                    r.p(),
                    pAdjusted,
                    r.margin(),
                    r.equivalence(),
                    r.smallest(),
                    r.difference(),
                    r.logRatio(),
                    r.contributions(),
                    r.numbers());
        }
        if (result instanceof ComparisonResult.Trend r) {
            return new ComparisonResult.Trend(
                    r.plan(),
                    r.unit(),
                    r.factorUnit(),
                    verdict,
                    r.why(),
                    r.line(),
                    r.exponent(),
                    r.efficiency(),
                    r.points(),
                    r.p(),
                    pAdjusted);
        }
        if (result instanceof ComparisonResult.Survival r) {
            return new ComparisonResult.Survival(
                    r.plan(), r.unit(), verdict, r.why(), r.levels(), r.test(), r.p(), pAdjusted);
        }
        if (result instanceof ComparisonResult.GeometricMean r) {
            return new ComparisonResult.GeometricMean(
                    r.plan(), r.unit(), verdict, r.why(), r.estimate(), r.interval(), r.p(), pAdjusted);
        }
        return result;
    }
}
