package org.evenhand.page.view;

import java.util.List;

/**
 * One execution of a method on one specimen.
 *
 * @param frame the page's surroundings
 * @param head identification, item, specimen, start, length, outcome
 * @param title the page's heading
 * @param notices an outcome other than completed, a waiver
 * @param conditions settings and circumstances
 * @param charts of the log
 * @param columns of the log: what the charts show, as a table
 * @param readings noted by hand or by the workload
 * @param measurands whose values follow
 * @param values as many as measurands, in their order
 * @param sources of the uncertainties of the values, by measurand, the largest first
 * @param findings about this run
 * @param files raw, byte for byte as handed in
 * @param answers that use this run
 * @param pictures of the run
 */
public record RunPage(
        Frame frame,
        HeadBlock head,
        String title,
        List<Notice> notices,
        List<Entry> conditions,
        List<ChartFigure> charts,
        List<LogColumn> columns,
        List<Reading> readings,
        List<RunColumn> measurands,
        List<RunValue> values,
        List<RunSource> sources,
        List<Finding> findings,
        List<FileRow> files,
        List<Listed> answers,
        List<Picture> pictures) {
    public RunPage {
        notices = List.copyOf(notices);
        conditions = List.copyOf(conditions);
        charts = List.copyOf(charts);
        columns = List.copyOf(columns);
        readings = List.copyOf(readings);
        measurands = List.copyOf(measurands);
        values = List.copyOf(values);
        sources = List.copyOf(sources);
        findings = List.copyOf(findings);
        files = List.copyOf(files);
        answers = List.copyOf(answers);
        pictures = List.copyOf(pictures);
    }
}
