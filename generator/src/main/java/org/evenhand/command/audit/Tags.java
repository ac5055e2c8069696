package org.evenhand.command.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The links and the ids of a page, read in one pass. Enough for pages that the templates make, whose attributes are quoted;
 * it is no parser of HTML at large.
 *
 * @param links values of href and src, as they are meant
 * @param ids values of id
 */
record Tags(List<String> links, Set<String> ids) {

    static Tags of(String html) {
        Tags tags = new Tags(new ArrayList<>(), new HashSet<>());
        int at = html.indexOf('<');
        while (at >= 0) {
            if (html.startsWith("<!--", at)) {
                int end = html.indexOf("-->", at);
                at = end < 0 ? -1 : html.indexOf('<', end);
            } else if (at + 1 < html.length() && Character.isLetter(html.charAt(at + 1))) {
                at = html.indexOf('<', tags.attributes(html, at + 1));
            } else {
                at = html.indexOf('<', at + 1);
            }
        }
        return tags;
    }

    /** Takes the attributes of a tag, and returns where it ends. */
    private int attributes(String html, int start) {
        int at = start;
        while (at < html.length() && html.charAt(at) != '>') {
            int equals = at;
            while (equals < html.length() && "=>\"'".indexOf(html.charAt(equals)) < 0) {
                equals++;
            }
            boolean quoted = equals + 1 < html.length()
                    && html.charAt(equals) == '='
                    && "\"'".indexOf(html.charAt(equals + 1)) >= 0;
            if (!quoted) {
                at = equals < html.length() && html.charAt(equals) == '>' ? equals : equals + 1;
                continue;
            }
            int end = html.indexOf(html.charAt(equals + 1), equals + 2);
            if (end < 0) {
                return html.length();
            }
            take(html.substring(at, equals), html.substring(equals + 2, end));
            at = end + 1;
        }
        return at;
    }

    private void take(String before, String value) {
        String name = before.substring(before.lastIndexOf(' ') + 1).strip().toLowerCase(Locale.ROOT);
        switch (name) {
            case "href", "src" -> links.add(unescaped(value));
            case "id" -> ids.add(unescaped(value));
            default -> {
                // nothing that leads anywhere
            }
        }
    }

    private static String unescaped(String value) {
        return value.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&");
    }
}
