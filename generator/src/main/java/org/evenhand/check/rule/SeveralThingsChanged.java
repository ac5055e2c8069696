package org.evenhand.check.rule;

import java.util.Set;
import java.util.TreeSet;
import org.evenhand.check.Group;
import org.evenhand.check.Report;
import org.evenhand.check.Rule;
import org.evenhand.check.RuleFacts;
import org.evenhand.check.StudyView;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Severity;
import org.evenhand.model.Study;

/** A comparison changes one thing. Source: van der Kouwe et al., "Benchmarking Crimes", arXiv:1801.02381 (2018). */
public final class SeveralThingsChanged implements Rule {

    private static final RuleFacts FACTS = RuleFacts.of("several-things-changed", Group.SURROUNDINGS, Severity.REFUSE);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public void check(StudyView study, Report report) {
        for (StudyView.Sides sides : study.sides()) {
            Set<String> names = new TreeSet<>();
            sides.runs().forEach(r -> names.addAll(r.run().settings().keySet()));
            names.remove(study.study().factor());
            study.study().changesWithFactor().forEach(names::remove);
            for (String name : names) {
                check(study, sides, name, report);
            }
            checkItem(study, sides, report);
        }
    }

    private static void check(StudyView study, StudyView.Sides sides, String name, Report report) {
        Set<String> values = new TreeSet<>();
        LevelRun without = null;
        LevelRun odd = null;
        for (LevelRun run : sides.runs()) {
            String value = run.run().settings().get(name);
            if (value == null) {
                without = run;
            } else if (values.add(value)) {
                odd = run;
            }
        }
        if (without != null) {
            report.at(without.run().places().of("settings"), study.subject(without))
                    .notCheckable("settings/" + name, report.say("rules-surroundings.several-things-changed.give"));
        }
        if (values.size() > 1) {
            report.at(odd.run().places().of("settings/" + name), study.subject(sides))
                    .meaning(report.say(
                            "rules-surroundings.several-things-changed.meaning",
                            study.study().factor(),
                            name))
                    .found(
                            report.say(
                                    "rules-surroundings.several-things-changed.found",
                                    study.study().factor(),
                                    name,
                                    String.join(", ", values)),
                            report.say("rules-surroundings.several-things-changed.remedy", name));
        }
    }

    private static void checkItem(StudyView study, StudyView.Sides sides, Report report) {
        Study plan = study.study();
        Set<String> items = new TreeSet<>();
        sides.runs().forEach(r -> items.add(r.run().item()));
        boolean varied = plan.factor().equals("item")
                || plan.factor().equals("specimen")
                || plan.changesWithFactor().contains("item");
        if (items.size() > 1 && !varied) {
            report.at(study.place(sides), study.subject(sides))
                    .meaning(report.say("rules-surroundings.several-things-changed.meaning-2", plan.factor()))
                    .found(
                            report.say(
                                    "rules-surroundings.several-things-changed.found-2",
                                    plan.factor(),
                                    String.join(", ", items)),
                            report.say("rules-surroundings.several-things-changed.remedy-2"));
        }
    }
}
