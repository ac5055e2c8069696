package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.evenhand.model.Item;

/**
 * The words of a quotation, the same in each of its forms.
 *
 * @param id of the evidence on the page
 * @param label what is quoted, among the quotations of the page
 * @param about what the claim is about
 * @param claim the figure in words
 * @param behind with a blank before it: interval, n, items, ambient, and the verdict
 * @param caveat the worst, with that word before it; empty for none
 * @param source title and publisher
 * @param link absolute address of the evidence
 */
record Quoted(
        String id, String label, String about, String claim, String behind, String caveat, String source, String link) {

    static Quoted of(Answer answer, Quotable q) {
        return new Quoted(
                q.id(),
                q.subject(),
                q.about(),
                q.claim(),
                behind(answer, q),
                q.caveat().isEmpty() ? "" : answer.words().say("quote.caveat", q.caveat()),
                SourceLine.publisher(answer.context().publication()),
                answer.permalink(q.id()));
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

    /** All of it on as many lines as it has parts. */
    String plain() {
        return lines(about + ": " + claim + behind, caveat, source + ": " + link);
    }

    static String lines(String... lines) {
        return List.of(lines).stream().filter(l -> !l.isEmpty()).collect(Collectors.joining("\n"));
    }
}
