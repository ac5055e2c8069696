package org.evenhand.page.view;

import java.util.List;

/**
 * Stands at an address that was published and whose subject is gone, or may not be shown.
 *
 * @param frame the page's surroundings
 * @param title the page's heading
 * @param text what happened, in a sentence or two
 * @param kept what is still there; may be empty
 */
public record GonePage(Frame frame, String title, String text, List<Link> kept) {
    public GonePage {
        kept = List.copyOf(kept);
    }
}
