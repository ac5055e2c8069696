package org.evenhand.check.rule;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Reduction;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;

/** What somebody heard is a judgement, and is shown as one. */
public final class HeardNotMeasured implements Rule {

    /** Words by which a judgement by ear is known. */
    private static final Set<String> WORDS = Set.of("heard", "hear", "audible", "loudness", "noise", "ear", "listener");

    private static final RuleFacts FACTS = RuleFacts.of("heard-not-measured", Group.SOUND, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (MeasurandId id : study.study().measurands()) {
            Measurand measurand = study.measurand(id);
            int place = study.study().measurands().indexOf(id);
            if (reading(measurand).filter(r -> isHeard(study, measurand, r)).isPresent()) {
                report.at(
                                study.study().places().of("measurands/" + place),
                                Subject.study(study.study().id()).on(id))
                        .meaning(report.say("rules-sound.heard-not-measured.meaning"))
                        .found(
                                report.say("rules-sound.heard-not-measured.found", measurand.title()),
                                report.say("rules-sound.heard-not-measured.remedy"));
            }
        }
    }

    private static Optional<String> reading(Measurand measurand) {
        if (measurand.reduction() instanceof Reduction.OnScale onScale) {
            return Optional.of(onScale.reading());
        }
        return measurand.reduction() instanceof Reduction.Observation observation
                ? Optional.of(observation.reading())
                : Optional.empty();
    }

    /** By its name, or by what it was noted with. */
    private static boolean isHeard(StudyView study, Measurand measurand, String reading) {
        return speaksOfHearing(reading)
                || speaksOfHearing(measurand.title())
                || study.runs().stream()
                        .map(r -> study.instrument(r.run(), reading))
                        .anyMatch(i ->
                                i.filter(one -> speaksOfHearing(one.reads())).isPresent());
    }

    private static boolean speaksOfHearing(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^a-z]+")).anyMatch(WORDS::contains);
    }
}
