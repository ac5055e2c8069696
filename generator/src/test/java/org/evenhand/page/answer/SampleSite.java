package org.evenhand.page.answer;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.FolderChecker;
import org.evenhand.page.Pages;
import org.evenhand.page.Templates;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/** The sample's site, built once for all tests of answers. */
final class SampleSite {

    static final Path FOLDER =
            Path.of(System.getProperty("evenhand.root", "..")).resolve("sample-results");
    static final CheckedFolder CHECKED = FolderChecker.check(FOLDER);
    static final Map<String, byte[]> FILES = build(CHECKED, FOLDER);

    private SampleSite() {}

    static Map<String, byte[]> build(CheckedFolder checked, Path folder) {
        Map<String, byte[]> files = new ConcurrentSkipListMap<>();
        Pages.build(checked, folder, Templates.bundled(), "Evenhand test", files::put);
        return new TreeMap<>(files);
    }

    static String text(String path) {
        return new String(FILES.get(path), StandardCharsets.UTF_8);
    }

    static Document page(String study) {
        return Jsoup.parse(text("answers/" + study + "/index.html"));
    }
}
