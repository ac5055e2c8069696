package org.evenhand.prose;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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
 * @param cues what its words hint at
 * @param context what the checks of its study share
 */
record Sentence(ProseSource source, Passage passage, Range range, int cues, Context context) {

    private static final Pattern SEPARATOR =
            Pattern.compile("[,;:]|(?<!\\p{L})(?:and|but|while|whereas|und|aber)(?!\\p{L})", Pattern.CASE_INSENSITIVE);

    private static final Pattern CLAUSE_END = Pattern.compile(
            "[,;:–—()]|(?<!\\p{L})(?:but|so|because|since|while|whereas|aber|weil|während|sondern)(?!\\p{L})",
            Pattern.CASE_INSENSITIVE);

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

    /**
     * Whether what stands at an index is asked or supposed, and so not claimed. A question claims nothing; "whether", "if" and
     * "would" take the claim out of their own clause alone: what follows "if it is warm," is said without reserve.
     */
    boolean isOpen(int at) {
        if (text().stripTrailing().endsWith("?")) {
            return true;
        }
        return has(Cue.OPEN) && context.language().open.isIn(clause(at));
    }

    private String clause(int at) {
        Matcher matcher = CLAUSE_END.matcher(passage.text()).region(range.start(), range.end());
        int start = range.start();
        while (matcher.find()) {
            if (matcher.start() >= at) {
                return passage.text().substring(start, matcher.start());
            }
            start = matcher.end();
        }
        return passage.text().substring(start, range.end());
    }

    /** Whether some word of it hints at something. */
    boolean has(Cue cue) {
        return cue.isIn(cues);
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
        int cues = context.language().cues.in(passage.text(), range.start(), range.end());
        return new Sentence(source, passage, range, cues, context);
    }

    /** The text of the passage with everything outside a stretch blanked out, so that indices stay. */
    String only(Range stretch) {
        char[] only = new char[passage.text().length()];
        Arrays.fill(only, PassageReader.GAP);
        passage.text().getChars(stretch.start(), stretch.end(), only, stretch.start());
        return new String(only);
    }

    /** The text with some stretches blanked out. */
    static String without(String text, List<Range> stretches) {
        if (stretches.isEmpty()) {
            return text;
        }
        char[] blank = text.toCharArray();
        for (Range range : stretches) {
            Arrays.fill(blank, range.start(), Math.min(range.end(), blank.length), PassageReader.GAP);
        }
        return new String(blank);
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
        return start < end && source.mayReplace(passage.sourceFrom(start), passage.sourceTo(end), text)
                ? Optional.of(new ProseFault.Correction(place(start, end), text))
                : Optional.empty();
    }
}
