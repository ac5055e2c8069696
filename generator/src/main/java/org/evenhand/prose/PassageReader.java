package org.evenhand.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import org.evenhand.prose.EvidenceResolver.Found;
import org.evenhand.prose.EvidenceResolver.Resolution;
import org.evenhand.prose.Passage.Bound;
import org.evenhand.prose.Passage.Range;

/** Takes the running text out of a tree. */
final class PassageReader extends AbstractVisitor {

    /** Stands for what is not read: code, raw HTML. */
    static final char GAP = '\uFFFC';

    private static final Pattern QUOTATION =
            Pattern.compile("\"[^\"]*\"|“[^”]*”|„[^“”]*[“”]|«[^»]*»|‘[^’]*’(?!\\p{L})");

    private final String source;
    private final EvidenceResolver resolver;
    private final List<Passage> passages = new ArrayList<>();
    private StringBuilder text = new StringBuilder();
    private List<int[]> spans = new ArrayList<>();
    private List<Bound> links = new ArrayList<>();
    private List<Range> cited = new ArrayList<>();
    private boolean quoted;

    private PassageReader(String source, EvidenceResolver resolver) {
        this.source = source;
        this.resolver = resolver;
    }

    static List<Passage> read(Node document, String source, EvidenceResolver resolver) {
        PassageReader reader = new PassageReader(source, resolver);
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
        text = new StringBuilder();
        spans = new ArrayList<>();
        links = new ArrayList<>();
        cited = new ArrayList<>();
        visitChildren(node);
        List<Range> silent = new ArrayList<>();
        Matcher matcher = QUOTATION.matcher(text);
        while (matcher.find()) {
            silent.add(new Range(matcher.start(), matcher.end()));
        }
        int[] from = spans.stream().mapToInt(s -> s[0]).toArray();
        int[] to = spans.stream().mapToInt(s -> s[1]).toArray();
        passages.add(new Passage(
                text.toString(), from, to, List.copyOf(links), silent, List.copyOf(cited), heading, quoted));
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
        int at = spans.isEmpty() ? 0 : spans.get(spans.size() - 1)[1];
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
        int start = text.length();
        visitChildren(link);
        if (link.getDestination().startsWith("http")) {
            cited.add(new Range(start, text.length()));
        }
        evidence(link.getDestination()).ifPresent(found -> {
            int end = Passages.isEmpty(link) ? start : text.length();
            links.add(new Bound(start, end, found.evidence, found.form, Passages.start(link), Passages.end(link)));
        });
    }

    private record FoundLink(Evidence evidence, EvidenceLink.Form form) {}

    /** Links that lead nowhere are reported where prose is rendered. */
    private Optional<FoundLink> evidence(String destination) {
        if (!EvidenceLink.isBound(destination)) {
            return Optional.empty();
        }
        try {
            EvidenceLink link = EvidenceLink.parse(destination);
            Resolution resolution = resolver.resolve(link.address());
            return resolution instanceof Found found
                    ? Optional.of(new FoundLink(found.evidence(), link.form()))
                    : Optional.empty();
        } catch (EvidenceLink.MalformedException e) {
            return Optional.empty();
        }
    }

    private void append(char c, int from, int to) {
        text.append(c);
        spans.add(new int[] {from, to});
    }
}
