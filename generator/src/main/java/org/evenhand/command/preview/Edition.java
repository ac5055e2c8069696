package org.evenhand.command.preview;

import java.util.List;
import java.util.Optional;
import org.evenhand.check.CheckedFolder;
import org.evenhand.model.Finding;

/**
 * What there is to see since the folder was last read.
 *
 * @param id tells it from every other, of this preview and of those before
 * @param checked the folder as it stands; nothing before it was first read, or after a fault of this program
 * @param site the newest that could be made, if any
 * @param siteAt the time of day at which the folder gave that site
 * @param fault what went wrong within this program
 */
record Edition(
        String id, Optional<CheckedFolder> checked, Optional<SiteToOrder> site, String siteAt, Optional<String> fault) {

    /** The findings that keep something from being published. */
    List<Finding> errors() {
        return checked.stream()
                .flatMap(c -> c.findings().stream())
                .filter(Finding::withholds)
                .toList();
    }

    /** Whether the site is of the folder as it stands. */
    boolean isUpToDate() {
        return checked.isPresent() && !checked.get().isUnusable();
    }
}
