package org.evenhand.page;

import java.util.Locale;
import java.util.Map;

/** Media types of the files of a site, by their endings. Source: the IANA registry. */
public final class MediaTypes {

    private static final Map<String, String> BY_ENDING = Map.ofEntries(
            Map.entry("css", "text/css"),
            Map.entry("csv", "text/csv"),
            Map.entry("gz", "application/gzip"),
            Map.entry("html", "text/html"),
            Map.entry("js", "text/javascript"),
            Map.entry("json", "application/json"),
            Map.entry("md", "text/markdown"),
            Map.entry("png", "image/png"),
            Map.entry("svg", "image/svg+xml"),
            Map.entry("txt", "text/plain"),
            Map.entry("woff2", "font/woff2"),
            Map.entry("xml", "application/xml"),
            Map.entry("yaml", "application/yaml"),
            Map.entry("yml", "application/yaml"));

    private MediaTypes() {}

    public static String of(String path) {
        String ending = path.substring(path.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return BY_ENDING.getOrDefault(ending, "application/octet-stream");
    }
}
