package org.evenhand.page.view;

import java.util.List;

/**
 * Every question with its answer at a glance.
 *
 * @param frame the page's surroundings
 * @param introduction of the publication; may be empty
 * @param counts how many questions, runs, specimens, caveats
 * @param questions in the order shown
 * @param items every test item
 * @param methods every test method
 * @param instruments every instrument
 */
public record IndexPage(
        Frame frame,
        Markup introduction,
        List<Entry> counts,
        List<Question> questions,
        List<Listed> items,
        List<Listed> methods,
        List<Listed> instruments) {
    public IndexPage {
        counts = List.copyOf(counts);
        questions = List.copyOf(questions);
        items = List.copyOf(items);
        methods = List.copyOf(methods);
        instruments = List.copyOf(instruments);
    }
}
