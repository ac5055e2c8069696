package org.evenhand.check.rule;

import java.util.List;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Measurand;
import org.evenhand.quantity.UnitKind;

/** Tells sound levels from other measurands. */
final class Levels {

    /** A level of an electric power, which has neither weighting nor background. */
    private static final String ELECTRIC = "dBm";

    private Levels() {}

    static boolean isLevel(Measurand measurand) {
        return measurand.unit().kind() == UnitKind.LEVEL
                && !measurand.unit().symbol().equals(ELECTRIC);
    }

    /** The sound levels among what a study shows of a run. */
    static List<Measurand> shown(StudyView study, LevelRun run) {
        return Parts.shown(study, run.run()).stream().filter(Levels::isLevel).toList();
    }

    static boolean areShown(StudyView study, LevelRun run) {
        return !shown(study, run).isEmpty();
    }
}
