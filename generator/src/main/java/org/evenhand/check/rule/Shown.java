package org.evenhand.check.rule;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Comparison;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Method;

/** The measurands that a study rests on: those it shows or compares, and those that these are made of. */
final class Shown {

    private Shown() {}

    /** Of the method of a run, in the study's order. */
    static List<Measurand> of(StudyView study, LevelRun run) {
        Stream<MeasurandId> compared =
                study.study().comparisons().stream().map(Comparison::measurand).flatMap(Optional::stream);
        Set<String> ids = new LinkedHashSet<>();
        Method method = study.method(run.run());
        Stream.concat(study.study().measurands().stream(), compared)
                .filter(id -> id.method().equals(method.id()))
                .forEach(id -> add(method, id.measurand(), ids));
        return ids.stream().map(method.measurands()::get).toList();
    }

    /** A compared measurand and those that it is made of. */
    static List<Measurand> of(StudyView study, StudyView.Sides sides) {
        Method method = study.folder()
                .methods()
                .get(sides.result().plan().measurand().orElseThrow().method());
        Set<String> ids = new LinkedHashSet<>();
        add(method, sides.measurand().id(), ids);
        return ids.stream().map(method.measurands()::get).toList();
    }

    private static void add(Method method, String id, Set<String> ids) {
        Measurand measurand = method.measurands().get(id);
        if (measurand != null && ids.add(id)) {
            measurand.reduction().parts().forEach(part -> add(method, part, ids));
        }
    }
}
