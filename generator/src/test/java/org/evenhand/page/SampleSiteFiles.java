package org.evenhand.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.FolderChecker;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/** All files of the sample's site, built once; they are left in {@code target/sample-site} to be looked at. */
final class SampleSiteFiles {

    static final Path SAMPLE =
            Path.of(System.getProperty("evenhand.root", "..")).resolve("sample-results");
    static final CheckedFolder CHECKED = FolderChecker.check(SAMPLE);
    static final SortedMap<String, byte[]> FILES = build(CHECKED, SAMPLE);
    static final SortedMap<String, Document> PAGES = new TreeMap<>();

    static {
        FILES.forEach((path, bytes) -> {
            leave(path, bytes);
            if (path.endsWith(".html")) {
                PAGES.put(path, Jsoup.parse(new String(bytes, StandardCharsets.UTF_8)));
            }
        });
    }

    private SampleSiteFiles() {}

    static SortedMap<String, byte[]> build(CheckedFolder checked, Path folder) {
        SortedMap<String, byte[]> files = new ConcurrentSkipListMap<>();
        Pages.build(checked, folder, Templates.bundled(), "Evenhand test", files::put);
        return files;
    }

    static String text(String path) {
        return new String(FILES.get(path), StandardCharsets.UTF_8);
    }

    private static void leave(String path, byte[] bytes) {
        Path file = Path.of("target", "sample-site").resolve(path);
        try {
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
