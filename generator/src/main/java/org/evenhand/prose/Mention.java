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

    /**
     * All quantities of a text, in order, but for headings, quotations, code and the given values of others.
     *
     * @param language of the text, as an IETF tag
     */
    public static List<Mention> in(ProseText text, String language) {
        Language of = Language.of(language);
        List<Mention> mentions = new ArrayList<>();
        for (Passage passage : text.passages()) {
            if (passage.heading() || passage.quoted() || !of.scanner.mayHave(passage.text())) {
                continue;
            }
            List<Range> silent = new ArrayList<>(passage.silent());
            silent.addAll(passage.cited());
            passage.addresses().stream()
                    .filter(Passage.Address::isGiven)
                    .forEach(l -> silent.add(new Range(l.start(), l.end())));
            String read = Sentence.without(passage.text(), silent);
            for (Range range : Sentences.of(passage, of.words)) {
                String sentence = passage.text().substring(range.start(), range.end());
                for (Stated stated : of.scanner.scan(read.substring(range.start(), range.end()))) {
                    if (stated.shape() == Shape.QUANTITY) {
                        int from = range.start() + stated.numberStart();
                        int to = range.start() + stated.end();
                        mentions.add(of(
                                stated, text.source().place(passage.sourceFrom(from), passage.sourceTo(to)), sentence));
                    }
                }
            }
        }
        return mentions;
    }

    private static Mention of(Stated stated, Place place, String sentence) {
        boolean range = stated.bound() == Bound.RANGE;
        return new Mention(
                place,
                sentence.substring(stated.numberStart(), stated.end()),
                (range ? stated.second() : stated.first()).doubleValue(),
                stated.unit(),
                sentence.strip());
    }
}
