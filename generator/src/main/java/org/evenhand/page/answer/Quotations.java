package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenhand.chart.Figure;
import org.evenhand.compare.LevelSummary;
import org.evenhand.page.PageSink;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Markup;
import org.evenhand.page.view.Quotation;
import org.evenhand.page.view.Snippet;

/** Ready-made quotations: a figure with its interval, its number of values, its worst caveat and the way back. */
final class Quotations {

    private Quotations() {}

    private record Piece(Quotable quotable, Optional<Figure> chart) {}

    /**
     * The quotations of a page; the picture of each is put.
     *
     * @param charts of the page
     */
    static List<Quotation> of(Answer answer, List<DrawnChart> charts, PageSink sink) {
        List<Piece> pieces = new ArrayList<>();
        answer.evidence().comparisons().stream()
                .filter(c -> !answer.behind(c).isEmpty() || !c.plan().of().isEmpty())
                .map(c -> new Piece(Quotable.of(answer, c), QuotedCharts.of(answer, c)))
                .forEach(pieces::add);
        answer.evidence().summaries().stream()
                .filter(s -> s.n() > 0)
                .map((LevelSummary s) -> new Piece(Quotable.of(answer, s), QuotedCharts.of(s, charts, answer)))
                .forEach(pieces::add);
        return pieces.parallelStream()
                .map(piece -> quotation(answer, piece, sink))
                .toList();
    }

    /** The id of the quotation of a piece of evidence. */
    static String id(String evidence) {
        return "quote." + evidence;
    }

    private static Quotation quotation(Answer answer, Piece piece, PageSink sink) {
        Quoted quoted = Quoted.of(answer, piece.quotable());
        String id = id(quoted.id());
        return new Quotation(
                id,
                quoted.label(),
                Optional.of(Link.here(answer.words().say("quote.evidence"), quoted.id())),
                List.of(
                        snippet(id, "text", answer.words().say("quote.plain-text"), quoted.plain()),
                        snippet(id, "markdown", "Markdown", markdown(quoted)),
                        snippet(id, "bbcode", "BBCode", bbcode(quoted)),
                        snippet(id, "html", "HTML", html(quoted))),
                Optional.of(QuotationPicture.put(answer, quoted, piece.chart(), sink)));
    }

    private static Snippet snippet(String id, String form, String label, String text) {
        return new Snippet(id + "." + form, label, text, Optional.empty());
    }

    private static String markdown(Quoted q) {
        return Quoted.lines(
                markdown(q.about()) + ": **" + markdown(q.claim()) + "**" + markdown(q.behind()),
                markdown(q.caveat()),
                "[" + markdown(q.source()) + "](" + q.link() + ")");
    }

    private static String bbcode(Quoted q) {
        return Quoted.lines(
                bbcode(q.about()) + ": [b]" + bbcode(q.claim()) + "[/b]" + bbcode(q.behind()),
                bbcode(q.caveat()),
                "[url=" + q.link() + "]" + bbcode(q.source()) + "[/url]");
    }

    private static String html(Quoted q) {
        return "<blockquote cite=\"" + escaped(q.link()) + "\">\n<p>" + escaped(q.about()) + ": <strong>"
                + escaped(q.claim())
                + "</strong>" + escaped(q.behind()) + "</p>\n"
                + (q.caveat().isEmpty() ? "" : "<p>" + escaped(q.caveat()) + "</p>\n") + "<p><a href=\""
                + escaped(q.link()) + "\">" + escaped(q.source()) + "</a></p>\n</blockquote>";
    }

    private static String escaped(String text) {
        return Markup.text(text).html();
    }

    /** CommonMark takes a backslash before any ASCII punctuation as that character. */
    private static String markdown(String text) {
        return text.replaceAll("([\\\\`*_\\[\\]<>#])", "\\\\$1");
    }

    /** BBCode has no escape: brackets become their look-alikes in parentheses. */
    private static String bbcode(String text) {
        return text.replace('[', '(').replace(']', ')');
    }
}
