package org.evenhand.page.view;

import java.util.List;
import java.util.Optional;

/**
 * One question on the index.
 *
 * @param id of the study
 * @param answer the question as text, leading to its page
 * @param status as in {@link HeadBlock}
 * @param shortAnswer phrasing content; empty if there is no answer yet
 * @param leading the figure that carries the answer
 * @param items tested
 * @param methods used
 * @param date answered, ISO 8601; empty if not yet
 */
public record Question(
        String id,
        Link answer,
        String status,
        Markup shortAnswer,
        Optional<Figure> leading,
        List<Link> items,
        List<Link> methods,
        String date) {
    public Question {
        items = List.copyOf(items);
        methods = List.copyOf(methods);
    }
}
