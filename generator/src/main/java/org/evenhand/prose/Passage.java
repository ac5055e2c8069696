package org.evenhand.prose;

import java.util.List;
import org.commonmark.node.Link;

/**
 * A stretch of running text: a paragraph, a heading, a cell.
 *
 * <p>Special spaces are written as spaces, U+2212 as a hyphen, and a line break as a space, so that a word is found however
 * it is set. Each character remembers where it stands in the source.
 *
 * @param text as it is read
 * @param from for each character the index of the first character of its source
 * @param to for each character the index behind the last
 * @param addresses links that are to be bound to figures, in the order of the text
 * @param links those of them that lead to one; none before the passage is {@linkplain #bound bound}
 * @param silent stretches that are not the author's own claims: code, quotations
 * @param cited stretches that link to pages elsewhere, whose numbers are theirs
 * @param heading whether it is one
 * @param quoted whether it stands in a block quotation
 */
record Passage(
        String text,
        int[] from,
        int[] to,
        List<Address> addresses,
        List<Bound> links,
        List<Range> silent,
        List<Range> cited,
        boolean heading,
        boolean quoted) {

    /** A stretch of characters. */
    record Range(int start, int end) {
        boolean overlaps(int otherStart, int otherEnd) {
            return otherStart < end && start < otherEnd;
        }
    }

    /**
     * A link that is to be bound to a figure.
     *
     * @param start of its text in the passage
     * @param end behind its text; the same as the start for an empty link
     * @param link as it stands in the tree
     */
    record Address(int start, int end, Link link) {
        String destination() {
            return link.getDestination();
        }

        boolean isGiven() {
            return destination().startsWith(EvidenceLink.GIVEN);
        }
    }

    /**
     * A link that is bound to a figure.
     *
     * @param start of its text in the passage
     * @param end behind its text; the same as the start for an empty link
     * @param evidence what it leads to
     * @param form how an empty one is written
     * @param sourceStart of the whole link in the source
     * @param sourceEnd behind the whole link
     */
    record Bound(int start, int end, Evidence evidence, EvidenceLink.Form form, int sourceStart, int sourceEnd) {
        boolean isEmpty() {
            return start == end;
        }
    }

    /** The same passage, with its links bound to these figures. */
    Passage bound(List<Bound> found) {
        return new Passage(text, from, to, addresses, List.copyOf(found), silent, cited, heading, quoted);
    }

    boolean isLinked(int start, int end) {
        return links.stream().anyMatch(l -> l.start() < end && start < l.end());
    }

    /** The index in the source of a stretch of the passage. */
    int sourceFrom(int start) {
        return from.length == 0 ? 0 : from[Math.min(start, from.length - 1)];
    }

    int sourceTo(int end) {
        return end == 0 || to.length == 0 ? 0 : to[Math.min(end, to.length) - 1];
    }
}
