package org.evenhand.page;

import java.util.List;
import java.util.regex.Pattern;
import org.evenhand.model.Publication;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Frame;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Markup;
import org.evenhand.page.view.Unfolding;
import org.evenhand.words.Words;

/** Puts around each page what all pages of a publication share. */
public final class Frames {

    /** SPDX identifiers that name a licence of Creative Commons, whose text stands at an address of the same form. */
    private static final Pattern CREATIVE_COMMONS = Pattern.compile("CC-(BY(?:-NC)?(?:-SA|-ND)?)-(\\d\\.\\d)");

    private final Publication publication;
    private final String generator;
    private final Words words;

    /** @param generator name and version of the program */
    public Frames(Publication publication, String generator) {
        this.publication = publication;
        this.generator = generator;
        this.words = Words.in(publication.language());
    }

    /**
     * The surroundings of a page.
     *
     * @param path of the page, from the site's root
     * @param title of the page
     * @param description one sentence of plain text; empty for none
     * @param trail the pages above it, without the index, outermost first
     */
    public Frame of(String path, String title, String description, Link... trail) {
        return new Frame(
                Address.rootFrom(path),
                publication.language(),
                title,
                description,
                publication.title(),
                publication.publisher(),
                licence(),
                permanent(path),
                publication.invented(),
                generator,
                path.equals(Address.INDEX) ? List.of() : above(trail),
                Unfolding.plain(description),
                Markup.NONE,
                "");
    }

    /** The absolute address of a page or file; folders stand for their index. */
    public String permanent(String path) {
        String shown = path.endsWith(Address.INDEX) ? path.substring(0, path.length() - Address.INDEX.length()) : path;
        return publication.baseUrl() + shown;
    }

    /** The licence of data and text, leading to its wording where that is known. */
    public Link licence() {
        String url = licenceUrl(publication.licence());
        return url.isEmpty() ? Link.plain(publication.licence()) : Link.outside(publication.licence(), url);
    }

    /** Where a licence can be read; empty for an identifier that is not known to be one of SPDX. */
    static String licenceUrl(String spdx) {
        var commons = CREATIVE_COMMONS.matcher(spdx);
        if (commons.matches()) {
            return "https://creativecommons.org/licenses/" + commons.group(1).toLowerCase(java.util.Locale.ROOT) + "/"
                    + commons.group(2) + "/";
        }
        if (spdx.equals("CC0-1.0")) {
            return "https://creativecommons.org/publicdomain/zero/1.0/";
        }
        return spdx.matches("[A-Za-z0-9][A-Za-z0-9.+-]*") ? "https://spdx.org/licenses/" + spdx + ".html" : "";
    }

    private List<Link> above(Link... trail) {
        List<Link> all = new java.util.ArrayList<>();
        all.add(Link.to(words.say("page.questions"), Address.INDEX));
        all.addAll(List.of(trail));
        return all;
    }
}
