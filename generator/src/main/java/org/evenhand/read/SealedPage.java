package org.evenhand.read;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The one place of a sealed page that may change: where a banner says what became of the answer since.
 *
 * <p>A page is sealed with the place empty. What is published has a banner there; without it, it is what was sealed.
 */
public final class SealedPage {

    private static final String START = "<!-- sealed: nothing but what stands from here -->";
    private static final String END = "<!-- to here may change -->";
    private static final Pattern MAIN = Pattern.compile("<main\\b[^>]*>\n?|<body\\b[^>]*>\n?");

    private SealedPage() {}

    /** A page with an empty place for the banner, at the head of its content. */
    public static String withPlace(String page) {
        Matcher main = MAIN.matcher(page);
        int at = 0;
        while (main.find()) {
            at = main.end();
        }
        return page.substring(0, at) + START + END + "\n" + page.substring(at);
    }

    /** A sealed page as it is published; the same page if it has no place for a banner. */
    public static String withBanner(String page, String banner) {
        int start = page.indexOf(START);
        int end = page.indexOf(END, Math.max(0, start));
        return start < 0 || end < 0
                ? page
                : page.substring(0, start + START.length()) + "\n" + banner + page.substring(end);
    }

    /** A published page as it was sealed. */
    public static String withoutBanner(String page) {
        int start = page.indexOf(START);
        int end = page.indexOf(END, Math.max(0, start));
        return start < 0 || end < 0 ? page : page.substring(0, start + START.length()) + page.substring(end);
    }
}
