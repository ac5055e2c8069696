package org.evenhand.page.view;

/**
 * A fragment of HTML that is printed as it stands. Everything else on a page is escaped.
 *
 * Only prose that has been through the Markdown renderer and charts drawn by the generator may become one: never
 * text from a results folder. Links inside must already fit the page that they stand on, and no element may
 * carry a style or an event attribute, which the pages' content security policy would block.
 *
 * @param html well-formed flow or phrasing content; empty for none
 */
public record Markup(String html) {
    /** The absent fragment. */
    public static final Markup NONE = new Markup("");
    /** Plain text as markup: the five characters that mean something to HTML become references. */
    public static Markup text(String plain) {
        return new Markup(plain.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;"));
    }
}
