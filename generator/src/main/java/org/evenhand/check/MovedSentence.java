package org.evenhand.check;

import java.util.ArrayList;
import java.util.List;
import org.evenhand.check.MovedFigures.Moved;
import org.evenhand.model.Place;
import org.evenhand.prose.LinkedSentence;
import org.evenhand.prose.ProseFault;
import org.evenhand.prose.ProseText;
import org.evenhand.prose.StudyResolver;

/**
 * A sentence whose figure reads otherwise than in a former publication.
 *
 * @param place where it begins
 * @param written on one line, with its markup
 * @param moved its figure, as it was and as it is
 * @param holds whether it still holds with the figure as it is
 */
public record MovedSentence(Place place, String written, Moved moved, boolean holds) {

    /** The sentences of a study that are linked to figures that moved, in the order of the text. */
    static List<MovedSentence> in(StudyView view, List<Moved> moved, List<ProseFault> faults) {
        if (moved.isEmpty()) {
            return List.of();
        }
        StudyResolver resolver = StudyResolver.of(view.folder(), view.evidence(), view.verdict());
        List<MovedSentence> found = new ArrayList<>();
        for (ProseText text : view.texts().texts()) {
            for (LinkedSentence sentence : LinkedSentence.in(text, resolver)) {
                boolean holds = faults.stream().noneMatch(f -> sentence.holds(f.place()));
                moved.stream()
                        .filter(m -> MovedFigures.concerns(m, sentence.target(), view.study()))
                        .forEach(m -> found.add(new MovedSentence(sentence.from(), sentence.written(), m, holds)));
            }
        }
        return found.stream().distinct().toList();
    }

    @Override
    public String toString() {
        return place + ": " + (holds ? "still holds" : "no longer holds") + ", " + moved + ": “" + written + "”";
    }
}
