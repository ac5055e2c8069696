package org.evenhand.page.view;

import java.util.List;

/**
 * Stands in the place of an answer that may not be published.
 *
 * @param frame the page's surroundings
 * @param head the report's identification
 * @param question the page's heading
 * @param why in one or two sentences
 * @param findings that withhold it first, then the others
 * @param runs that exist nevertheless
 * @param revisions newest first
 */
public record WithheldPage(
        Frame frame,
        HeadBlock head,
        String question,
        String why,
        List<Finding> findings,
        List<Listed> runs,
        List<Revision> revisions) {
    public WithheldPage {
        findings = List.copyOf(findings);
        runs = List.copyOf(runs);
        revisions = List.copyOf(revisions);
    }
}
