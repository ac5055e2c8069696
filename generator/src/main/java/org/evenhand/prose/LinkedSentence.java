package org.evenhand.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenhand.model.Place;
import org.evenhand.prose.EvidenceResolver.Found;
import org.evenhand.prose.Passage.Address;
import org.evenhand.prose.Passage.Range;

/**
 * A sentence with a link to a figure, as its author wrote it.
 *
 * @param target which figure
 * @param from where the sentence begins
 * @param to the place of its last character
 * @param written the sentence on one line, with its markup
 */
public record LinkedSentence(Target target, Place from, Place to, String written) {

    /** Every link of a text that leads to a figure, with its sentence, in order. */
    public static List<LinkedSentence> in(ProseText text, EvidenceResolver resolver) {
        Words words = Language.of(resolver.language()).words;
        List<LinkedSentence> found = new ArrayList<>();
        for (Passage passage : text.passages()) {
            if (passage.addresses().isEmpty()) {
                continue;
            }
            for (Range range : Sentences.of(passage, words)) {
                passage.addresses().stream()
                        .filter(a -> a.start() >= range.start() && isIn(a, range))
                        .forEach(a ->
                                target(a, resolver).ifPresent(t -> found.add(of(t, text.source(), passage, range, a))));
            }
        }
        return found;
    }

    /** Whether something stands within the sentence. */
    public boolean holds(Place place) {
        return before(from, place) && before(place, to);
    }

    private static boolean before(Place a, Place b) {
        return a.line() < b.line() || (a.line() == b.line() && a.column() <= b.column());
    }

    private static boolean isIn(Address address, Range range) {
        boolean emptyAtEnd = address.start() == address.end() && address.start() == range.end();
        return address.start() < range.end() || emptyAtEnd;
    }

    private static Optional<Target> target(Address address, EvidenceResolver resolver) {
        try {
            String plain = EvidenceLink.parse(address.destination()).address();
            return resolver.resolve(plain) instanceof Found found
                    ? Optional.of(found.evidence().target())
                    : Optional.empty();
        } catch (EvidenceLink.MalformedException e) {
            return Optional.empty();
        }
    }

    private static LinkedSentence of(Target target, ProseSource source, Passage passage, Range range, Address address) {
        int start = range.start();
        while (start < range.end() && Character.isWhitespace(passage.text().charAt(start))) {
            start++;
        }
        int from = Math.min(passage.sourceFrom(start), Passages.start(address.link()));
        int to = Math.max(passage.sourceTo(range.end()), Passages.end(address.link()));
        // The last character of a link's text is followed by its address.
        String written = source.text().substring(from, to).strip().replaceAll("\\s+", " ");
        return new LinkedSentence(target, source.place(from, from + 1), source.place(to - 1, to), written);
    }
}
