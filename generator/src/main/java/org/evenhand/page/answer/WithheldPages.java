package org.evenhand.page.answer;

import java.util.List;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Finding;
import org.evenhand.model.Outcome;
import org.evenhand.model.Severity;
import org.evenhand.page.FindingViews;
import org.evenhand.page.PageContext;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.HeadBlock;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Listed;
import org.evenhand.page.view.WithheldPage;
import org.evenhand.words.Words;

/** Stands in for an answer that may not be published, and says why. */
final class WithheldPages {

    private static final String STATUS = "withheld";

    private WithheldPages() {}

    static WithheldPage of(Answer answer) {
        List<Finding> why = withholding(answer.checked().findings());
        return new WithheldPage(
                AnswerViews.frame(answer, answer.words().say("report.withheld-about")),
                Heads.of(answer, STATUS),
                answer.study().question(),
                why(why, answer.words()),
                answer.findings().all(),
                answer.evidence().runs().stream().map(r -> listed(answer, r)).toList(),
                AnswerViews.revisions(answer.study()));
    }

    static WithheldPage ofBroken(String study, PageContext context) {
        Words words = context.words();
        List<Finding> findings = context.checked().findings().stream()
                .filter(f -> f.subject().study().filter(study::equals).isPresent())
                .toList();
        String path = Address.answer(study);
        return new WithheldPage(
                context.frames().of(path, words.say("report.study", study), words.say("report.unreadable")),
                new HeadBlock(words.say("report.kind"), study, "", STATUS, List.of()),
                words.say("report.study", study),
                words.say("report.unreadable-text") + " " + why(withholding(findings), words),
                FindingViews.of(path, findings, context.words()).all(),
                List.of(),
                List.of());
    }

    private static List<Finding> withholding(List<Finding> findings) {
        return findings.stream()
                .filter(f -> f.severity() == Severity.WITHHOLD && f.outcome() == Outcome.FOUND)
                .toList();
    }

    private static String why(List<Finding> withholding, Words words) {
        if (withholding.isEmpty()) {
            return "";
        }
        Finding worst = withholding.get(0);
        String first = words.say("report.withheld-for", worst.place().file(), worst.message());
        int more = withholding.size() - 1;
        return more == 0 ? first : first + " " + words.say("report.more-below", words.inWords(more));
    }

    private static Listed listed(Answer answer, LevelRun run) {
        return new Listed(
                Link.to(
                        answer.name(run.run()),
                        Address.run(run.run().study(), run.run().id())),
                run.run().started().map(s -> Runs.stamp(s).substring(0, 10)).orElse(""),
                Runs.outcome(run.run()),
                answer.names().level(run.level()));
    }
}
