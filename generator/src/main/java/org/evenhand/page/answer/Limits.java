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
import org.evenhand.page.words.Counting;
import org.evenhand.page.words.Names;
import org.evenhand.page.words.Origins;

/** What a report does not speak for, and what its reader must know before anything else. */
final class Limits {

    private Limits() {}

    static List<String> of(Answer answer) {
        if (answer.evidence().runs().isEmpty()) {
            return List.of();
        }
        List<String> limits = new ArrayList<>(answer.authorsCaveats());
        limits.addAll(Panels.missing(answer));
        for (Item item : answer.items()) {
            TreeSet<String> tested = new TreeSet<>(Ids.ORDER);
            answer.counting().stream()
                    .filter(r -> r.run().item().equals(item.id()))
                    .flatMap(r -> r.run().specimen().stream())
                    .forEach(tested::add);
            if (!tested.isEmpty()) {
                limits.add("The figures relate to the " + Counting.of(tested.size(), "specimen") + " tested: "
                        + item.name() + " " + String.join(", ", tested) + ".");
            }
        }
        for (Origin origin : Origin.values()) {
            if (answer.evidence().runs().stream().anyMatch(r -> r.run().origin() == origin)
                    && origin != Origin.MEASURED) {
                limits.add("Marked “" + Origins.mark(origin) + "”: " + Origins.meaning(origin));
            }
        }
        return limits;
    }

    static List<Notice> notices(Answer answer) {
        List<Notice> notices = new ArrayList<>();
        var study = answer.study();
        String why = study.why().orElse("");
        switch (study.status()) {
            case WANTED -> notices.add(new Notice("Wanted", wanted(answer), List.of()));
            case DRAFT -> notices.add(new Notice("Draft", "The answer may still change.", List.of()));
            case SUPERSEDED ->
                notices.add(new Notice(
                        "Superseded",
                        "A later report replaces this one, which stays here as it was."
                                + (study.supersededBy().isPresent() ? " Read instead:" : ""),
                        study.supersededBy().stream()
                                .map(by -> Link.to(title(answer, by), Address.answer(by)))
                                .toList()));
            case WITHDRAWN ->
                notices.add(new Notice("Withdrawn", ("The answer no longer stands. " + why).strip(), List.of()));
            case FINAL -> {}
        }
        return notices;
    }

    /** What runs would answer a question that nobody has answered yet. */
    private static String wanted(Answer answer) {
        var study = answer.study();
        List<String> levels = study.levels().stream().map(answer.names()::level).toList();
        String number = study.plannedRuns().isPresent()
                ? Counting.of(study.plannedRuns().getAsInt(), "run") + " at each of these levels of "
                        + answer.names().factor()
                : "runs at these levels of " + answer.names().factor();
        String methods = String.join(
                ", ", answer.methods().stream().map(m -> "“" + m.title() + "”").toList());
        String begun = answer.evidence().runs().isEmpty()
                ? "No run has been made yet."
                : Counting.of(answer.counting().size(), "run") + " of them "
                        + (answer.counting().size() == 1 ? "is" : "are") + " here already.";
        return "Nobody has answered this question yet. It takes " + number + ": " + String.join(", ", levels)
                + "; by the method " + methods + ". " + begun;
    }

    private static String title(Answer answer, String study) {
        var other = answer.folder().studies().get(study);
        return other == null ? Names.label(study) : other.question();
    }
}
