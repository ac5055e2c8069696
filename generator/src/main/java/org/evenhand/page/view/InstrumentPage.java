package org.evenhand.page.view;

import java.util.List;

/**
 * What produced readings or columns of logs.
 *
 * @param frame the page's surroundings
 * @param head identification, calibration
 * @param name the page's heading
 * @param prose about it; may be empty
 * @param properties what it reads, boundary, resolution, accuracy
 * @param findings about it
 * @param answers whose figures rest on it
 * @param files raw, byte for byte as handed in
 */
public record InstrumentPage(
        Frame frame,
        HeadBlock head,
        String name,
        Markup prose,
        List<Entry> properties,
        List<Finding> findings,
        List<Listed> answers,
        List<FileRow> files) {
    public InstrumentPage {
        properties = List.copyOf(properties);
        findings = List.copyOf(findings);
        answers = List.copyOf(answers);
        files = List.copyOf(files);
    }
}
