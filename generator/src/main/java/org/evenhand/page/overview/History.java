package org.evenhand.page.overview;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.CheckedStudy;
import org.evenhand.model.Revision;
import org.evenhand.model.Seal;
import org.evenhand.model.Status;
import org.evenhand.model.Study;
import org.evenhand.page.Sentence;
import org.evenhand.page.view.Address;
import org.evenhand.words.Words;

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
     * @param number in the order in which things happened to this answer, from zero
     * @param address where it is told, from the site's root
     * @param tail what makes an id of the address, to be added to it; empty where the address is one by itself
     * @param what happened, in a sentence
     * @param why, in a sentence; empty for a first publication
     */
    public record Event(
            LocalDate on, CheckedStudy study, int number, String address, String tail, String what, String why) {}

    public History {
        events = List.copyOf(events);
    }

    public static History of(CheckedFolder checked, Words words) {
        List<Event> events = new ArrayList<>();
        checked.studies().values().forEach(study -> add(study, checked, words, events));
        events.sort(NEWEST_FIRST);
        return new History(events);
    }

    private static void add(CheckedStudy checked, CheckedFolder folder, Words words, List<Event> events) {
        Study study = checked.evidence().study();
        String answer = Address.answer(study.id());
        boolean published = study.status() != Status.WANTED && study.status() != Status.DRAFT;
        int happened = 0;
        if (published && study.answered().isPresent()) {
            String what = words.say(checked.isWithheld() ? "overview.answered-withheld" : "overview.first-published");
            events.add(new Event(study.answered().get(), checked, happened++, answer, "#answer", what, ""));
            happened = addSeal(1, study.answered(), checked, folder, words, happened, events);
        }
        int number = 0;
        for (Revision revision : oldestFirst(study)) {
            number++;
            events.add(new Event(
                    revision.on(),
                    checked,
                    happened++,
                    answer + "#" + Address.revision(number),
                    "",
                    Sentence.of(revision.what()),
                    Sentence.of(revision.why())));
            happened = addSeal(1 + number, Optional.of(revision.on()), checked, folder, words, happened, events);
        }
        addEnd(checked, folder, words, happened, events);
    }

    /** A version is told with the day it is of: when somebody sealed it does not matter to readers. */
    private static int addSeal(
            int version,
            Optional<LocalDate> on,
            CheckedStudy checked,
            CheckedFolder folder,
            Words words,
            int happened,
            List<Event> events) {
        Optional<Seal> seal = folder.folder().seals(checked.evidence().study().id()).stream()
                .filter(s -> s.version() == version && s.isWhole())
                .findFirst();
        if (seal.isEmpty() || on.isEmpty()) {
            return happened;
        }
        String what = words.say("overview.sealed", version);
        events.add(new Event(on.get(), checked, happened, seal.get().page(), "", what, ""));
        return happened + 1;
    }

    /** Superseded or withdrawn. Without a day of its own it is told with the last thing that is known to have happened. */
    private static void addEnd(
            CheckedStudy checked, CheckedFolder folder, Words words, int happened, List<Event> events) {
        Study study = checked.evidence().study();
        Optional<LocalDate> last = study.revisions().isEmpty()
                ? study.answered()
                : study.revisions().stream().map(Revision::on).max(Comparator.naturalOrder());
        Optional<LocalDate> on = study.statusOn().or(() -> last);
        String answer = Address.answer(study.id());
        if (on.isPresent() && study.status() == Status.WITHDRAWN) {
            String why = study.why().map(Sentence::of).orElse("");
            events.add(
                    new Event(on.get(), checked, happened, answer, "#withdrawn", words.say("overview.withdrawn"), why));
        }
        if (on.isPresent() && study.status() == Status.SUPERSEDED) {
            String what = study.supersededBy()
                    .map(id -> folder.studies().get(id))
                    .map(other -> words.say(
                            "overview.superseded-by", other.evidence().study().question()))
                    .orElseGet(() -> words.say("overview.superseded"));
            String why = study.why().map(Sentence::of).orElse("");
            events.add(new Event(on.get(), checked, happened, answer, "#superseded", what, why));
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
