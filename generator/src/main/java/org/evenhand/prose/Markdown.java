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

    /**
     * Characters without an empty line between: some 1500 words. Readers of Markdown look through the rest of a paragraph at
     * each of some characters, so that their time can grow with the square of its length.
     */
    static final int LONGEST_PARAGRAPH = 10_000;

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
        int longAt = tooLong(text);
        if (longAt >= 0) {
            return refused(
                    source,
                    longAt,
                    "a paragraph begins here that has more than " + LONGEST_PARAGRAPH + " characters",
                    "put empty lines into it");
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
        return refused(source, at, message, "divide the text, or make it simpler");
    }

    private static Tree refused(ProseSource source, int at, String message, String remedy) {
        ProseFault fault = ProseFault.of(Rules.SIZE_LIMIT, source.place(at, at + 1), message, remedy);
        return new Tree(Optional.empty(), Optional.of(fault));
    }

    /** Where a paragraph begins that is too long, or −1. Tables and lists count as paragraphs. */
    private static int tooLong(String text) {
        int begin = 0;
        for (int line = 0; line < text.length(); ) {
            int end = text.indexOf('\n', line);
            end = end < 0 ? text.length() : end;
            if (isEmpty(text, line, end)) {
                begin = end + 1;
            } else if (end - begin > LONGEST_PARAGRAPH) {
                return begin;
            }
            line = end + 1;
        }
        return -1;
    }

    /** Whether a line ends any paragraph: one of nothing but blanks, in a quotation or not. */
    private static boolean isEmpty(String text, int from, int to) {
        int at = from;
        while (at < to && (text.charAt(at) == ' ' || text.charAt(at) == '\t')) {
            at++;
        }
        boolean isQuotation =
                at < to && text.charAt(at) == '>' && text.substring(from, at).matches(" {0,3}");
        at = isQuotation ? at + 1 : at;
        while (at < to && (text.charAt(at) == ' ' || text.charAt(at) == '\t')) {
            at++;
        }
        return at == to;
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
