package org.evenhand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.StudyEvidence;
import org.evenhand.compare.Verdict;
import org.evenhand.measure.Measurements;
import org.evenhand.model.Comparison;
import org.evenhand.model.Instrument;
import org.evenhand.model.Item;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Method;
import org.evenhand.model.Place;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Run;
import org.evenhand.model.Study;
import org.evenhand.model.Subject;
import org.evenhand.read.FormerAnswer;
import org.evenhand.words.Words;

/**
 * A study with all that rules may want to know of it.
 *
 * @param folder in which it stands
 * @param evidence its figures
 * @param measured the runs of all studies
 * @param former what a former publication said; absent if there is none to hold it against
 * @param texts what its author wrote
 * @param verdict what may be said of a comparison, as far as is known: with the refusals once all rules have spoken
 */
public record StudyView(
        ResultsFolder folder,
        StudyEvidence evidence,
        Measurements measured,
        Optional<FormerAnswer> former,
        StudyTexts texts,
        Function<ComparisonResult, Optional<Verdict>> verdict) {

    /** The same, now that all refusals are known. */
    StudyView judged(Function<ComparisonResult, Optional<Verdict>> judgement) {
        return new StudyView(folder, evidence, measured, former, texts, judgement);
    }

    /** The figures that read otherwise than in the former publication. */
    public List<MovedFigures.Moved> movedFigures() {
        Words words = Words.of(folder.publication());
        return former.map(f -> MovedFigures.of(evidence, f, verdict, words)).orElse(List.of());
    }

    public Study study() {
        return evidence.study();
    }

    public List<LevelRun> runs() {
        return evidence.runs();
    }

    /** The runs whose values count. */
    public List<LevelRun> countingRuns() {
        return runs().stream().filter(r -> r.run().counts()).toList();
    }

    public Method method(Run run) {
        return folder.methods().get(run.method());
    }

    /** The one method under which all runs of a comparison were made. */
    public Method method(Sides sides) {
        return folder.methods()
                .get(sides.result().plan().measurand().orElseThrow().method());
    }

    /** The item that a run's setting "supply" names, by its id or its name; nothing if it is no item of the folder. */
    public Optional<Item> supply(Run run) {
        String named = run.settings().get("supply");
        return folder.items().values().stream()
                .filter(i -> i.id().equals(named) || i.name().equals(named))
                .findFirst();
    }

    public Item item(Run run) {
        return folder.items().get(run.item());
    }

    /** The instrument that a run names for a column or reading; nothing if it names none. */
    public Optional<Instrument> instrument(Run run, String columnOrReading) {
        return Optional.ofNullable(run.instruments().get(columnOrReading)).map(folder.instruments()::get);
    }

    public Measurand measurand(MeasurandId id) {
        return folder.methods().get(id.method()).measurands().get(id.measurand());
    }

    /** The comparisons that hold levels against each other, with the runs on both sides. */
    public List<Sides> sides() {
        List<Sides> result = new ArrayList<>();
        for (ComparisonResult comparison : evidence.comparisons()) {
            Comparison plan = comparison.plan();
            if (plan.measurand().isPresent()
                    && plan.kind() != Comparison.Kind.PROPORTION
                    && plan.kind() != Comparison.Kind.FAILURE_RATE) {
                List<LevelRun> runs = countingRuns().stream()
                        .filter(r -> r.value(plan.measurand().get()).isPresent())
                        .filter(r -> plan.level().isEmpty()
                                || r.level().equals(plan.level().get())
                                || plan.against().filter(r.level()::equals).isPresent())
                        .toList();
                result.add(new Sides(comparison, measurand(plan.measurand().get()), runs));
            }
        }
        return result;
    }

    /**
     * A comparison with the runs that it rests on.
     *
     * @param result what it came to
     * @param measurand that is compared
     * @param runs of all levels that take part
     */
    public record Sides(ComparisonResult result, Measurand measurand, List<LevelRun> runs) {

        public String id() {
            return result.plan().id();
        }

        /** The runs on one side. */
        public List<LevelRun> at(String level) {
            return runs.stream().filter(r -> r.level().equals(level)).toList();
        }
    }

    public Subject subject() {
        return Subject.study(study().id());
    }

    public Subject subject(Sides sides) {
        return Subject.comparison(study().id(), sides.id());
    }

    /** The run as a subject of this study, also where it lives in another. */
    public Subject subject(LevelRun run) {
        return Subject.run(study().id(), run.run().id());
    }

    public Place place(Sides sides) {
        return study().places().of("comparisons/" + sides.id());
    }
}
