package org.evenhand.prose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.Code;
import org.commonmark.node.CustomNode;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.evenhand.prose.Passage.Address;
import org.evenhand.prose.Passage.Range;

/** Takes the running text out of a tree. */
final class PassageReader extends AbstractVisitor {

    /** Stands for what is not read: code, raw HTML. */
    static final char GAP = '\uFFFC';

    private static final Pattern QUOTATION =
            Pattern.compile("\"[^\"]*+\"|“[^“”]*+”|„[^„“”]*+[“”]|«[^«»]*+»|‘[^‘’]*+’(?!\\p{L})");

    private static final String QUOTATION_MARKS = "\"“„«‘";

    private final String source;
    private final List<Passage> passages = new ArrayList<>();
    private char[] text = new char[512];
    private int[] starts = new int[512];
    private int[] ends = new int[512];
    private int length;
    private List<Address> addresses = new ArrayList<>();
    private List<Range> cited = new ArrayList<>();
    private boolean quoted;

    private PassageReader(String source) {
        this.source = source;
    }

    /** All passages of a tree, their links not yet bound. */
    static List<Passage> read(Node document, String source) {
        PassageReader reader = new PassageReader(source);
        document.accept(reader);
        return reader.passages;
    }

    @Override
    public void visit(Paragraph paragraph) {
        passage(paragraph, false);
    }

    @Override
    public void visit(Heading heading) {
        passage(heading, true);
    }

    @Override
    public void visit(CustomNode node) {
        if (node instanceof TableCell) {
            passage(node, false);
        } else {
            visitChildren(node);
        }
    }

    @Override
    public void visit(BlockQuote quote) {
        boolean before = quoted;
        quoted = true;
        visitChildren(quote);
        quoted = before;
    }

    private void passage(Node node, boolean heading) {
        length = 0;
        addresses = new ArrayList<>();
        cited = new ArrayList<>();
        visitChildren(node);
        String read = new String(text, 0, length);
        passages.add(new Passage(
                read,
                Arrays.copyOf(starts, length),
                Arrays.copyOf(ends, length),
                List.copyOf(addresses),
                List.of(),
                quotations(read),
                List.copyOf(cited),
                heading,
                quoted));
    }

    private static List<Range> quotations(String text) {
        if (text.chars().noneMatch(c -> QUOTATION_MARKS.indexOf(c) >= 0)) {
            return List.of();
        }
        List<Range> found = new ArrayList<>();
        Matcher matcher = QUOTATION.matcher(text);
        while (matcher.find()) {
            found.add(new Range(matcher.start(), matcher.end()));
        }
        return found;
    }

    @Override
    public void visit(Text node) {
        String literal = node.getLiteral();
        int at = Passages.start(node);
        int end = Passages.end(node);
        for (int i = 0; i < literal.length(); i++) {
            char c = literal.charAt(i);
            int next = at + 1;
            if (at < end && source.charAt(at) != c) {
                boolean escaped = source.charAt(at) == '\\' && at + 1 < end && source.charAt(at + 1) == c;
                int semicolon = source.charAt(at) == '&' ? source.indexOf(';', at) : -1;
                next = escaped ? at + 2 : semicolon >= 0 && semicolon < end ? semicolon + 1 : at + 1;
            } else if (c == '&' && source.startsWith("&amp;", at)) {
                next = at + "&amp;".length();
            }
            append(plain(c), at, Math.max(next, at + 1));
            at = next;
        }
    }

    private static char plain(char c) {
        return switch (c) {
            case '\u00a0', '\u202f', '\u2009', '\u2007', '\t' -> ' ';
            case '\u2212' -> '-';
            case '\u2019' -> '\'';
            default -> c;
        };
    }

    @Override
    public void visit(SoftLineBreak node) {
        lineBreak();
    }

    @Override
    public void visit(HardLineBreak node) {
        lineBreak();
    }

    private void lineBreak() {
        int at = length == 0 ? 0 : ends[length - 1];
        append(' ', at, at + 1);
    }

    @Override
    public void visit(Code node) {
        append(GAP, Passages.start(node), Passages.end(node));
    }

    @Override
    public void visit(HtmlInline node) {
        append(GAP, Passages.start(node), Passages.end(node));
    }

    @Override
    public void visit(Link link) {
        int start = length;
        visitChildren(link);
        if (link.getDestination().startsWith("http")) {
            cited.add(new Range(start, length));
        }
        if (EvidenceLink.isBound(link.getDestination())) {
            addresses.add(new Address(start, Passages.isEmpty(link) ? start : length, link));
        }
    }

    private void append(char c, int from, int to) {
        if (length == text.length) {
            text = Arrays.copyOf(text, 2 * length);
            starts = Arrays.copyOf(starts, 2 * length);
            ends = Arrays.copyOf(ends, 2 * length);
        }
        text[length] = c;
        starts[length] = from;
        ends[length++] = to;
    }
}
