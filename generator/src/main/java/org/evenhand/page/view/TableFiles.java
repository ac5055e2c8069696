package org.evenhand.page.view;

import java.util.List;

/**
 * A table of the page as files to take away, each with its caption and its source.
 *
 * @param id of the table on the page
 * @param files one for each form
 */
public record TableFiles(String id, List<Link> files) {
    public TableFiles {
        files = List.copyOf(files);
    }
}
