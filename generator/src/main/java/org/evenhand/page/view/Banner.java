package org.evenhand.page.view;

import java.util.List;

/**
 * What stands at the head of a sealed page and tells what became of the answer since.
 *
 * @param frame the page's surroundings, for links
 * @param notices at least one
 */
public record Banner(Frame frame, List<Notice> notices) {
    public Banner {
        notices = List.copyOf(notices);
    }
}
