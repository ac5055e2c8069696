package org.evenhand.page.kept;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.page.Href;
import org.evenhand.page.view.Address;

/** Finds and rewrites the links of a page that the templates made. */
final class Relinking {

    private static final Pattern TAG = Pattern.compile("<(a|link|img|source|script|image|use)\\b[^<>]*+>");
    private static final Pattern TARGET = Pattern.compile("(?<=\\s)(href|src)=\"([^\"]*)\"");
    private static final Pattern ELSEWHERE = Pattern.compile("(?:[A-Za-z][A-Za-z0-9+.-]*:|//).*", Pattern.DOTALL);

    private Relinking() {}

    /**
     * A link within the site.
     *
     * @param element that holds it: {@code a}, {@code link}, {@code img} …
     * @param path of what it leads to, from the site's root
     * @param fragment behind it, with its {@code #}; empty if there is none
     */
    record Target(String element, String path, String fragment) {

        boolean isPage() {
            return path.endsWith(Address.INDEX);
        }
    }

    /** What becomes of a link: another address; or nothing, and only its text stays. */
    @FunctionalInterface
    interface Rule {
        Optional<String> of(Target target);
    }

    /** The page with each link within the site rewritten; others and those within the page stay. */
    static String rewritten(String page, String path, Rule rule) {
        StringBuilder text = new StringBuilder(page.length() + 1024);
        Matcher tag = TAG.matcher(page);
        while (tag.find()) {
            tag.appendReplacement(text, Matcher.quoteReplacement(tag(tag.group(), tag.group(1), path, rule)));
        }
        return tag.appendTail(text).toString();
    }

    private static String tag(String tag, String element, String path, Rule rule) {
        Matcher target = TARGET.matcher(tag);
        if (!target.find() || isOutside(target.group(2))) {
            return tag;
        }
        Optional<String> address = rule.of(target(element, path, target.group(2)));
        return address.map(to -> tag.substring(0, target.start(2)) + to + tag.substring(target.end(2)))
                .orElse("<" + element + ">");
    }

    /** All links within the site, but those within the page. */
    static List<Target> targets(String page, String path) {
        return TAG.matcher(page)
                .results()
                .map(tag -> {
                    Matcher target = TARGET.matcher(tag.group());
                    return target.find() && !isOutside(target.group(2))
                            ? Optional.of(target(tag.group(1), path, target.group(2)))
                            : Optional.<Target>empty();
                })
                .flatMap(Optional::stream)
                .toList();
    }

    private static boolean isOutside(String href) {
        return href.isEmpty() || href.startsWith("#") || ELSEWHERE.matcher(href).matches();
    }

    private static Target target(String element, String from, String href) {
        int hash = href.indexOf('#');
        String way = hash < 0 ? href : href.substring(0, hash);
        Deque<String> parts = new ArrayDeque<>(List.of(from.split("/")));
        parts.removeLast();
        for (String part : URLDecoder.decode(way.replace("+", "%2B").replace("&amp;", "&"), StandardCharsets.UTF_8)
                .split("/")) {
            if (part.equals("..")) {
                parts.pollLast();
            } else if (!part.equals(".") && !part.isEmpty()) {
                parts.addLast(part);
            }
        }
        return new Target(element, String.join("/", parts), hash < 0 ? "" : href.substring(hash));
    }

    /** The way from one page to a path. */
    static String way(String from, String path) {
        return Address.rootFrom(from) + Href.of(path).replace("&", "&amp;");
    }
}
