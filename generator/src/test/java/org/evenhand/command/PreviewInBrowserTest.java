package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.evenhand.browser.Chromium;
import org.evenhand.browser.NeedsChromium;
import org.evenhand.browser.Tab;
import org.evenhand.cache.Cache;
import org.evenhand.command.preview.Preview;
import org.evenhand.model.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What somebody sees who has a page open while the folder is edited. */
@NeedsChromium
class PreviewInBrowserTest {

    /** How far the element that is being read stands below the upper edge of the window. */
    private static final String PLACE = "document.getElementById('%s').getBoundingClientRect().top";

    @TempDir
    private Path root;

    @Test
    void aPageFollowsItsFolderStaysAtItsPlaceAndSaysWhenThePreviewHasEnded() throws IOException {
        Given given = Given.soundFolderIn(root.resolve("results"));
        Cache cache = Cache.in(
                Path.of("target", "preview-cache"), ProcessHandle.current().toString());
        try (Tab tab = Chromium.shared().tab()) {
            try (Preview preview =
                    new Preview(given.root(), Optional.empty(), Limits.DEFAULT, "x", 0, cache, renewal -> {})) {
                look(preview, given, tab);
            }
            tab.await("document.getElementById('evenhand-preview-end')");
            assertEquals(
                    "The preview has ended: this page is not renewed any more.",
                    tab.evaluate("document.getElementById('evenhand-preview-end').textContent")
                            .asText());
        }
    }

    private static void look(Preview preview, Given given, Tab tab) {
        preview.begin();
        tab.size(900, 500);
        tab.go(preview.address() + "answers/plate/index.html");
        tab.await("document.querySelector('details')");
        // Opened, the focus set on the last thing that takes it, and scrolled to an element in the midst of the
        // page.
        String focused = tab.evaluate("(() => { document.querySelector('details').open = true;"
                        + " const f = [...document.querySelectorAll('[id][tabindex], a[id], summary[id], [id][href]')].pop();"
                        + " if (f) f.focus({preventScroll: true});"
                        + " return f && document.activeElement === f ? f.id : ''; })()")
                .asText();
        String read = tab.evaluate(
                        "(() => { const all = [...document.querySelectorAll('main [id], body [id]')]"
                                + ".filter(e => e.getBoundingClientRect().height > 0);"
                                + " const e = all[Math.floor(all.length / 2)];"
                                + " window.scrollTo({top: e.getBoundingClientRect().top + scrollY - 40, behavior: 'instant'}); return e.id; })()")
                .asText();
        double before = tab.evaluate(PLACE.formatted(read)).asDouble();
        assertEquals(40, before, 1, read);
        assertTrue(tab.evaluate("scrollY").asDouble() > 200, "scrolled");

        // The title grows by lines: what stands below moves, and must not move in the window.
        given.replacing(
                "studies/plate/study.md", "keep it cooler", "keep it quiet " + "and well and truly ".repeat(12));
        tab.await("document.body && document.body.textContent.includes('and well and truly')"
                + " && document.readyState === 'complete'");
        assertTrue(tab.evaluate("document.querySelector('details').open").asBoolean(), "details stay open");
        assertEquals(focused, tab.evaluate("document.activeElement.id").asText());
        assertEquals(before, tab.evaluate(PLACE.formatted(read)).asDouble(), 2, "the place in the window");

        given.replacing("studies/plate/runs/none-1.json", "\"run\": \"none-1\"", "\"run\": \"none-9\"");
        tab.await("document.querySelector('aside.evenhand-preview')");
        assertTrue(tab.evaluate("document.querySelector('aside.evenhand-preview').textContent")
                .asText()
                .contains("studies/plate/runs/none-1.json"));
        assertEquals(List.of(), tab.complaints());
    }
}
