package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.Counts;
import org.evenhand.compare.LevelSummary;
import org.evenhand.model.Comparison;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Method;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Entry;
import org.evenhand.page.view.Link;
import org.evenhand.page.words.Reductions;
import org.evenhand.quantity.UnitKind;
import org.evenhand.words.Words;

/** How the figures of a page were computed, in the words of the project's page on methods; what is not on the page is left out. */
final class MethodNotes {

    private MethodNotes() {}

    static List<Entry> of(Answer answer) {
        Words words = answer.words();
        List<Entry> notes = new ArrayList<>();
        for (Method method : answer.methods()) {
            notes.add(new Entry(
                    words.say("report.method"),
                    List.of(Link.to(
                            words.say("method-note.method-version", method.title(), method.version()),
                            Address.method(method.id()))),
                    ""));
        }
        for (MeasurandId id : answer.study().measurands()) {
            Method method = answer.folder().methods().get(id.method());
            notes.add(Entry.of(
                    answer.names().title(id), Reductions.of(answer.names().measurand(id), method, words)));
        }
        if (!answer.counting().isEmpty()) {
            levels(answer, notes);
            comparisons(answer, notes);
        }
        return notes;
    }

    private static void levels(Answer answer, List<Entry> notes) {
        Words words = answer.words();
        List<LevelSummary> summaries = answer.evidence().summaries();
        Set<Counts> counts = new TreeSet<>();
        summaries.stream().filter(s -> s.n() > 0 && s.words().isEmpty()).forEach(s -> counts.add(s.counts()));
        if (!counts.isEmpty()) {
            boolean specimens = counts.contains(Counts.SPECIMENS);
            notes.add(Entry.of(
                    words.say("method-note.n-counts"),
                    words.say(specimens ? "method-note.n-specimens" : "method-note.n-runs")));
        }
        if (summaries.stream().anyMatch(s -> s.interval().isPresent())) {
            notes.add(note("mean", words));
        }
        if (summaries.stream().anyMatch(s -> s.median().isPresent())) {
            notes.add(note("median", words));
        }
        if (summaries.stream().anyMatch(s -> s.mean().isPresent() && s.unit().kind() == UnitKind.LEVEL)) {
            notes.add(note("levels", words));
        }
        if (summaries.stream().anyMatch(s -> s.outlier().isPresent())) {
            notes.add(note("outliers", words));
        }
    }

    private static void comparisons(Answer answer, List<Entry> notes) {
        Set<Comparison.Kind> kinds = new TreeSet<>();
        boolean paired = false;
        boolean margin = false;
        long tests = 0;
        for (ComparisonResult result : answer.evidence().comparisons()) {
            if (!answer.isRefused(result)) {
                kinds.add(result.plan().kind());
                paired |= result.plan().pairedBy().isPresent();
                margin |= result.plan().sameWithin().isPresent();
                tests += result.p().isPresent() ? 1 : 0;
            }
        }
        Words words = answer.words();
        for (Comparison.Kind kind : kinds) {
            notes.add(note(kind.word(), words));
        }
        if (paired) {
            notes.add(note("pairs", words));
        }
        if (margin) {
            notes.add(note("same", words));
        }
        if (tests > 1) {
            notes.add(Entry.of(words.say("method-note.several"), words.say("method-note.several-text", tests)));
        }
    }

    private static Entry note(String name, Words words) {
        return Entry.of(words.say("method-note." + name), words.say("method-note." + name + "-text"));
    }
}
