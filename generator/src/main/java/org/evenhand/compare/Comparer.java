package org.evenhand.compare;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.measure.Measurements;
import org.evenhand.model.Comparison;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Study;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.Estimate;
import org.evenhand.statistics.GeometricMean;
import org.evenhand.statistics.Interval;
import org.evenhand.words.Words;

/** Makes the evidence of every study. */
public final class Comparer {

    private static final double CONFIDENCE = 0.95;

    private final ResultsFolder folder;
    private final Measurements measured;

    private Comparer(ResultsFolder folder, Measurements measured) {
        this.folder = folder;
        this.measured = measured;
    }

    /**
     * The evidence of all studies of the folder.
     *
     * @param folder what was read
     * @param measured the values of all runs
     * @return by the study's id
     */
    public static SortedMap<String, StudyEvidence> compare(ResultsFolder folder, Measurements measured) {
        Comparer comparer = new Comparer(folder, measured);
        Words words = Words.of(folder.publication());
        SortedMap<String, StudyEvidence> result = new TreeMap<>();
        folder.studies()
                .forEach((id, study) -> result.put(id, evidence(study, comparer.runs(study), folder.methods(), words)));
        return result;
    }

    /**
     * The evidence of a study.
     *
     * @param study its plan
     * @param runs that it looks at, in the order of their ids
     * @param methods at least those of the study, by id
     * @param words in which reasons are given
     */
    public static StudyEvidence evidence(
            Study study, List<LevelRun> runs, SortedMap<String, Method> methods, Words words) {
        Map<String, ComparisonResult> results = new LinkedHashMap<>();
        for (Comparison plan : study.comparisons()) {
            if (plan.kind() != Comparison.Kind.GEOMETRIC_MEAN) {
                results.put(plan.id(), compare(plan, study, runs, methods, words));
            }
        }
        List<ComparisonResult> inOrder = new ArrayList<>();
        for (Comparison plan : study.comparisons()) {
            inOrder.add(
                    plan.kind() == Comparison.Kind.GEOMETRIC_MEAN
                            ? geometricMean(plan, results, words)
                            : results.get(plan.id()));
        }
        return new StudyEvidence(study, runs, Summaries.of(study, runs, methods), Multiplicity.judge(inOrder));
    }

    /** The study's own runs and those it uses, by id. */
    private List<LevelRun> runs(Study study) {
        List<LevelRun> runs = new ArrayList<>();
        add(measuredOf(study.id()), study, Map.of(), runs);
        for (Study.UsedRuns used : study.uses()) {
            add(measuredOf(used.study()), study, used.where(), runs);
        }
        runs.sort(Comparator.<LevelRun, String>comparing(r -> r.run().id())
                .thenComparing(r -> r.run().study()));
        return runs;
    }

    private Collection<MeasuredRun> measuredOf(String study) {
        SortedMap<String, MeasuredRun> runs = measured.byStudy().get(study);
        return runs == null ? List.of() : runs.values();
    }

    private static void add(Collection<MeasuredRun> from, Study study, Map<String, String> where, List<LevelRun> to) {
        for (MeasuredRun run : from) {
            boolean wanted = study.methods().contains(run.run().method())
                    && where.entrySet().stream()
                            .allMatch(w -> run.run().levelOf(w.getKey()).equals(Optional.of(w.getValue())));
            run.run()
                    .levelOf(study.factor())
                    .filter(level -> wanted && study.levels().contains(level))
                    .ifPresent(level -> to.add(new LevelRun(run, level)));
        }
    }

    private static ComparisonResult compare(
            Comparison plan, Study study, List<LevelRun> runs, SortedMap<String, Method> methods, Words words) {
        Measurand measurand = methods.get(plan.measurand().orElseThrow().method())
                .measurands()
                .get(plan.measurand().orElseThrow().measurand());
        return switch (plan.kind()) {
            case DIFFERENCE, RATIO -> Contrasts.of(plan, measurand, runs, words);
            case TREND -> Trends.of(plan, study, measurand, runs, words);
            case TIME_UNTIL -> Events.survival(plan, measurand, runs, words);
            case PROPORTION -> Events.share(plan, runs, words);
            case FAILURE_RATE -> Events.failureRate(plan, runs, words);
            case GEOMETRIC_MEAN -> throw new IllegalStateException("made of others");
        };
    }

    private static ComparisonResult.GeometricMean geometricMean(
            Comparison plan, Map<String, ComparisonResult> results, Words words) {
        List<Estimate> logRatios = new ArrayList<>();
        Reasons why = new Reasons(words);
        for (String of : plan.of()) {
            ComparisonResult result = results.get(of);
            Optional<Estimate> logRatio =
                    result instanceof ComparisonResult.Contrasted c ? c.logRatio() : Optional.empty();
            logRatio.ifPresentOrElse(logRatios::add, () -> why.add("compare.no-ratio", of));
        }
        boolean complete = why.isEmpty() && !logRatios.isEmpty();
        Optional<Estimate> mean = complete ? Optional.of(GeometricMean.ofLogRatios(logRatios)) : Optional.empty();
        return new ComparisonResult.GeometricMean(
                plan,
                Unit.ONE,
                Optional.of(Verdict.NOT_SHOWN),
                why.list(),
                mean.isPresent() ? OptionalDouble.of(StrictMath.exp(mean.get().value())) : OptionalDouble.empty(),
                mean.map(m -> m.interval(CONFIDENCE))
                        .map(i -> new Interval(StrictMath.exp(i.low()), StrictMath.exp(i.high()))),
                mean.map(m -> m.pTwoSided(0)).orElse(OptionalDouble.empty()),
                OptionalDouble.empty());
    }
}
