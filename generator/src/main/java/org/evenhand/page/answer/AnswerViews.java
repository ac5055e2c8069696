package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.evenhand.model.Hazard;
import org.evenhand.model.Status;
import org.evenhand.model.Study;
import org.evenhand.page.LinkedData;
import org.evenhand.page.PageSink;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.AnswerPage;
import org.evenhand.page.view.Budget;
import org.evenhand.page.view.Comparability;
import org.evenhand.page.view.ComparisonTable;
import org.evenhand.page.view.Condition;
import org.evenhand.page.view.Figure;
import org.evenhand.page.view.Frame;
import org.evenhand.page.view.Markup;
import org.evenhand.page.view.Quotation;
import org.evenhand.page.view.Revision;
import org.evenhand.page.view.RunTable;
import org.evenhand.page.view.SummaryTable;
import org.evenhand.page.view.Unfolding;
import org.evenhand.page.words.Hazards;

/** Puts an answer's page together. */
final class AnswerViews {

    private AnswerViews() {}

    /** @param sink takes what the page shows as pictures and tables of their own */
    static AnswerPage of(Answer answer, EvidenceFiles files, PageSink sink) {
        Study study = answer.study();
        boolean figures = !answer.evidence().runs().isEmpty();
        String description = description(answer);
        List<Figure> leading = figures ? LeadingFigures.of(answer) : List.of();
        List<DrawnChart> charts = figures ? ChartFigures.of(answer) : List.of();
        List<SummaryTable> summaries = figures ? Tables.summaries(answer) : List.of();
        ComparisonTable comparisons =
                figures ? Tables.comparisons(answer) : new ComparisonTable(Quotable.CONFIDENCE, "", List.of());
        RunTable runs = figures ? Runs.table(answer) : new RunTable(List.of(), List.of());
        List<Budget> budgets = figures ? Budgets.of(answer) : List.of();
        List<Condition> conditions = Conditions.of(answer);
        List<Quotation> quotations = figures ? Quotations.of(answer, charts, sink) : List.of();
        Unfolding unfolding = Unfoldings.of(answer, description, leading, quotations);
        Markup data = AnswerData.of(answer, files, unfolding);
        Grids tables = new Grids(answer.words());
        List<Grid> grids = new ArrayList<>(summaries.stream().map(tables::of).toList());
        grids.addAll(List.of(tables.of(comparisons), tables.of(runs), tables.of(conditions)));
        budgets.forEach(budget -> grids.add(tables.of(budget)));
        return new AnswerPage(
                frame(answer, description).with(unfolding, data, LinkedData.digest(data)),
                Heads.of(answer, status(study)),
                study.question(),
                Limits.notices(answer),
                study.shortAnswer()
                        .map(s -> answer.context().prose().phrase(s, answer.page(), Optional.of(answer.checked())))
                        .orElse(Markup.NONE),
                leading,
                charts.parallelStream()
                        .map(chart -> chart.view(answer, ChartFiles.put(answer, chart, sink)))
                        .toList(),
                summaries,
                comparisons,
                runs,
                figures ? Panels.of(answer) : new Comparability(List.of(), List.of(), List.of()),
                budgets,
                conditions,
                hazards(answer).stream()
                        .map(hazard -> Hazards.caution(hazard, answer.context().words()))
                        .toList(),
                MethodNotes.of(answer),
                answer.context().prose().flow(study.answer(), answer.page(), Optional.of(answer.checked())),
                String.join(", ", study.authors()),
                Limits.of(answer),
                answer.findings().all(),
                revisions(study),
                Reproductions.of(answer),
                Reproductions.citations(answer),
                files.rows(answer),
                quotations,
                answer.context().pictures().of(answer.page(), study.pictures()),
                GridFiles.put(answer, grids, sink));
    }

    static Frame frame(Answer answer, String description) {
        return answer.context().frames().of(answer.page(), answer.study().question(), description);
    }

    static String status(Study study) {
        return study.status().name().toLowerCase(java.util.Locale.ROOT);
    }

    private static String description(Answer answer) {
        Study study = answer.study();
        return study.shortAnswer()
                .map(s -> answer.context().prose().plain(s, Optional.of(answer.checked())))
                .orElse(study.status() == Status.WANTED ? answer.words().say("quote.waiting") : "");
    }

    /** Each hazard of the methods once, in the order in which the methods name them. */
    private static Set<Hazard> hazards(Answer answer) {
        return answer.methods().stream()
                .flatMap(m -> m.hazards().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Newest first; counted from the oldest. */
    static List<Revision> revisions(Study study) {
        List<Revision> revisions = new ArrayList<>();
        for (int i = study.revisions().size(); i >= 1; i--) {
            var revision = study.revisions().get(i - 1);
            revisions.add(
                    new Revision(Address.revision(i), revision.on().toString(), revision.what(), revision.why(), ""));
        }
        return revisions;
    }
}
