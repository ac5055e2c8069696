package org.evenhand.page.overview;

import java.nio.charset.StandardCharsets;
import org.evenhand.page.PageSink;

/**
 * The file of headers that many hosts of static sites read.
 *
 * <p>Pages carry their policy themselves, but what is written in a page cannot say by whom it may be framed, and says
 * nothing of the other files. Source: Content Security Policy Level 3, 3.3.
 */
public final class Headers {

    /** As the pages' own; a test holds the templates to it. */
    public static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
            + " font-src 'self'; base-uri 'none'; form-action 'none'";

    private Headers() {}

    public static void build(PageSink sink) {
        String headers = "/*\n"
                + "  Content-Security-Policy: " + POLICY + "; frame-ancestors 'none'\n"
                + "  X-Content-Type-Options: nosniff\n"
                + "  Referrer-Policy: no-referrer\n"
                // Results are there to be used: other sites may read the data.
                + "/*.json\n"
                + "  Access-Control-Allow-Origin: *\n"
                + "/*.csv\n"
                + "  Access-Control-Allow-Origin: *\n";
        sink.put("_headers", headers.getBytes(StandardCharsets.UTF_8));
    }
}
