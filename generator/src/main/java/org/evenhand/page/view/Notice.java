package org.evenhand.page.view;

import java.util.List;

/**
 * Something about the whole page that the reader must know before anything on it: superseded, withdrawn, a
 * draft, an outcome other than completed.
 *
 * @param title a few words
 * @param text what it means for the reader
 * @param links where to go instead; may be empty
 */
public record Notice(String title, String text, List<Link> links) {
    public Notice {
        links = List.copyOf(links);
    }
}
