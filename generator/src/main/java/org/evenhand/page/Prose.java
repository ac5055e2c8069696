package org.evenhand.page;

import java.util.Optional;
import org.evenhand.check.CheckedStudy;
import org.evenhand.page.view.Markup;

/**
 * Renders the Markdown of a results folder. Raw HTML in it is shown, not obeyed; its evidence links lead to the evidence.
 *
 * <p>A page is named by its path from the site's root, so that links can be written relative to it; the study is the one
 * whose evidence the text may point at.
 */
public interface Prose {

    /** Paragraphs and lists; headings from level three down. */
    Markup flow(String markdown, String page, Optional<CheckedStudy> study);

    /** The sentences of a single paragraph, without an element around them. */
    Markup phrase(String markdown, String page, Optional<CheckedStudy> study);

    /** The same words without markup, for titles and feeds. */
    String plain(String markdown, Optional<CheckedStudy> study);
}
