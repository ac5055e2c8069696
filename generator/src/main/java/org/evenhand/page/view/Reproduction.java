package org.evenhand.page.view;

import java.util.List;

/**
 * How somebody else gets the same bytes, and who has.
 *
 * @param command to type, in the results folder
 * @param generator name and version of the program that made this site
 * @param files that go in
 * @param repeated by whom, and how independently; may be empty
 */
public record Reproduction(String command, String generator, List<FileRow> files, List<Entry> repeated) {
    public Reproduction {
        files = List.copyOf(files);
        repeated = List.copyOf(repeated);
    }
}
