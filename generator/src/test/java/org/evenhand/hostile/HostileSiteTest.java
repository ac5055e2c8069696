package org.evenhand.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListMap;
import org.evenhand.browser.Chromium;
import org.evenhand.browser.NeedsChromium;
import org.evenhand.browser.SiteServer;
import org.evenhand.browser.Tab;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.CheckedStudy;
import org.evenhand.check.FolderChecker;
import org.evenhand.page.NuChecker;
import org.evenhand.page.Pages;
import org.evenhand.page.Templates;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Sites of folders whose every text means harm, opened in a browser that may run scripts: nothing of the texts runs, nothing
 * is fetched from elsewhere, and the pages are sound HTML.
 *
 * <p>The pages are made twice: as they are published, where most studies are withheld for what is in them; and as if no
 * check had found anything, so that every text is laid out. A page has to hold without the checks before it, and without
 * the policy that forbids scripts behind it: the browser is told to pass that over as well.
 */
@NeedsChromium
class HostileSiteTest {

    private static final String TRAP = """
            window.hits = [];
            window.hit = what => { window.hits.push('ran ' + what); };
            for (const name of ['alert', 'confirm', 'prompt', 'open', 'print']) window[name] = () => hit(name);
            addEventListener('securitypolicyviolation', e => hits.push('policy ' + e.violatedDirective + ' ' + e.blockedURI));
            """;

    /** What the trap holds, and what stands on the page and could spring it by a click or a touch. */
    private static final String LOOK = """
            (() => {
              const found = [...window.hits];
              const safe = /^(https?|mailto):/;
              for (const each of document.querySelectorAll('*')) {
                for (const a of each.attributes) {
                  // The page's own scripts size the sliders.
                  const isStyle = a.name === 'style' && each.type !== 'range';
                  if (/^on/i.test(a.name) || isStyle || a.name === 'srcdoc' || a.name === 'formaction')
                    found.push('attribute ' + a.name + ' of ' + each.tagName);
                  if (['href', 'xlink:href', 'src', 'action', 'data', 'background'].includes(a.name)) {
                    const address = new URL(a.value, document.baseURI);
                    if (!safe.test(address.href)) found.push('address ' + a.value.slice(0, 60));
                    if (each.tagName !== 'A' && each.tagName !== 'LINK' && address.origin !== location.origin)
                      found.push('loads ' + a.value.slice(0, 60));
                  }
                }
                const isOwn = /\\/(assets\\/[a-z-]+|search-index)\\.js$/.test(each.src) && each.textContent === '';
                if (each.tagName === 'SCRIPT' && !(isOwn || each.type === 'application/ld+json'))
                  found.push('script ' + each.outerHTML.slice(0, 60));
                if (/^(IFRAME|OBJECT|EMBED|BASE|FORM|FRAME|APPLET|AUDIO|VIDEO|STYLE|MATH)$/i.test(each.tagName))
                  found.push('element ' + each.tagName);
              }
              for (const data of document.querySelectorAll('script[type="application/ld+json"]')) JSON.parse(data.textContent);
              return found;
            })()
            """;

    @TempDir
    private static Path folder;

    private static final SortedMap<String, Integer> FILLED = new TreeMap<>();
    private static CheckedFolder checked;

    @BeforeAll
    static void write() throws IOException {
        FILLED.putAll(HostileFolder.write(folder, HostileStrings.all(), 0));
        checked = FolderChecker.check(folder);
    }

    private static SortedMap<String, byte[]> site(CheckedFolder of) {
        SortedMap<String, byte[]> files = new ConcurrentSkipListMap<>();
        Pages.build(of, folder, Templates.bundled(), "Evenhand test", files::put);
        return files;
    }

    /** As if nothing had been found. */
    private static CheckedFolder unchecked() {
        SortedMap<String, CheckedStudy> studies = new TreeMap<>();
        checked.studies()
                .forEach((id, study) -> studies.put(
                        id, new CheckedStudy(study.evidence(), List.of(), List.of(), List.of(), List.of())));
        return new CheckedFolder(checked.folder(), studies, List.of(), List.of());
    }

    @Test
    void everyFieldOfFreeTextIsFilledManyTimesOver() {
        assertTrue(HostileStrings.all().size() > 350, () -> HostileStrings.all().size() + " strings");
        assertTrue(FILLED.values().stream().mapToInt(Integer::intValue).sum() > 1500, FILLED::toString);
        assertTrue(
                FILLED.keySet()
                        .containsAll(Set.of(
                                "publication/title",
                                "publication/about",
                                "items/name",
                                "items/notes",
                                "instruments/name",
                                "methods/title",
                                "methods/body",
                                "studies/question",
                                "studies/short-answer",
                                "studies/caveats",
                                "studies/authors",
                                "studies/body",
                                "runs/notes",
                                "runs/done-by",
                                "runs/log")),
                FILLED::toString);
        assertEquals(10, checked.studies().size() + checked.folder().broken().size());
        assertTrue(
                checked.studies().size() >= 8,
                () -> "read: " + checked.studies().keySet());
    }

    @Test
    void nothingRunsAndNothingIsFetched() {
        for (CheckedFolder of : List.of(checked, unchecked())) {
            SortedMap<String, byte[]> site = site(of);
            List<String> pages = pages(site);
            try (SiteServer server = SiteServer.of(site)) {
                // Kept to their policy, pages report what it blocked; without it, whatever can run does.
                assertEquals(Map.of(), harm(server, pages, true));
                assertEquals(Map.of(), harm(server, pages, false));
            }
        }
    }

    /** That the trap closes at all. */
    @Test
    void aPageThatObeysIsFound() {
        for (String string : List.of(
                "<script>hit(1)</script>",
                "<img src=x onerror=hit(2)>",
                "<a href=javascript:hit(8) autofocus>x</a>",
                "<img src=https://" + HostileStrings.ELSEWHERE + "/x>")) {
            byte[] page =
                    ("<!DOCTYPE html><title>x</title>" + string).getBytes(java.nio.charset.StandardCharsets.UTF_8);
            try (SiteServer server = SiteServer.of(Map.of("index.html", page))) {
                assertEquals(
                        Set.of("index.html"),
                        harm(server, List.of("index.html"), false).keySet(),
                        string);
            }
        }
    }

    @Test
    void thePagesAreSoundHtml() {
        NuChecker checker = new NuChecker();
        SortedMap<String, byte[]> site = site(unchecked());
        pages(site).forEach(path -> checker.check(path, site.get(path)));
        // Warnings tell of the strings: that they are in no language, or in no normal form of Unicode.
        assertEquals(
                List.of(),
                checker.found().stream().filter(f -> f.contains(": error: ")).toList());
    }

    /** All pages but those of runs and instruments, of which a few stand for the others. */
    private static List<String> pages(SortedMap<String, byte[]> site) {
        Map<String, Integer> ofAKind = new HashMap<>();
        List<String> pages = new ArrayList<>();
        for (String path : site.keySet()) {
            String kind = path.startsWith("runs/") ? path.split("/")[1] : path.startsWith("instruments/") ? "i" : path;
            if (path.endsWith(".html") && ofAKind.merge(kind, 1, Integer::sum) <= 2) {
                pages.add(path);
            }
        }
        return pages;
    }

    private static Map<String, Set<String>> harm(SiteServer server, List<String> pages, boolean policy) {
        Map<String, Set<String>> harm = new TreeMap<>();
        try (Tab tab = Chromium.shared().tab()) {
            tab.before(TRAP);
            tab.policy(policy);
            for (String path : pages) {
                tab.go(server.url(path));
                if (path.equals("index.html")) {
                    // What is searched for and what is found are texts of the folder too.
                    tab.evaluate("(() => { const s = document.querySelector('input[type=search]');"
                            + " if (s) { s.value = '<img src=x onerror=hit(13)>';"
                            + " s.dispatchEvent(new Event('input', { bubbles: true })); } })()");
                }
                Set<String> found = new TreeSet<>();
                tab.evaluate(LOOK).forEach(each -> found.add(each.asText()));
                tab.requests().stream()
                        .filter(url -> !url.startsWith(server.url(""))
                                && !url.endsWith("/favicon.ico")
                                && !url.startsWith("data:"))
                        .forEach(url -> found.add("asked for " + url));
                if (!found.isEmpty()) {
                    harm.put(path, found);
                }
            }
        }
        return harm;
    }
}
