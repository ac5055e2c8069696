package org.evenhand.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.evenhand.read.Sha256;

/** Small sites to publish one in the place of another. */
final class Sites {

    private Sites() {}

    /** Publishes a site whose every file says which edition it is of; an odd edition has a file that an even one lacks. */
    static Manifest publish(Path target, Path source, int edition, int files, Disk disk)
            throws TargetException, IOException {
        try (SiteWriter site = SiteWriter.begin(target, source, disk)) {
            for (int i = 0; i < files; i++) {
                site.put("pages/" + i % 7 + "/" + i + ".html", text(edition, i));
            }
            site.put(edition % 2 == 1 ? "odd/index.html" : "even", text(edition, files));
            Path raw = source.resolve("raw.csv");
            site.copy("raw.csv", raw, Sha256.of(Files.readAllBytes(raw)));
            return site.finish();
        }
    }

    private static byte[] text(int edition, int i) {
        return ("edition " + edition % 2 + ", file " + i + "\n").repeat(20).getBytes(StandardCharsets.UTF_8);
    }

    /** Every entry but filled folders, with digest, "link to" or "folder". */
    static SortedMap<String, String> contents(Path folder) {
        SortedMap<String, String> contents = new TreeMap<>();
        try (Stream<Path> entries = Files.walk(folder)) {
            for (Path entry : entries.filter(e -> !e.equals(folder)).toList()) {
                contents.put(folder.relativize(entry).toString(), content(entry));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        contents.values().removeIf(String::isEmpty);
        return contents;
    }

    private static String content(Path entry) throws IOException {
        if (Files.isSymbolicLink(entry)) {
            return "link to " + Files.readSymbolicLink(entry);
        }
        if (Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)) {
            try (Stream<Path> within = Files.list(entry)) {
                return within.findAny().isPresent() ? "" : "folder";
            }
        }
        return Sha256.of(Files.readAllBytes(entry));
    }
}
