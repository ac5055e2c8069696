package org.evenhand.command.audit;

import java.util.List;
import java.util.Set;

/** What is read of a page, for tests elsewhere. */
public final class TagsOf {

    private TagsOf() {}

    public static List<String> links(String html) {
        return Tags.of(html).links();
    }

    public static Set<String> ids(String html) {
        return Tags.of(html).ids();
    }
}
