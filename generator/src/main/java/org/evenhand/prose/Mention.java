package org.evenhand.prose;

import java.util.ArrayList;
import java.util.List;
import org.evenhand.model.Place;
import org.evenhand.prose.Passage.Range;
import org.evenhand.prose.Stated.Bound;
import org.evenhand.prose.Stated.Shape;
import org.evenhand.quantity.Unit;

/**
 * A quantity that a text speaks of, wherever it comes from: written out, or as the text of a link.
 *
 * @param place the very words
 * @param written as the author wrote it
 * @param value the number; the farther end of a range
 * @param unit of the number
 * @param sentence in which it stands
 */
public record Mention(Place place, String written, double value, Unit unit, String sentence) {

    /** All quantities of a text, in order, but for headings, quotations, code and the given values of others. */
    public static List<Mention> in(ProseSource source, EvidenceResolver resolver) {
        Markdown.Tree tree = Markdown.parse(source);
        if (tree.document().isEmpty()) {
            return List.of();
        }
        Context context = new Context(resolver);
        List<Mention> mentions = new ArrayList<>();
        for (Passage passage : PassageReader.read(tree.document().get(), source.text(), resolver)) {
            if (passage.heading() || passage.quoted()) {
                continue;
            }
            List<Range> silent = new ArrayList<>(passage.silent());
            silent.addAll(passage.cited());
            passage.links().stream()
                    .filter(l -> l.evidence().kind() == Evidence.Kind.GIVEN)
                    .forEach(l -> silent.add(new Range(l.start(), l.end())));
            for (Range range : Sentences.of(passage, context.words())) {
                Sentence sentence = Sentence.of(source, passage, range, context);
                for (Stated stated : context.language().scanner.scan(Sentence.without(sentence.only(range), silent))) {
                    if (stated.shape() == Shape.QUANTITY) {
                        mentions.add(of(stated, sentence));
                    }
                }
            }
        }
        return mentions;
    }

    private static Mention of(Stated stated, Sentence sentence) {
        boolean range = stated.bound() == Bound.RANGE;
        int from = stated.numberStart();
        return new Mention(
                sentence.place(from, stated.end()),
                sentence.passage().text().substring(from, stated.end()),
                (range ? stated.second() : stated.first()).doubleValue(),
                stated.unit(),
                sentence.text().strip());
    }
}
