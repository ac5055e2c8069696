package org.evenhand.page.answer;

import java.util.List;
import java.util.Optional;
import org.evenhand.model.Status;
import org.evenhand.model.Study;
import org.evenhand.page.view.Caveat;
import org.evenhand.page.view.Figure;
import org.evenhand.page.view.Picture;
import org.evenhand.page.view.Quotation;
import org.evenhand.page.view.Unfolding;

/** What other sites show of an answer: the short answer with the worst caveat of its figure, and that figure's picture. */
final class Unfoldings {

    private Unfoldings() {}

    static Unfolding of(Answer answer, String description, List<Figure> leading, List<Quotation> quotations) {
        Study study = answer.study();
        boolean published = study.status() != Status.WANTED && study.status() != Status.DRAFT;
        String caveat = leading.stream()
                .flatMap(figure -> figure.caveats().stream())
                .findFirst()
                .map(Caveat::text)
                .map(text -> " " + answer.words().say("quote.caveat", text))
                .orElse("");
        return new Unfolding(
                "article",
                description + caveat,
                published ? study.answered().map(Object::toString).orElse("") : "",
                study.revisions().stream()
                        .map(revision -> revision.on().toString())
                        .max(String::compareTo)
                        .orElse(""),
                leading.stream().findFirst().flatMap(figure -> picture(answer, figure, quotations)));
    }

    private static Optional<Picture> picture(Answer answer, Figure figure, List<Quotation> quotations) {
        String evidence = figure.evidence()
                .map(link -> link.href().substring(link.href().indexOf('#') + 1))
                .orElse("");
        return quotations.stream()
                .filter(quotation -> quotation.id().equals(Quotations.id(evidence)))
                .findFirst()
                .flatMap(Quotation::picture)
                .map(p -> new Picture(
                        answer.context().frames().permanent(p.path()), p.width(), p.height(), p.shows(), p.credit()));
    }
}
