package org.evenhand.command.audit;

import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.evenhand.site.Manifest;

/** Whether each link within a site leads to a file of it, and each fragment to an id of its page. */
public final class PageLinks {

    private static final String PAGE = ".html";
    private static final Pattern ELSEWHERE = Pattern.compile("(?:[A-Za-z][A-Za-z0-9+.-]*:|//).*", Pattern.DOTALL);

    private final Manifest manifest;
    private final Map<String, Tags> pages = new TreeMap<>();

    private PageLinks(Manifest manifest) {
        this.manifest = manifest;
    }

    /** @throws IOException if a page cannot be read */
    public static SortedSet<Difference> differences(Path site, Manifest manifest) throws IOException {
        PageLinks links = new PageLinks(manifest);
        for (String path : manifest.digests().keySet()) {
            // Raw files that happen to end so are nobody's pages.
            boolean isPage = path.endsWith(PAGE)
                    && !path.substring(path.lastIndexOf('/') + 1).startsWith("raw-");
            if (isPage && Files.isRegularFile(site.resolve(path))) {
                links.pages.put(
                        path, Tags.of(new String(Files.readAllBytes(site.resolve(path)), StandardCharsets.UTF_8)));
            }
        }
        SortedSet<Difference> differences = new TreeSet<>();
        links.pages.forEach((path, tags) -> tags.links().stream()
                .filter(link -> !links.leadsSomewhere(path, link))
                .forEach(link -> differences.add(new Difference(path, "leads to " + link + ", which is not there"))));
        return differences;
    }

    private boolean leadsSomewhere(String from, String link) {
        if (ELSEWHERE.matcher(link).matches()) {
            return true;
        }
        int hash = link.indexOf('#');
        String file = hash < 0 ? link : link.substring(0, hash);
        String target = file.isEmpty() ? from : resolved(from, decoded(file));
        if (target.isEmpty() || target.endsWith("/")) {
            target += "index.html";
        }
        boolean isThere = manifest.digests().containsKey(target) || target.equals(Manifest.FILE);
        if (!isThere || hash < 0 || hash == link.length() - 1 || !pages.containsKey(target)) {
            return isThere;
        }
        return pages.get(target).ids().contains(decoded(link.substring(hash + 1)));
    }

    private static String resolved(String from, String file) {
        Deque<String> parts = new ArrayDeque<>(List.of(from.split("/")));
        parts.removeLast();
        for (String part : file.split("/")) {
            if (part.equals("..")) {
                if (parts.pollLast() == null) {
                    return "..";
                }
            } else if (!part.equals(".")) {
                parts.addLast(part);
            }
        }
        return String.join("/", parts) + (file.endsWith("/") ? "/" : "");
    }

    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text.replace("+", "%2B"), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            return text;
        }
    }
}
