package org.evenhand.command.preview;

import org.evenhand.page.overview.Headers;

/** Adds to a page what renews it and says what is wrong, and lets its policy permit that. */
final class Dressing {

    private static final String CALLS = "; connect-src 'self'";

    /** As the pages' own, which permits scripts from here, and calls to here: the preview's own script needs both. */
    static final String POLICY = Headers.POLICY + CALLS;

    private Dressing() {}

    /** The page of an edition as the preview shows it; everything but the additions stays as it is published. */
    static String of(String page, Edition edition) {
        String head = "<link rel=\"icon\" href=\"data:,\">\n<link rel=\"stylesheet\" href=\"" + Assets.STYLE
                + "\">\n<script src=\"" + Assets.SCRIPT + "\" data-edition=\"" + edition.id() + "\" defer></script>\n";
        // A page with linked data names the digest of that in its own policy.
        String permitted = page.replaceFirst("(content=\"default-src[^\"]*)\"", "$1" + CALLS + "\"");
        String headed = before(permitted, permitted.indexOf("</head>"), head);
        return before(headed, headed.lastIndexOf("</body>"), Notes.note(edition));
    }

    /** A page without such a place, of somebody's own template, stays as it is. */
    private static String before(String page, int place, String addition) {
        return place < 0 ? page : page.substring(0, place) + addition + page.substring(place);
    }
}
