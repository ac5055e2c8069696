package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.evenhand.model.Item;
import org.evenhand.model.Origin;
import org.evenhand.page.Ids;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Notice;
import org.evenhand.page.words.Names;
import org.evenhand.page.words.Origins;
import org.evenhand.words.Words;

/** What a report does not speak for, and what its reader must know before anything else. */
final class Limits {

    private Limits() {}

    static List<String> of(Answer answer) {
        if (answer.evidence().runs().isEmpty()) {
            return List.of();
        }
        Words words = answer.words();
        List<String> limits = new ArrayList<>(answer.authorsCaveats());
        limits.addAll(Panels.missing(answer));
        for (Item item : answer.items()) {
            TreeSet<String> tested = new TreeSet<>(Ids.ORDER);
            answer.counting().stream()
                    .filter(r -> r.run().item().equals(item.id()))
                    .flatMap(r -> r.run().specimen().stream())
                    .forEach(tested::add);
            if (!tested.isEmpty()) {
                limits.add(words.say("report.relate", tested.size(), item.name(), String.join(", ", tested)));
            }
        }
        for (Origin origin : Origin.values()) {
            if (answer.evidence().runs().stream().anyMatch(r -> r.run().origin() == origin)
                    && origin != Origin.MEASURED) {
                limits.add(words.say("report.marked", Origins.mark(origin, words), Origins.meaning(origin, words)));
            }
        }
        return limits;
    }

    static List<Notice> notices(Answer answer) {
        Words words = answer.words();
        List<Notice> notices = new ArrayList<>();
        var study = answer.study();
        String why = study.why().orElse("");
        switch (study.status()) {
            case WANTED -> notices.add(new Notice(words.say("report.wanted"), wanted(answer), List.of()));
            case DRAFT -> notices.add(new Notice(words.say("report.draft"), words.say("report.draft-text"), List.of()));
            case SUPERSEDED ->
                notices.add(new Notice(
                        words.say("report.superseded"),
                        words.say("report.superseded-text")
                                + (study.supersededBy().isPresent() ? " " + words.say("report.read-instead") : ""),
                        study.supersededBy().stream()
                                .map(by -> Link.to(title(answer, by), Address.answer(by)))
                                .toList()));
            case WITHDRAWN ->
                notices.add(new Notice(
                        words.say("report.withdrawn"),
                        (words.say("report.withdrawn-text") + " " + why).strip(),
                        List.of()));
            case FINAL -> {}
        }
        return notices;
    }

    /** What runs would answer a question that nobody has answered yet. */
    private static String wanted(Answer answer) {
        Words words = answer.words();
        var study = answer.study();
        List<String> levels = study.levels().stream().map(answer.names()::level).toList();
        String number = study.plannedRuns().isPresent()
                ? words.say(
                        "report.planned",
                        study.plannedRuns().getAsInt(),
                        answer.names().factor())
                : words.say("report.unplanned", answer.names().factor());
        String methods = String.join(
                ", ",
                answer.methods().stream().map(m -> words.quoted(m.title())).toList());
        String begun = answer.evidence().runs().isEmpty()
                ? words.say("report.no-run-yet")
                : words.say("report.begun", answer.counting().size());
        return words.say("report.nobody", number, String.join(", ", levels), methods, begun);
    }

    private static String title(Answer answer, String study) {
        var other = answer.folder().studies().get(study);
        return other == null ? Names.label(study) : other.question();
    }
}
