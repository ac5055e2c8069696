package org.evenhand.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.evenhand.model.Place;
import org.evenhand.read.Rules;

/** Finds what could run or load on a reader's machine. Addresses are looked at after entities were decoded. */
final class ActiveContent {

    static final String RULE = "content-active";

    private static final Set<String> SCHEMES = Set.of("http", "https", "mailto");
    private static final Pattern SCHEME = Pattern.compile("^([A-Za-z][A-Za-z0-9+.-]*):");
    private static final Pattern ACTIVE = Pattern.compile(
            "<\\s*/?\\s*(?:script|iframe|object|embed|applet|form|style|link|meta|base|svg|math)\\b"
                    + "|\\bon[a-z]{3,}\\s*=|(?:javascript|vbscript|data)\\s*:",
            Pattern.CASE_INSENSITIVE);

    private ActiveContent() {}

    /** Active parts of raw HTML. All raw HTML is shown as text; that which is active is also reported. */
    static List<ProseFault> inHtml(ProseSource source, Node node, String literal) {
        List<ProseFault> faults = new ArrayList<>();
        Matcher matcher = ACTIVE.matcher(literal);
        int from = Passages.start(node);
        if (matcher.find()) {
            String found = matcher.group();
            int at = source.text().indexOf(found, from);
            Place place = at < 0 ? source.place(from, from + 1) : source.place(at, at + found.length());
            faults.add(ProseFault.of(
                    RULE,
                    place,
                    "“" + found + "” could run or load something on a reader's machine; it is shown as text",
                    "take it out; prose is Markdown, and HTML in it is never passed on"));
        }
        return faults;
    }

    /** Why a link may not be passed on; nothing if it may. */
    static Optional<ProseFault> ofAddress(ProseSource source, Link link, String destination) {
        // Browsers skip spaces and control characters before and within a scheme.
        String bare = destination.replaceAll("[\\p{Cntrl}\\s]+", "");
        Matcher matcher = SCHEME.matcher(bare);
        String scheme = matcher.find() ? matcher.group(1).toLowerCase(Locale.ROOT) : "";
        boolean outside = bare.startsWith("/") || bare.startsWith("\\");
        if ((scheme.isEmpty() && !outside) || SCHEMES.contains(scheme)) {
            return Optional.empty();
        }
        Place place = Passages.placeOfAddress(source, link);
        return Optional.of(
                outside
                        ? ProseFault.of(
                                Rules.REFERENCE_UNRESOLVED,
                                place,
                                "an address that begins with a slash depends on where the site stands",
                                "write it relative to the page, or in full with https:")
                        : ProseFault.of(
                                RULE,
                                place,
                                "a link with the scheme “" + scheme + "” is not passed on",
                                "use http, https or mailto, a relative address, or evidence: and given:"));
    }
}
