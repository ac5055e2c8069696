package org.evenhand.prose;

import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Any text as the answer of a study, with links to figures: rendered, verified, and nothing active gets through. */
public final class MarkdownFuzz {

    private static final FixedEvidence ENGLISH = new FixedEvidence("en");
    private static final FixedEvidence GERMAN = new FixedEvidence("de");
    private static final Set<String> ELEMENTS = Set.of(
            "a",
            "blockquote",
            "br",
            "code",
            "em",
            "h1",
            "h2",
            "h3",
            "h4",
            "h5",
            "h6",
            "hr",
            "li",
            "ol",
            "p",
            "pre",
            "span",
            "strong",
            "table",
            "tbody",
            "td",
            "th",
            "thead",
            "tr",
            "ul");
    private static final Set<String> ATTRIBUTES =
            Set.of("align", "class", "href", "lang", "rel", "start", "style", "title");
    private static final Pattern TAG = Pattern.compile("<(/?)([^\\s>]*+)([^>]*+)>?");
    private static final Pattern ATTRIBUTE = Pattern.compile("\\s*+([^\\s=>\"]++)(?:=\"([^\"]*+)\")?");
    private static final Pattern SCHEME = Pattern.compile("^[\\s\\p{Cntrl}]*+([A-Za-z][A-Za-z0-9+.-]*+):");

    private MarkdownFuzz() {}

    public static void fuzzerTestOneInput(byte[] data) {
        if (data.length == 0) {
            return;
        }
        String text = new String(data, 1, data.length - 1, StandardCharsets.UTF_8);
        FixedEvidence evidence = (data[0] & 1) == 0 ? ENGLISH : GERMAN;
        ProseSource source = (data[0] & 2) == 0
                ? ProseSource.body("study.md", 1, text)
                : ProseSource.field(
                        new org.evenhand.model.Place("study.md", 3, 7, Math.max(1, text.length())),
                        text,
                        ProseSource.Form.INLINE);
        Verification.verify(source, evidence);
        check(Prose.render(source, evidence, target -> "#figure", 1).html());
    }

    /** What is rendered has known elements with known attributes, and addresses of known schemes. */
    static void check(String html) {
        Matcher tag = TAG.matcher(html);
        while (tag.find()) {
            if (!ELEMENTS.contains(tag.group(2).replaceFirst("/$", ""))) {
                throw new IllegalStateException("an element of the text's own: " + tag.group());
            }
            Matcher attribute = ATTRIBUTE.matcher(tag.group(3));
            while (attribute.find()) {
                if (attribute.group(1).equals("/")) {
                    continue;
                }
                if (!ATTRIBUTES.contains(attribute.group(1))) {
                    throw new IllegalStateException("an attribute of the text's own: " + tag.group());
                }
                if (attribute.group(1).equals("href")) {
                    checkAddress(attribute.group(2));
                }
            }
        }
    }

    private static void checkAddress(String escaped) {
        String address = org.jsoup.parser.Parser.unescapeEntities(escaped, true).replaceAll("[\t\n\r]", "");
        Matcher scheme = SCHEME.matcher(address);
        if (scheme.find() && !scheme.group(1).matches("(?i)https?|mailto")) {
            throw new IllegalStateException("an address that is not passed on: " + address);
        }
    }
}
