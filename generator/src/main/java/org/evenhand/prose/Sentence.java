package org.evenhand.prose;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.model.Place;
import org.evenhand.prose.Passage.Bound;
import org.evenhand.prose.Passage.Range;

/**
 * A sentence within its passage.
 *
 * @param source of the passage
 * @param passage in which it stands; all indices are its own
 * @param range of the sentence
 * @param present the words in it, in lower case
 * @param context what the checks of its study share
 */
record Sentence(ProseSource source, Passage passage, Range range, Set<String> present, Context context) {

    private static final Pattern SEPARATOR =
            Pattern.compile("[,;:]|(?<!\\p{L})(?:and|but|while|whereas|und|aber)(?!\\p{L})", Pattern.CASE_INSENSITIVE);

    /** The links whose text begins in the sentence. */
    List<Bound> links() {
        return passage.links().stream()
                .filter(l -> l.start() >= range.start() && l.start() < range.end()
                        || (l.isEmpty() && l.start() == range.end()))
                .toList();
    }

    List<Bound> contrasts() {
        return links().stream().filter(l -> l.evidence().isContrast()).toList();
    }

    String text() {
        return passage.text().substring(range.start(), range.end());
    }

    /** Whether it asks or supposes, so that nothing is claimed in it. */
    boolean isOpen() {
        String text = text().stripTrailing();
        return text.endsWith("?") || has(context.language().open);
    }

    /** Whether it has one of the words. */
    boolean has(Set<String> hints) {
        return !Collections.disjoint(present, hints);
    }

    Language language() {
        return context.language();
    }

    /** The part of the sentence that speaks of a contrast, where several stand in it. */
    Range around(Bound link) {
        return around(link, contrasts());
    }

    /** The part of the sentence that speaks of a link, where several stand in it. */
    Range around(Bound link, List<Bound> contrasts) {
        int at = contrasts.indexOf(link);
        int start = at <= 0 ? range.start() : boundary(contrasts.get(at - 1), link);
        int end = at < 0 || at + 1 >= contrasts.size() ? range.end() : boundary(link, contrasts.get(at + 1));
        return new Range(start, Math.max(end, link.end()));
    }

    private int boundary(Bound left, Bound right) {
        String between = passage.text().substring(left.end(), Math.max(left.end(), right.start()));
        Matcher matcher = SEPARATOR.matcher(between);
        int last = -1;
        while (matcher.find()) {
            last = matcher.start();
        }
        return last < 0 ? left.end() : left.end() + last;
    }

    static Sentence of(ProseSource source, Passage passage, Range range, Context context) {
        Set<String> present = Words.wordsIn(passage.text().substring(range.start(), range.end()));
        return new Sentence(source, passage, range, present, context);
    }

    /** The text of the passage with everything outside a stretch blanked out, so that indices stay. */
    String only(Range stretch) {
        StringBuilder text = new StringBuilder(
                String.valueOf(PassageReader.GAP).repeat(passage.text().length()));
        for (int i = stretch.start(); i < stretch.end(); i++) {
            text.setCharAt(i, passage.text().charAt(i));
        }
        return text.toString();
    }

    /** The text with some stretches blanked out. */
    static String without(String text, List<Range> stretches) {
        StringBuilder blank = new StringBuilder(text);
        for (Range range : stretches) {
            for (int i = range.start(); i < Math.min(range.end(), text.length()); i++) {
                blank.setCharAt(i, PassageReader.GAP);
            }
        }
        return blank.toString();
    }

    Place place(int start, int end) {
        if (start >= end) {
            return source.place(passage.sourceFrom(start), passage.sourceFrom(start) + 1);
        }
        return source.place(passage.sourceFrom(start), passage.sourceTo(end));
    }

    /** The place of a link's text; of all of it, if it has none. */
    Place place(Bound link) {
        return link.isEmpty() ? source.place(link.sourceStart(), link.sourceEnd()) : place(link.start(), link.end());
    }

    /** The characters to replace, if they stand on one line. */
    Optional<ProseFault.Correction> correction(int start, int end, String text) {
        if (!source.exact() || start >= end) {
            return Optional.empty();
        }
        String written = source.text().substring(passage.sourceFrom(start), passage.sourceTo(end));
        return written.contains("\n")
                ? Optional.empty()
                : Optional.of(new ProseFault.Correction(place(start, end), text));
    }
}
