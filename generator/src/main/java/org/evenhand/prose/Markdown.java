package org.evenhand.prose;

import java.util.List;
import java.util.Optional;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.evenhand.read.Rules;

/** Reads CommonMark with tables into a tree, and refuses what is made to exhaust. */
final class Markdown {

    /** Far more than an answer has: a book of 80 000 words. */
    static final int LONGEST = 500_000;

    /** Quotations, lists and emphasis within each other. Readers give up long before. */
    static final int DEEPEST = 60;

    static final List<org.commonmark.Extension> EXTENSIONS = List.of(TablesExtension.create());

    private static final Parser PARSER = Parser.builder()
            .extensions(EXTENSIONS)
            .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
            .maxOpenBlockParsers(DEEPEST)
            .build();

    private Markdown() {}

    /**
     * A tree, or why there is none.
     *
     * @param document absent if the text is too large or too deep
     * @param fault absent if it is neither
     */
    record Tree(Optional<Node> document, Optional<ProseFault> fault) {}

    static Tree parse(ProseSource source) {
        String text = source.text();
        if (text.length() > LONGEST) {
            return refused(
                    source, LONGEST, "the text has " + text.length() + " characters; up to " + LONGEST + " are read");
        }
        int deep = tooDeep(text);
        if (deep >= 0) {
            return refused(source, deep, "brackets stand within brackets more than " + DEEPEST + " deep");
        }
        Node document = PARSER.parse(text);
        if (isTooDeep(document)) {
            return refused(source, 0, "more than " + DEEPEST + " parts of the text stand within each other");
        }
        return new Tree(Optional.of(document), Optional.empty());
    }

    private static Tree refused(ProseSource source, int at, String message) {
        ProseFault fault = ProseFault.of(
                Rules.SIZE_LIMIT, source.place(at, at + 1), message, "divide the text, or make it simpler");
        return new Tree(Optional.empty(), Optional.of(fault));
    }

    /** Where brackets get too deep, or −1: the library follows links and images within each other by recursion. */
    private static int tooDeep(String text) {
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\\') {
                i++;
            } else if (c == '[' && ++depth > DEEPEST) {
                return i;
            } else if (c == ']') {
                depth = Math.max(0, depth - 1);
            } else if (c == '\n' && i + 1 < text.length() && text.charAt(i + 1) == '\n') {
                depth = 0;
            }
        }
        return -1;
    }

    /** Walks without recursion. */
    private static boolean isTooDeep(Node root) {
        int depth = 0;
        Node node = root;
        while (node != null) {
            if (node.getFirstChild() != null) {
                node = node.getFirstChild();
                if (++depth > 2 * DEEPEST) {
                    return true;
                }
                continue;
            }
            while (node != null && node.getNext() == null) {
                node = node.getParent();
                depth--;
            }
            node = node == null ? null : node.getNext();
        }
        return false;
    }
}
