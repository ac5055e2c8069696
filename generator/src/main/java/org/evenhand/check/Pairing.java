package org.evenhand.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.evenhand.compare.Comparer;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.StudyEvidence;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.measure.Measurements;
import org.evenhand.model.Comparison;
import org.evenhand.model.Finding;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Outcome;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Run;
import org.evenhand.model.Severity;
import org.evenhand.model.Status;
import org.evenhand.model.Study;
import org.evenhand.prose.StudyResolver;
import org.evenhand.words.Words;

/**
 * Holds two levels of any studies against each other, by the same rules that hold within a study: the two are put into a
 * study made for the purpose, and every rule looks at it.
 */
public final class Pairing {

    private static final String ID = "pair";

    private final ResultsFolder folder;
    private final Measurements measured;

    public Pairing(CheckedFolder checked) {
        this.folder = checked.folder();
        SortedMap<String, SortedMap<String, MeasuredRun>> runs = new TreeMap<>();
        checked.studies().values().stream()
                .flatMap(s -> s.evidence().runs().stream())
                .forEach(r -> runs.computeIfAbsent(r.run().study(), study -> new TreeMap<>())
                        .put(r.run().id(), r.measured()));
        this.measured = new Measurements(runs, List.of());
    }

    /** One level of a study. */
    public record Side(CheckedStudy study, String level) {

        List<LevelRun> runs(MeasurandId measurand) {
            return study.evidence().runs().stream()
                    .filter(r -> r.level().equals(level)
                            && r.run().counts()
                            && r.value(measurand).isPresent())
                    .toList();
        }

        private Study plan() {
            return study.evidence().study();
        }
    }

    /**
     * Whether two levels may be compared.
     *
     * @param result their difference; its verdict means nothing, since nobody planned the comparison
     * @param factor what is taken to be varied
     * @param shared runs that stand on both sides, by name; empty if the two are independent
     * @param refusals for which they may not be compared
     * @param caveats on the comparison itself
     */
    public record Judgement(
            ComparisonResult.Contrasted result,
            String factor,
            List<String> shared,
            List<Finding> refusals,
            List<Finding> caveats) {

        public boolean isRefused() {
            return !refusals.isEmpty() || !shared.isEmpty();
        }
    }

    /**
     * Holds one level against another.
     *
     * @param measurand a number, which both have
     */
    public Judgement judge(Side first, Side second, MeasurandId measurand) {
        Side[] sides = {first, second};
        String[] labels = labels(first, second);
        String factor = factor(first, second, measurand);
        Comparison plan = new Comparison(
                ID,
                Comparison.Kind.DIFFERENCE,
                Optional.of(measurand),
                Optional.of(labels[0]),
                Optional.of(labels[1]),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of());
        List<LevelRun> runs = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            for (LevelRun run : sides[i].runs(measurand)) {
                runs.add(new LevelRun(run.measured(), labels[i]));
            }
        }
        StudyEvidence evidence = Comparer.evidence(
                study(first, second, factor, plan, labels), runs, folder.methods(), Words.of(folder.publication()));
        List<Finding> findings = findings(new StudyView(
                folder,
                evidence,
                measured,
                Optional.empty(),
                new StudyTexts(folder, evidence.study(), StudyResolver.names(folder)),
                ComparisonResult::verdict));
        return new Judgement(
                (ComparisonResult.Contrasted) evidence.comparisons().get(0),
                factor,
                shared(first.runs(measurand), second.runs(measurand)),
                with(Severity.REFUSE, findings),
                with(Severity.CAVEAT, findings));
    }

    private List<Finding> findings(StudyView view) {
        List<Finding> findings = new ArrayList<>();
        for (Rule rule : Catalogue.RULES) {
            Report report = new Report(rule.facts(), folder.publication());
            rule.check(view, report);
            report.findings().stream()
                    .filter(f -> f.subject().comparison().filter(ID::equals).isPresent())
                    .map(f -> Checker.waived(view, f))
                    .filter(f -> f.outcome() == Outcome.FOUND)
                    .forEach(findings::add);
        }
        return findings.stream().sorted().distinct().toList();
    }

    private static List<Finding> with(Severity severity, List<Finding> findings) {
        return findings.stream().filter(f -> f.severity() == severity).toList();
    }

    /** Two studies may call different things by one name. */
    private static String[] labels(Side first, Side second) {
        boolean same = first.plan().id().equals(second.plan().id());
        return Stream.of(first, second)
                .map(s -> same ? s.level() : s.level() + " (" + s.plan().id() + ")")
                .toArray(String[]::new);
    }

    /** The studies' own factor where it differs between the sides; else a setting that does; else the first study's. */
    private static String factor(Side first, Side second, MeasurandId measurand) {
        Set<String> candidates = new LinkedHashSet<>();
        candidates.add(first.plan().factor());
        candidates.add(second.plan().factor());
        Stream.of(first, second)
                .flatMap(s -> s.runs(measurand).stream())
                .map(r -> new TreeSet<>(r.run().settings().keySet()))
                .forEach(candidates::addAll);
        candidates.add("item");
        return candidates.stream()
                .filter(name -> !values(first, name, measurand).equals(values(second, name, measurand)))
                .findFirst()
                .orElse(first.plan().factor());
    }

    private static Set<String> values(Side side, String setting, MeasurandId measurand) {
        Set<String> values = new TreeSet<>();
        side.runs(measurand).forEach(r -> values.add(r.run().levelOf(setting).orElse("")));
        return values;
    }

    private static List<String> shared(List<LevelRun> first, List<LevelRun> second) {
        Set<String> names = new TreeSet<>();
        first.forEach(r -> names.add(name(r.run())));
        return second.stream()
                .map(r -> name(r.run()))
                .filter(names::contains)
                .sorted()
                .toList();
    }

    private static String name(Run run) {
        return run.study() + "/" + run.id();
    }

    /** What a study declared of its factor holds where that is what is varied; what it waived holds within it alone. */
    private static Study study(Side first, Side second, String factor, Comparison plan, String[] labels) {
        boolean one = first.plan().id().equals(second.plan().id());
        List<String> changes = Stream.of(first.plan(), second.plan())
                .filter(s -> s.factor().equals(factor))
                .flatMap(s -> s.changesWithFactor().stream())
                .distinct()
                .toList();
        MeasurandId measurand = plan.measurand().orElseThrow();
        return new Study(
                ID,
                first.plan().question(),
                Optional.empty(),
                List.of(measurand.method()),
                factor,
                List.of(labels),
                OptionalInt.empty(),
                List.of(measurand),
                List.of(plan),
                List.of(),
                changes,
                List.of(),
                Optional.empty(),
                Status.DRAFT,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                one ? first.plan().waivers() : List.of(),
                List.of(),
                "",
                1,
                List.of(),
                first.plan().places());
    }
}
