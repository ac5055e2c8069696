package org.evenhand.page.view;

import java.util.List;
import java.util.Optional;

/**
 * A piece of evidence in forms ready to paste.
 *
 * @param id on the page
 * @param label what it quotes
 * @param evidence where that stands
 * @param forms plain text, Markdown and so on; none empty
 * @param picture the chart with the same words
 */
public record Quotation(
        String id, String label, Optional<Link> evidence, List<Snippet> forms, Optional<Picture> picture) {
    public Quotation {
        forms = List.copyOf(forms);
    }
}
