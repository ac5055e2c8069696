package org.evenhand.page.overview;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.CheckedStudy;
import org.evenhand.model.Revision;
import org.evenhand.model.Status;
import org.evenhand.model.Study;
import org.evenhand.page.Sentence;
import org.evenhand.page.view.Address;

/**
 * What was published and changed, as the studies tell it.
 *
 * @param events the newest first; on one day by study, its newest first
 */
public record History(List<Event> events) {

    private static final Comparator<Event> NEWEST_FIRST = Comparator.comparing(Event::on, Comparator.reverseOrder())
            .thenComparing(event -> event.study().evidence().study().id())
            .thenComparing(Event::number, Comparator.reverseOrder());

    /**
     * Something that happened to an answer.
     *
     * @param on when
     * @param study whose answer
     * @param number of the revision, from one; zero for the first publication
     * @param what happened, in a sentence
     * @param why, in a sentence; empty for a first publication
     */
    public record Event(LocalDate on, CheckedStudy study, int number, String what, String why) {

        /** Where it is told, from the site's root. */
        public String address() {
            String answer = Address.answer(study.evidence().study().id());
            return number == 0 ? answer : answer + "#" + Address.revision(number);
        }
    }

    public History {
        events = List.copyOf(events);
    }

    public static History of(CheckedFolder checked) {
        List<Event> events = new ArrayList<>();
        checked.studies().values().forEach(study -> add(study, events));
        events.sort(NEWEST_FIRST);
        return new History(events);
    }

    private static void add(CheckedStudy checked, List<Event> events) {
        Study study = checked.evidence().study();
        boolean published = study.status() != Status.WANTED && study.status() != Status.DRAFT;
        study.answered().filter(on -> published).ifPresent(on -> {
            String what =
                    checked.isWithheld() ? "Answered, and withheld because of what was found." : "First published.";
            events.add(new Event(on, checked, 0, what, ""));
        });
        int number = 0;
        for (Revision revision : oldestFirst(study)) {
            events.add(new Event(
                    revision.on(), checked, ++number, Sentence.of(revision.what()), Sentence.of(revision.why())));
        }
    }

    /** As {@link Address#revision} counts them. */
    private static List<Revision> oldestFirst(Study study) {
        return study.revisions().stream()
                .sorted(Comparator.comparing(Revision::on))
                .toList();
    }

    /** The day of the newest event; absent if nothing has happened. */
    public Optional<LocalDate> newest() {
        return events.stream().map(Event::on).max(Comparator.naturalOrder());
    }

    /** The day of a study's newest event. */
    public Optional<LocalDate> newest(String study) {
        return events.stream()
                .filter(event -> event.study().evidence().study().id().equals(study))
                .map(Event::on)
                .max(Comparator.naturalOrder());
    }
}
