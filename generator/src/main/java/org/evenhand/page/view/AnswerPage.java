package org.evenhand.page.view;

import java.util.List;

/**
 * The published answer to one question: the whole test report.
 *
 * @param frame the page's surroundings
 * @param head the report's identification
 * @param question the page's heading
 * @param notices about the whole report
 * @param shortAnswer phrasing content; empty for a question that is still wanted
 * @param leading figures that carry the answer
 * @param charts every run shown, with interval
 * @param summaries absolute figures, one table per measurand
 * @param comparisons ratios and differences, after the absolute figures
 * @param runs every run's values
 * @param comparability what was equal, what differed, what was refused
 * @param budgets uncertainty budgets
 * @param conditions held and varied
 * @param cautions for the hazards of the methods
 * @param methodNotes how each figure was computed
 * @param prose the author's text: flow content, headings from level three down
 * @param author who signs the prose; empty if not said
 * @param limits what was not tested, and known sources of error
 * @param findings all of them, also not checkable and waived
 * @param revisions newest first
 * @param reproduction files, digests, command
 * @param citations ready to paste
 * @param downloads this page's data
 * @param quotations ready to paste, with interval, n and caveats
 * @param pictures of the test
 * @param tables as files to take away
 */
public record AnswerPage(
        Frame frame,
        HeadBlock head,
        String question,
        List<Notice> notices,
        Markup shortAnswer,
        List<Figure> leading,
        List<ChartFigure> charts,
        List<SummaryTable> summaries,
        ComparisonTable comparisons,
        RunTable runs,
        Comparability comparability,
        List<Budget> budgets,
        List<Condition> conditions,
        List<Caution> cautions,
        List<Entry> methodNotes,
        Markup prose,
        String author,
        List<String> limits,
        List<Finding> findings,
        List<Revision> revisions,
        Reproduction reproduction,
        List<Snippet> citations,
        List<FileRow> downloads,
        List<Quotation> quotations,
        List<Picture> pictures,
        List<TableFiles> tables) {
    public AnswerPage {
        notices = List.copyOf(notices);
        leading = List.copyOf(leading);
        charts = List.copyOf(charts);
        summaries = List.copyOf(summaries);
        budgets = List.copyOf(budgets);
        conditions = List.copyOf(conditions);
        cautions = List.copyOf(cautions);
        methodNotes = List.copyOf(methodNotes);
        limits = List.copyOf(limits);
        findings = List.copyOf(findings);
        revisions = List.copyOf(revisions);
        citations = List.copyOf(citations);
        downloads = List.copyOf(downloads);
        quotations = List.copyOf(quotations);
        pictures = List.copyOf(pictures);
        tables = List.copyOf(tables);
    }
}
