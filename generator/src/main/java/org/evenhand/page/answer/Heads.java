package org.evenhand.page.answer;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.evenhand.compare.LevelRun;
import org.evenhand.model.Item;
import org.evenhand.model.Method;
import org.evenhand.model.Revision;
import org.evenhand.model.Study;
import org.evenhand.page.Ids;
import org.evenhand.page.Sentence;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Entry;
import org.evenhand.page.view.HeadBlock;
import org.evenhand.page.view.Link;
import org.evenhand.page.words.Names;
import org.evenhand.words.Words;

/** The block at the head of a report. */
final class Heads {

    private Heads() {}

    static HeadBlock of(Answer answer, String status) {
        Words words = answer.words();
        Study study = answer.study();
        List<Entry> entries = new ArrayList<>();
        tested(answer).ifPresent(t -> entries.add(Entry.of(words.say("report.tested"), t)));
        study.answered().ifPresent(d -> entries.add(Entry.of(words.say("report.answered"), words.day(d))));
        amended(study, words).ifPresent(entries::add);
        sealed(answer).ifPresent(entries::add);
        together(
                        words.say("report.items"),
                        answer.items().stream().map(i -> item(answer, i)).toList())
                .ifPresent(entries::add);
        together(
                        words.say("report.methods"),
                        answer.methods().stream().map(m -> method(m, words)).toList())
                .ifPresent(entries::add);
        entries.add(Entry.of(
                words.say("report.factor"),
                Sentence.capital(answer.names().factor()) + ": "
                        + study.levels().stream().map(answer.names()::level).collect(Collectors.joining(", "))));
        if (!answer.instruments().isEmpty()) {
            entries.add(new Entry(
                    words.say("report.instruments"),
                    answer.instruments().stream()
                            .map(i -> Link.to(i.name().orElse(i.id()), Address.instrument(i.id())))
                            .toList(),
                    ""));
        }
        if (!study.authors().isEmpty()) {
            entries.add(Entry.of(
                    words.say(study.answered().isPresent() ? "report.answered-by" : "report.asked-by"),
                    String.join(", ", study.authors())));
        }
        contributed(answer).ifPresent(entries::add);
        answer.context()
                .publication()
                .contact()
                .ifPresent(c -> entries.add(Entry.of(words.say("report.errors-to"), c)));
        return new HeadBlock(words.say("report.kind"), study.id(), version(study), status, entries);
    }

    /** Each revision is a version; before any, there is none until it is answered. */
    static String version(Study study) {
        return study.answered().isEmpty() && study.revisions().isEmpty() ? "" : Integer.toString(study.version());
    }

    /** First and last day of the runs. */
    private static Optional<String> tested(Answer answer) {
        Words words = answer.words();
        TreeSet<LocalDate> days = days(answer);
        return days.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        days.size() == 1
                                ? words.day(days.first())
                                : words.say("report.days", words.day(days.first()), words.day(days.last())));
    }

    /** The days of the runs, by the clock of UTC. */
    static TreeSet<LocalDate> days(Answer answer) {
        TreeSet<LocalDate> days = new TreeSet<>();
        for (LevelRun run : answer.evidence().runs()) {
            run.run()
                    .started()
                    .ifPresent(s ->
                            days.add(s.withOffsetSameInstant(ZoneOffset.UTC).toLocalDate()));
        }
        return days;
    }

    private static Optional<Entry> amended(Study study, Words words) {
        List<Revision> revisions = study.revisions();
        if (revisions.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Entry.of(
                words.say("report.amended"),
                Link.here(words.day(revisions.get(revisions.size() - 1).on()), Address.revision(revisions.size()))));
    }

    /** Credit for runs that somebody else did. */
    private static Optional<Entry> contributed(Answer answer) {
        TreeMap<String, Integer> runs = new TreeMap<>();
        answer.evidence().runs().forEach(r -> r.run().doneBy().ifPresent(name -> runs.merge(name, 1, Integer::sum)));
        String names = runs.entrySet().stream()
                .map(e -> answer.words().say("report.contributor", e.getKey(), e.getValue()))
                .collect(Collectors.joining(", "));
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(Entry.of(answer.words().say("report.contributed"), names));
    }

    /** What was sealed: an address for each version, at which it stays as it was. */
    private static Optional<Entry> sealed(Answer answer) {
        List<Link> versions = answer.folder().seals(answer.study().id()).stream()
                .map(seal -> Link.to(answer.words().say("report.version", seal.version()), seal.page()))
                .toList();
        return versions.isEmpty()
                ? Optional.empty()
                : Optional.of(new Entry(answer.words().say("report.sealed"), versions, ""));
    }

    /** One entry for what there may be several of; each note then says which it is of. */
    private static Optional<Entry> together(String label, List<Entry> many) {
        if (many.size() < 2) {
            return many.stream().findFirst();
        }
        List<Link> values = many.stream().flatMap(e -> e.values().stream()).toList();
        String notes = many.stream()
                .filter(e -> !e.note().isEmpty())
                .map(e -> e.values().get(0).text() + ": " + e.note())
                .collect(Collectors.joining(". "));
        return Optional.of(new Entry(label, values, notes));
    }

    private static Entry item(Answer answer, Item item) {
        TreeMap<String, Integer> specimens = new TreeMap<>(Ids.ORDER);
        answer.evidence().runs().stream()
                .filter(r -> r.run().item().equals(item.id()))
                .flatMap(r -> r.run().specimen().stream())
                .forEach(s -> specimens.merge(s, 1, Integer::sum));
        List<String> notes = new ArrayList<>();
        if (!specimens.isEmpty()) {
            notes.add(answer.words().say("report.specimens", specimens.size(), String.join(", ", specimens.keySet())));
        }
        item.obtained().ifPresent(notes::add);
        return new Entry(
                answer.words().say("report.item"),
                List.of(Link.to(item.name(), Address.item(item.id()))),
                String.join("; ", notes));
    }

    private static Entry method(Method method, Words words) {
        String length =
                method.runLength().map(l -> ", " + Names.quantity(l, words)).orElse("");
        return new Entry(
                words.say("report.method"),
                List.of(Link.to(method.title(), Address.method(method.id()))),
                words.say("report.version", method.version()) + length);
    }

    /** The versions of the methods by the runs, for what was equal and what differed. */
    static Map<String, String> versions(List<LevelRun> runs, Answer answer) {
        Map<String, String> byRun = new TreeMap<>();
        runs.forEach(r -> byRun.put(
                answer.name(r.run()),
                r.run()
                        .methodVersion()
                        .orElse(answer.folder().methods().get(r.run().method()).version())));
        return byRun;
    }
}
