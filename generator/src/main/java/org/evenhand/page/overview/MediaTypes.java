package org.evenhand.page.overview;

import java.util.Locale;
import java.util.Map;

/** Media types of the files of a site, by their endings. Source: the IANA registry. */
final class MediaTypes {

    private static final Map<String, String> BY_ENDING = Map.of(
            "csv", "text/csv",
            "gz", "application/gzip",
            "json", "application/json",
            "md", "text/markdown",
            "png", "image/png",
            "svg", "image/svg+xml",
            "yaml", "application/yaml",
            "yml", "application/yaml");

    private MediaTypes() {}

    static String of(String path) {
        String ending = path.substring(path.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return BY_ENDING.getOrDefault(ending, "application/octet-stream");
    }
}
