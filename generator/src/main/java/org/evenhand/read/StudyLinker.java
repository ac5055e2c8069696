package org.evenhand.read;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.evenhand.model.Comparison;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Method;
import org.evenhand.model.Place;
import org.evenhand.model.Study;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;

/** Checks what a study says of methods, levels, measurands and other studies. */
final class StudyLinker {

    private final Named known;
    private final Faults faults;

    StudyLinker(Named known, Faults faults) {
        this.known = known;
        this.faults = faults;
    }

    /**
     * Takes out the studies that point at nothing.
     *
     * @param broken studies with errors; more may be added
     */
    SortedMap<String, Study> link(SortedMap<String, Study> studies, SortedSet<String> broken) {
        SortedMap<String, Study> linked = new TreeMap<>();
        Set<String> names = new TreeSet<>(studies.keySet());
        names.addAll(broken);
        for (Study study : studies.values()) {
            int before = faults.count();
            check(study, names);
            if (faults.count() > before || broken.contains(study.id())) {
                broken.add(study.id());
            } else {
                linked.put(study.id(), study);
            }
        }
        return linked;
    }

    private void check(Study study, Set<String> studies) {
        for (int i = 0; i < study.methods().size(); i++) {
            String path = study.places().byPath().containsKey("method") ? "method" : "methods/" + i;
            known.isKnown("methods", study.methods().get(i), study.places().of(path), faults);
        }
        checkLevels(study);
        for (int i = 0; i < study.measurands().size(); i++) {
            measurand(study, study.measurands().get(i), study.places().of("measurands/" + i));
        }
        study.comparisons().forEach(c -> check(study, c));
        for (int i = 0; i < study.stated().size(); i++) {
            check(study, study.stated().get(i), "stated/" + i);
        }
        for (int i = 0; i < study.uses().size(); i++) {
            isStudy(study.uses().get(i).study(), studies, study.places().of("uses/" + i + "/study"));
        }
        study.supersededBy().ifPresent(by -> isStudy(by, studies, study.places().of("by")));
    }

    private void isStudy(String id, Set<String> studies, Place place) {
        if (!studies.contains(id)) {
            faults.add(
                    Rules.REFERENCE_UNRESOLVED,
                    place,
                    "there is no study “" + id + "”",
                    NearMiss.suggestion(id, studies));
        }
    }

    private void checkLevels(Study study) {
        Map<String, String> byLowerCase = new HashMap<>();
        for (int i = 0; i < study.levels().size(); i++) {
            String level = study.levels().get(i);
            String before = byLowerCase.putIfAbsent(level.toLowerCase(Locale.ROOT), level);
            if (before != null) {
                faults.add(
                        Rules.ID_COLLISION,
                        study.places().of("levels/" + i),
                        "the levels “" + before + "” and “" + level + "” cannot be told apart",
                        "name them differently");
            }
            if (study.factor().equals("item")) {
                known.isKnown("items", level, study.places().of("levels/" + i), faults);
            }
        }
    }

    private Optional<Measurand> measurand(Study study, MeasurandId id, Place place) {
        if (!study.methods().contains(id.method())) {
            faults.add(
                    Rules.REFERENCE_UNRESOLVED,
                    place,
                    "the study has no method “" + id.method() + "”",
                    NearMiss.suggestion(id.method(), study.methods()));
            return Optional.empty();
        }
        Method method = known.methods().get(id.method());
        if (method == null) {
            return Optional.empty();
        }
        Measurand measurand = method.measurands().get(id.measurand());
        if (measurand == null) {
            faults.add(
                    Rules.REFERENCE_UNRESOLVED,
                    place,
                    "the method “" + id.method() + "” has no measurand “" + id.measurand() + "”",
                    NearMiss.suggestion(id.measurand(), method.measurands().keySet()));
        }
        return Optional.ofNullable(measurand);
    }

    private void check(Study study, Study.StatedFigure stated, String path) {
        checkLevel(study, stated.level(), path + "/level");
        measurand(study, stated.measurand(), study.places().of(path + "/measurand"))
                .filter(m -> !m.isNumeric() || !stated.mean().unit().convertsTo(m.unit()))
                .ifPresent(m -> faults.add(
                        Rules.UNIT_DIMENSION,
                        study.places().of(path + "/mean"),
                        "“" + stated.mean() + "” cannot be a mean of “" + m.title() + "”",
                        m.isNumeric() ? "give it in " + m.unit().symbol() : "judgements have no mean; delete it"));
    }

    private void check(Study study, Comparison comparison) {
        String path = "comparisons/" + comparison.id();
        comparison.level().ifPresent(l -> checkLevel(study, l, path + "/level"));
        comparison.against().ifPresent(l -> checkLevel(study, l, path + "/against"));
        if (comparison.level().isPresent() && comparison.level().equals(comparison.against())) {
            faults.add(
                    Rules.REFERENCE_UNRESOLVED,
                    study.places().of(path + "/against"),
                    "“" + comparison.id() + "” compares a level with itself",
                    "name two different levels");
        }
        comparison
                .measurand()
                .flatMap(m -> measurand(study, m, study.places().of(path + "/measurand")))
                .ifPresent(m -> checkFits(study, comparison, m));
        Set<String> ratios = study.comparisons().stream()
                .filter(c -> c.kind() == Comparison.Kind.RATIO)
                .map(Comparison::id)
                .collect(Collectors.toCollection(TreeSet::new));
        for (int i = 0; i < comparison.of().size(); i++) {
            String of = comparison.of().get(i);
            if (!ratios.contains(of)) {
                faults.add(
                        Rules.REFERENCE_UNRESOLVED,
                        study.places().of(path + "/of/" + i),
                        "the study has no ratio comparison “" + of + "”",
                        NearMiss.suggestion(of, ratios));
            }
        }
        if (comparison.kind() == Comparison.Kind.TREND) {
            checkNumericLevels(study, study.places().of(path + "/as"));
        }
    }

    private void checkFits(Study study, Comparison comparison, Measurand measurand) {
        String path = "comparisons/" + comparison.id();
        Place as = study.places().of(path + "/as");
        boolean wantsYesNo = comparison.kind() == Comparison.Kind.PROPORTION;
        if (wantsYesNo == measurand.isNumeric()) {
            faults.add(
                    Rules.UNIT_DIMENSION,
                    as,
                    "a " + comparison.kind().word() + " cannot be made of “" + measurand.title() + "”, which is "
                            + (measurand.isNumeric() ? "a number" : "a judgement"),
                    wantsYesNo ? "use a measurand of kind: yes-no" : "use a proportion for judgements of yes and no");
            return;
        }
        UnitKind kind = measurand.unit().kind();
        if (comparison.kind() == Comparison.Kind.RATIO && kind != UnitKind.DIFFERENCE) {
            faults.add(
                    Rules.UNIT_DIMENSION,
                    as,
                    "values in " + measurand.unit().symbol()
                            + " cannot be divided: the zero of that scale is a convention",
                    kind == UnitKind.POINT
                            ? "compare by difference, or use the rise above ambient in K"
                            : "compare by difference, in dB");
        }
        comparison.sameWithin().ifPresent(margin -> checkMargin(study, comparison, measurand, margin));
    }

    private void checkMargin(Study study, Comparison comparison, Measurand measurand, Quantity margin) {
        Unit wanted = comparison.kind() == Comparison.Kind.RATIO
                ? Unit.of("%")
                : measurand.unit().ofDifference();
        Place place = study.places().of("comparisons/" + comparison.id() + "/same-within");
        if (!margin.unit().convertsTo(wanted)) {
            faults.doesNotConvert(
                    place,
                    margin,
                    wanted,
                    "the margin “" + margin + "” does not fit a "
                            + comparison.kind().word() + " of “" + measurand.title() + "”");
        } else if (margin.value().signum() <= 0) {
            faults.add(
                    Rules.FIELD_MALFORMED,
                    place,
                    "a margin must be above zero",
                    "state the largest difference that does not matter");
        }
    }

    private void checkLevel(Study study, String level, String path) {
        if (!study.levels().contains(level)) {
            faults.add(
                    Rules.REFERENCE_UNRESOLVED,
                    study.places().of(path),
                    "the study has no level “" + level + "”",
                    NearMiss.suggestion(level, study.levels()));
        }
    }

    private void checkNumericLevels(Study study, Place place) {
        Unit first = null;
        for (String level : study.levels()) {
            try {
                Unit unit = Quantity.parseCount(level).unit();
                first = first == null ? unit : first;
                if (unit.convertsTo(first)) {
                    continue;
                }
            } catch (MisreadException e) {
                // reported below: the level is no number
            }
            faults.add(
                    Rules.UNIT_DIMENSION,
                    place,
                    "a trend needs levels that are quantities of one kind, and “" + level + "” is not",
                    "compare the levels in pairs, or write them as quantities");
            return;
        }
    }
}
