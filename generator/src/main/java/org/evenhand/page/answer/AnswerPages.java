package org.evenhand.page.answer;

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
}
