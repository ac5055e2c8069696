package org.evenhand.page.view;

import java.util.List;

/**
 * How a test is done.
 *
 * @param frame the page's surroundings
 * @param head identification, version, run length
 * @param title the page's heading
 * @param cautions for its hazards
 * @param procedure flow content, headings from level three down
 * @param records columns of the log with their units
 * @param measurands that it yields
 * @param answers that use it
 * @param files raw, byte for byte as handed in
 */
public record MethodPage(
        Frame frame,
        HeadBlock head,
        String title,
        List<Caution> cautions,
        Markup procedure,
        List<Entry> records,
        List<Measurand> measurands,
        List<Listed> answers,
        List<FileRow> files) {
    public MethodPage {
        cautions = List.copyOf(cautions);
        records = List.copyOf(records);
        measurands = List.copyOf(measurands);
        answers = List.copyOf(answers);
        files = List.copyOf(files);
    }
}
