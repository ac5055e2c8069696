package org.evenhand.check.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.evenhand.model.Place;
import org.evenhand.model.Places;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Run;
import org.evenhand.model.Study;
import org.evenhand.model.Subject;

/**
 * A text in Markdown that somebody contributed.
 *
 * @param markdown the text
 * @param start where its first character stands
 * @param isBody whether it is the body of a file, whose lines are those of the file
 * @param showsPictures whether the pages show the pictures that it names
 * @param subjects the studies that show it; the publication if none does
 */
record MarkdownText(String markdown, Place start, boolean isBody, boolean showsPictures, List<Subject> subjects) {

    /** The fields that stand as text of their own on a page. */
    private static final Set<String> SHOWING = Set.of("about", "notes");

    /** All of a folder, file by file. */
    static List<MarkdownText> allOf(ResultsFolder folder) {
        List<MarkdownText> texts = new ArrayList<>();
        List<Subject> all = List.of(Subject.PUBLICATION);
        folder.publication().ifPresent(p -> field(texts, p.about(), p.places(), "about", all));
        folder.items()
                .forEach((id, item) -> field(
                        texts,
                        item.notes(),
                        item.places(),
                        "notes",
                        showing(folder, run -> run.item().equals(id))));
        folder.instruments()
                .forEach((id, instrument) -> field(
                        texts,
                        instrument.notes(),
                        instrument.places(),
                        "notes",
                        showing(folder, run -> run.instruments().containsValue(id))));
        folder.methods()
                .forEach((id, method) -> body(
                        texts,
                        method.procedure(),
                        method.places(),
                        method.procedureLine(),
                        showing(folder, run -> run.method().equals(id))));
        folder.studies().values().forEach(study -> ofStudy(texts, study));
        return texts;
    }

    /** Where a part of the text stands: line from 0, column from 0. */
    Place place(int line, int column, int length) {
        if (isBody) {
            return new Place(start.file(), start.line() + line, column + 1, length);
        }
        return line == 0 ? start.part(column, length) : start;
    }

    private static void ofStudy(List<MarkdownText> texts, Study study) {
        List<Subject> own = List.of(Subject.study(study.id()));
        field(texts, study.shortAnswer(), study.places(), "short-answer", own);
        for (int i = 0; i < study.caveats().size(); i++) {
            field(texts, Optional.of(study.caveats().get(i)), study.places(), "caveats/" + i, own);
        }
        body(texts, study.answer(), study.places(), study.answerLine(), own);
        for (Run run : study.runs()) {
            Optional<String> notes = Optional.ofNullable(run.circumstances().get("notes"));
            // The page of a run shows them as they are written.
            notes.ifPresent(t -> texts.add(new MarkdownText(
                    t, run.places().of("notes"), false, false, List.of(Subject.run(study.id(), run.id())))));
        }
    }

    private static void field(
            List<MarkdownText> texts, Optional<String> text, Places places, String path, List<Subject> subjects) {
        text.ifPresent(t -> texts.add(new MarkdownText(t, places.of(path), false, SHOWING.contains(path), subjects)));
    }

    private static void body(List<MarkdownText> texts, String text, Places places, int line, List<Subject> subjects) {
        texts.add(new MarkdownText(text, new Place(places.file().file(), line, 1, 1), true, true, subjects));
    }

    static List<Subject> showing(ResultsFolder folder, Predicate<Run> touches) {
        List<Subject> studies = folder.studies().values().stream()
                .filter(study -> study.runs().stream().anyMatch(touches))
                .map(study -> Subject.study(study.id()))
                .toList();
        return studies.isEmpty() ? List.of(Subject.PUBLICATION) : studies;
    }
}
