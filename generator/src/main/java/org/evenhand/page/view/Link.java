package org.evenhand.page.view;

/**
 * Text that may lead somewhere.
 *
 * A link within the site is written from the site's root, as {@link Address} forms it ({@code answers/heat-
 * spreader/index.html#comparison.spreader-rise}); the template puts the page's own way to the root before it, so
 * the site works under any path and from a folder on disk.
 *
 * @param text what is shown; never empty
 * @param href where it leads; empty for plain text
 * @param within whether {@code href} is counted from the site's root
 */
public record Link(String text, String href, boolean within) {
    /** A page or file of this site, by its path from the root. */
    public static Link to(String text, String path) {
        return new Link(text, path, true);
    }
    /** Another place on the same page. */
    public static Link here(String text, String id) {
        return new Link(text, "#" + id, false);
    }
    /**
     * A place on the web.
     *
     * @throws IllegalArgumentException if the address is not http or https
     */
    public static Link outside(String text, String url) {
        if (url.startsWith("https://") || url.startsWith("http://")) return new Link(text, url, false);
        throw new IllegalArgumentException("not an http address: " + url);
    }
    /** Text that leads nowhere. */
    public static Link plain(String text) {
        return new Link(text, "", false);
    }
}
