package org.evenhand.command.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a first results folder needs to know.
 *
 * @param title of the site
 * @param publisher who publishes it
 * @param item name of what is tested
 * @param question that the study answers
 * @param factor the setting that is varied, as an id
 * @param levels of the factor, at least two, all different
 */
record Answers(String title, String publisher, String item, String question, String factor, List<String> levels) {

    static final int MOST_LEVELS = 6;

    Answers {
        levels = List.copyOf(levels);
    }

    /** A name for files and addresses: small letters, digits and hyphens; the other name if nothing remains. */
    static String id(String text, String otherwise) {
        String id = text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String cut = id.length() > 40 ? id.substring(0, 40).replaceAll("-$", "") : id;
        return cut.isEmpty() ? otherwise : cut;
    }

    String itemId() {
        return id(item, "item-1");
    }

    /** Ids of the levels, in their order, no two alike. */
    List<String> levelIds() {
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < levels.size(); i++) {
            String id = id(levels.get(i), "level-" + (i + 1));
            ids.add(ids.contains(id) ? id + "-" + (i + 1) : id);
        }
        return ids;
    }
}
