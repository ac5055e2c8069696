package org.evenhand.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.LevelSummary;
import org.evenhand.compare.StudyEvidence;
import org.evenhand.compare.Verdict;
import org.evenhand.measure.RunValue;
import org.evenhand.model.Item;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Publication;
import org.evenhand.model.ResultsFolder;
import org.evenhand.read.NearMiss;

/** Finds figures for the prose of one study, or of none. */
public final class StudyResolver implements EvidenceResolver {

    private final ResultsFolder folder;
    private final Optional<StudyEvidence> evidence;
    private final GivenValues given;
    private final ComparisonFigures figures;
    private final Supplier<Names> names;

    private StudyResolver(
            ResultsFolder folder,
            Optional<StudyEvidence> evidence,
            Function<ComparisonResult, Optional<Verdict>> verdict,
            Supplier<Names> names) {
        this.folder = folder;
        this.evidence = evidence;
        this.names = names;
        this.given = new GivenValues(folder, evidence.map(StudyEvidence::study));
        this.figures = new ComparisonFigures(folder, verdict);
    }

    /**
     * For the prose of a study.
     *
     * @param folder with items and methods
     * @param evidence the study's figures
     * @param verdict the verdict that stands after the checks
     */
    public static StudyResolver of(
            ResultsFolder folder, StudyEvidence evidence, Function<ComparisonResult, Optional<Verdict>> verdict) {
        return new StudyResolver(folder, Optional.of(evidence), verdict, () -> names(folder));
    }

    /** The same, with the folder's {@linkplain #names(ResultsFolder) names}, so that they need not be found once more. */
    public StudyResolver with(Names known) {
        return new StudyResolver(folder, evidence, figures.verdict(), () -> known);
    }

    /** For prose that belongs to no study: the front page, items, methods. Only given values are found. */
    public static StudyResolver withoutStudy(ResultsFolder folder) {
        return new StudyResolver(folder, Optional.empty(), ComparisonResult::verdict, () -> names(folder));
    }

    @Override
    public Resolution resolve(String address) {
        boolean isGiven = address.startsWith(EvidenceLink.GIVEN);
        String path = address.substring(isGiven ? EvidenceLink.GIVEN.length() : EvidenceLink.EVIDENCE.length());
        Optional<List<String>> parts = EvidenceLink.parts(path);
        if (parts.isEmpty() || parts.get().stream().anyMatch(String::isEmpty)) {
            return new Missing("“" + address + "” is not an address", "part names by /, and write a space as %20");
        }
        if (isGiven) {
            return given.resolve(parts.get());
        }
        if (evidence.isEmpty()) {
            return new Missing(
                    "there is no evidence here: this text belongs to no study", "link to the answer instead");
        }
        List<String> names = parts.get();
        return switch (names.size() >= 2 ? names.get(0) : "") {
            case "level" -> level(evidence.get(), names);
            case "run" -> run(evidence.get(), names);
            default -> comparison(evidence.get(), names);
        };
    }

    @Override
    public String language() {
        return language(folder);
    }

    /** The language that a folder publishes in, as an IETF tag. */
    static String language(ResultsFolder folder) {
        return folder.publication().map(Publication::language).orElse("en");
    }

    private FigureText text() {
        return FigureText.in(language());
    }

    @Override
    public List<String> levels() {
        List<String> levels =
                new ArrayList<>(evidence.map(e -> e.study().levels()).orElse(List.of()));
        for (String level : List.copyOf(levels)) {
            levels.addAll(Side.of(
                            level,
                            Optional.empty(),
                            Optional.ofNullable(folder.items().get(level)).map(Item::name))
                    .names());
        }
        return levels;
    }

    @Override
    public Names names() {
        return names.get();
    }

    /** The names of a folder's items; to be found once and given to the resolvers of all its studies. */
    public static Names names(ResultsFolder folder) {
        List<String> names = new ArrayList<>();
        folder.items().forEach((id, item) -> {
            names.add(item.name());
            names.addAll(Side.of(id, Optional.empty(), Optional.of(item.name())).names());
        });
        return Names.of(names);
    }

    private Resolution comparison(StudyEvidence study, List<String> names) {
        Optional<ComparisonResult> result = study.comparison(names.get(0));
        if (result.isEmpty()) {
            List<String> known =
                    study.comparisons().stream().map(c -> c.plan().id()).toList();
            return new Missing(
                    "this study has no comparison “" + names.get(0) + "”", NearMiss.suggestion(names.get(0), known));
        }
        Evidence whole = figures.of(study.study(), result.get());
        return names.size() == 1
                ? new Found(whole)
                : part(whole, Parts.of(whole, result.get(), text()), names.subList(1, names.size()));
    }

    private Resolution level(StudyEvidence study, List<String> names) {
        String level = names.get(1);
        if (!study.study().levels().contains(level)) {
            return new Missing(
                    "this study has no level “" + level + "”",
                    NearMiss.suggestion(level, study.study().levels()));
        }
        if (names.size() == 2) {
            return new Missing(
                    "“" + level + "” is a level; of which measurand is not said",
                    "write evidence:level/LEVEL/MEASURAND; " + NearMiss.suggestion("", measurandNames(study)));
        }
        Named named = measurand(study.study().measurands(), names.subList(2, names.size()));
        Optional<LevelSummary> summary = named.id.flatMap(id -> study.summary(level, id));
        if (summary.isEmpty()) {
            return new Missing(
                    "this study does not show a measurand “" + names.get(2) + "”",
                    NearMiss.suggestion(names.get(2), measurandNames(study)));
        }
        Evidence whole = LevelFigures.of(folder, study.study(), summary.get());
        return named.rest.isEmpty()
                ? new Found(whole)
                : part(whole, Parts.of(whole, summary.get(), text()), named.rest);
    }

    private Resolution run(StudyEvidence study, List<String> names) {
        Optional<LevelRun> run = study.run(names.get(1));
        if (run.isEmpty()) {
            return new Missing(
                    "this study has no run “" + names.get(1) + "”",
                    NearMiss.suggestion(
                            names.get(1),
                            study.runs().stream().map(r -> r.run().id()).toList()));
        }
        List<MeasurandId> known = folder.methods().get(run.get().run().method()).measurands().keySet().stream()
                .map(m -> new MeasurandId(run.get().run().method(), m))
                .toList();
        Named named = names.size() == 2
                ? new Named(Optional.empty(), List.of())
                : measurand(known, names.subList(2, names.size()));
        Optional<RunValue> value = named.id.flatMap(id -> run.get().value(id));
        if (value.isEmpty() || !named.rest.isEmpty()) {
            return new Missing(
                    "the run “" + names.get(1) + "” has no such value",
                    NearMiss.suggestion(
                            names.size() == 2 ? "" : names.get(2),
                            known.stream().map(MeasurandId::measurand).toList()));
        }
        return new Found(LevelFigures.of(folder, study.study(), run.get(), named.id.orElseThrow(), value.get()));
    }

    private static Resolution part(Evidence whole, java.util.Map<String, Evidence> parts, List<String> names) {
        String name = String.join("/", names);
        Evidence part = parts.get(name);
        return part != null
                ? new Found(part)
                : new Missing("it has no part “" + name + "”", NearMiss.suggestion(name, parts.keySet()));
    }

    private static List<String> measurandNames(StudyEvidence study) {
        return study.study().measurands().stream().map(MeasurandId::measurand).toList();
    }

    /** The measurand that the first one or two names mean, and what is left. */
    private static Named measurand(List<MeasurandId> known, List<String> names) {
        List<MeasurandId> found = new ArrayList<>();
        if (names.size() >= 2) {
            MeasurandId full = new MeasurandId(names.get(0), names.get(1));
            if (known.contains(full)) {
                return new Named(Optional.of(full), names.subList(2, names.size()));
            }
        }
        known.stream().filter(m -> m.measurand().equals(names.get(0))).forEach(found::add);
        Optional<MeasurandId> single = found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
        return new Named(single, names.subList(1, names.size()));
    }

    private record Named(Optional<MeasurandId> id, List<String> rest) {}

    static String noun(MeasurandId id) {
        return id.measurand().replace('-', ' ');
    }

    static String joined(List<String> parts) {
        return parts.stream().collect(Collectors.joining(", "));
    }
}
