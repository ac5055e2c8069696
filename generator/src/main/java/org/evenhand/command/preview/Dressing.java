package org.evenhand.command.preview;

import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenhand.page.overview.Headers;

/** Adds to a page what renews it and says what is wrong, and lets its policy permit that. */
final class Dressing {

    /** As the pages' own, but for scripts from here and calls to here: the preview's own script needs both. */
    static final String POLICY = Stream.concat(
                    Arrays.stream(Headers.POLICY.split("; "))
                            .filter(d -> !d.startsWith("script-src") && !d.startsWith("connect-src")),
                    Stream.of("script-src 'self'", "connect-src 'self'"))
            .collect(Collectors.joining("; "));

    private Dressing() {}

    /** The page of an edition as the preview shows it; everything but the additions stays as it is published. */
    static String of(String page, Edition edition) {
        String head = "<link rel=\"icon\" href=\"data:,\">\n<link rel=\"stylesheet\" href=\"" + Assets.STYLE
                + "\">\n<script src=\"" + Assets.SCRIPT + "\" data-edition=\"" + edition.id() + "\" defer></script>\n";
        String permitted = page.replaceFirst(
                "content=\"\\Q" + Headers.POLICY + "\\E\"", "content=\"" + POLICY.replace("$", "\\$") + "\"");
        String headed = before(permitted, permitted.indexOf("</head>"), head);
        return before(headed, headed.lastIndexOf("</body>"), Notes.note(edition));
    }

    /** A page without such a place, of somebody's own template, stays as it is. */
    private static String before(String page, int place, String addition) {
        return place < 0 ? page : page.substring(0, place) + addition + page.substring(place);
    }
}
