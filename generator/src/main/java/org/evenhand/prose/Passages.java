package org.evenhand.prose;

import java.util.List;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;
import org.commonmark.node.Text;
import org.evenhand.model.Place;

/** Finds the running text of a tree, and where each of its characters stands in the source. */
final class Passages {

    private Passages() {}

    /** Index of the first character of a node in the source, from 0. */
    static int start(Node node) {
        List<SourceSpan> spans = node.getSourceSpans();
        return spans.isEmpty() ? 0 : spans.get(0).getInputIndex();
    }

    /** Index behind the last character of a node in the source. */
    static int end(Node node) {
        List<SourceSpan> spans = node.getSourceSpans();
        if (spans.isEmpty()) {
            return 0;
        }
        SourceSpan last = spans.get(spans.size() - 1);
        return last.getInputIndex() + last.getLength();
    }

    /** Whether a link has no text of its own. */
    static boolean isEmpty(Link link) {
        for (Node child = link.getFirstChild(); child != null; child = child.getNext()) {
            if (!(child instanceof Text text) || !text.getLiteral().isBlank()) {
                return false;
            }
        }
        return true;
    }

    /** The place of a link's address; of the link, where the address stands elsewhere. */
    static Place placeOfAddress(ProseSource source, Link link) {
        int start = start(link);
        int end = Math.max(end(link), start + 1);
        String written =
                source.text().substring(start, Math.min(end, source.text().length()));
        int at = written.lastIndexOf("](");
        if (at >= 0) {
            int from = at + 2;
            int to = from;
            while (to < written.length() && " \n)".indexOf(written.charAt(to)) < 0) {
                to++;
            }
            return source.place(start + from, start + Math.max(to, from + 1));
        }
        return written.startsWith("<") ? source.place(start + 1, end - 1) : source.place(start, end);
    }
}
