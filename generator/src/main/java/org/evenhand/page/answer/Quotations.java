package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.evenhand.compare.LevelSummary;
import org.evenhand.model.Item;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Markup;
import org.evenhand.page.view.Quotation;
import org.evenhand.page.view.Snippet;

/** Ready-made quotations: a figure with its interval, its number of values, its worst caveat and the way back. */
final class Quotations {

    private Quotations() {}

    static List<Quotation> of(Answer answer) {
        List<Quotation> quotations = new ArrayList<>();
        answer.evidence().comparisons().stream()
                .filter(c -> !answer.behind(c).isEmpty() || !c.plan().of().isEmpty())
                .forEach(c -> quotations.add(quotation(answer, Quotable.of(answer, c))));
        answer.evidence().summaries().stream()
                .filter(s -> s.n() > 0)
                .map((LevelSummary s) -> quotation(answer, Quotable.of(answer, s)))
                .forEach(quotations::add);
        return quotations;
    }

    /** The id of the quotation of a piece of evidence. */
    static String id(String evidence) {
        return "quote." + evidence;
    }

    private static Quotation quotation(Answer answer, Quotable q) {
        String link = answer.permalink(q.id());
        String figure = q.claim();
        String behind = behind(answer, q);
        String caveat = q.caveat().isEmpty() ? "" : "Caveat: " + q.caveat();
        String source = answer.context().publication().title() + ", "
                + answer.context().publication().publisher();
        String id = id(q.id());
        return new Quotation(
                id,
                q.subject(),
                Optional.of(Link.here("evidence", q.id())),
                List.of(
                        snippet(
                                id,
                                "text",
                                "Plain text",
                                lines(q.about() + ": " + figure + behind, caveat, source + ": " + link)),
                        snippet(
                                id,
                                "markdown",
                                "Markdown",
                                lines(
                                        markdown(q.about()) + ": **" + markdown(figure) + "**" + markdown(behind),
                                        markdown(caveat),
                                        "[" + markdown(source) + "](" + link + ")")),
                        snippet(
                                id,
                                "bbcode",
                                "BBCode",
                                lines(
                                        bbcode(q.about()) + ": [b]" + bbcode(figure) + "[/b]" + bbcode(behind),
                                        bbcode(caveat),
                                        "[url=" + link + "]" + bbcode(source) + "[/url]")),
                        snippet(id, "html", "HTML", html(q, figure, behind, caveat, source, link))));
    }

    /** " (95 % interval …; n = …; Quillet 3 encoder; ambient …). And the verdict". */
    private static String behind(Answer answer, Quotable q) {
        List<String> parts = new ArrayList<>();
        if (!q.interval().isEmpty()) {
            parts.add(q.interval());
        }
        parts.add(q.n());
        String items = answer.items().stream().map(Item::name).collect(Collectors.joining(", "));
        if (!items.isEmpty()) {
            parts.add(items);
        }
        String ambient = Conditions.ambient(answer);
        if (!ambient.isEmpty()) {
            parts.add(ambient);
        }
        return " (" + String.join("; ", parts) + ")." + (q.further().isEmpty() ? "" : " " + q.further());
    }

    private static Snippet snippet(String id, String form, String label, String text) {
        return new Snippet(id + "." + form, label, text, Optional.empty());
    }

    private static String lines(String... lines) {
        return List.of(lines).stream().filter(l -> !l.isEmpty()).collect(Collectors.joining("\n"));
    }

    private static String html(Quotable q, String figure, String behind, String caveat, String source, String link) {
        return "<blockquote cite=\"" + escaped(link) + "\">\n<p>" + escaped(q.about()) + ": <strong>"
                + escaped(figure)
                + "</strong>" + escaped(behind) + "</p>\n"
                + (caveat.isEmpty() ? "" : "<p>" + escaped(caveat) + "</p>\n") + "<p><a href=\"" + escaped(link) + "\">"
                + escaped(source) + "</a></p>\n</blockquote>";
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
