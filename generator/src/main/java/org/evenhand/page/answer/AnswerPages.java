package org.evenhand.page.answer;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.evenhand.check.CheckedStudy;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.view.Figure;

/** Builds the page of a study and the data beside it. */
public final class AnswerPages {

    private AnswerPages() {}

    /**
     * Writes {@code answers/ID/index.html}, {@code evidence.json}, the CSV tables, and charts and quotations as pictures. A
     * withheld study gets the page that
     * says why, and evidence that holds its findings only.
     */
    public static void build(CheckedStudy study, PageContext context, PageSink sink) {
        Answer answer = Answer.of(study, context);
        EvidenceFiles files = EvidenceFiles.of(answer);
        files.byName().forEach((name, bytes) -> sink.put(answer.beside(name), bytes));
        byte[] page = study.isWithheld()
                ? context.render("withheld", WithheldPages.of(answer))
                : context.render("answer", AnswerViews.of(answer, files, sink));
        sink.put(answer.page(), page);
    }

    /** Writes the page of a study that could not be read, which says why. */
    public static void buildBroken(String study, PageContext context, PageSink sink) {
        sink.put(
                org.evenhand.page.view.Address.answer(study),
                context.render("withheld", WithheldPages.ofBroken(study, context)));
    }

    /**
     * The figure that carries the answer, with all that it must not be shown without; nothing for a study that is withheld
     * or has no figure.
     */
    public static Optional<Figure> leading(CheckedStudy study, PageContext context) {
        if (study.isWithheld()) {
            return Optional.empty();
        }
        return LeadingFigures.of(Answer.of(study, context)).stream().findFirst();
    }

    /** What each figure of a study says in a line, by its id on the page: as it is quoted, levels before comparisons. */
    public static Map<String, String> figures(CheckedStudy study, PageContext context) {
        Answer answer = Answer.of(study, context);
        Map<String, String> lines = new LinkedHashMap<>();
        // The page of a question without runs has no table of figures.
        if (answer.evidence().runs().isEmpty()) {
            return lines;
        }
        answer.evidence().summaries().stream()
                .filter(s -> s.n() > 0)
                .map(s -> Quotable.of(answer, s))
                .forEach(q -> lines.put(q.id(), line(q)));
        answer.evidence().comparisons().stream()
                .map(c -> Quotable.of(answer, c))
                .forEach(q -> lines.put(q.id(), line(q)));
        return lines;
    }

    private static String line(Quotable of) {
        return of.about() + ": " + of.claim() + (of.interval().isEmpty() ? "" : " (" + of.interval() + ")") + ", "
                + of.n();
    }
}
