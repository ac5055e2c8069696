package org.evenhand.page.view;

import java.util.List;

/**
 * What every page has around its content.
 *
 * @param root the way from this page to the site's root: empty for the root's own pages, else {@code ../} once
 *     per folder
 * @param language BCP 47 tag of the publication's language
 * @param title of this page, for the window and for search engines
 * @param description one sentence of plain text about this page; empty for none
 * @param publication title of the publication
 * @param publisher who publishes it
 * @param licence of data and text
 * @param permanent absolute address of this page below the publication's base URL; empty if there is none
 * @param invented whether the data are made up, which every page then says
 * @param generator name and version of the program
 * @param trail the pages above this one, outermost first; empty on the index
 * @param unfolding what other sites show of it
 * @param data the same for machines: JSON-LD, safe within a script element; empty for none
 * @param dataDigest SHA-256 of the data in Base64, for the page's security policy; empty for none
 */
public record Frame(
        String root,
        String language,
        String title,
        String description,
        String publication,
        String publisher,
        Link licence,
        String permanent,
        boolean invented,
        String generator,
        List<Link> trail,
        Unfolding unfolding,
        Markup data,
        String dataDigest) {
    public Frame {
        trail = List.copyOf(trail);
    }

    /** The same page, with what other sites show of it and what it tells machines. */
    public Frame with(Unfolding other, Markup told, String digest) {
        return new Frame(
                root,
                language,
                title,
                description,
                publication,
                publisher,
                licence,
                permanent,
                invented,
                generator,
                trail,
                other,
                told,
                digest);
    }
}
