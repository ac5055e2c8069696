package org.evenhand.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the tests in a browser lean on. */
@NeedsChromium
class ChromiumTest {

    private static final String PAGE = """
            <!DOCTYPE html><html lang="en"><meta name="viewport" content="width=device-width"><title>One</title><input id="field">
            <p id="told">no script</p><script src="own.js"></script></html>
            """;
    private static final Map<String, byte[]> SITE = Map.of(
            "index.html", bytes(PAGE),
            "own.js",
                    bytes("told.textContent = matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light';"),
            "faulty.html", bytes("<!DOCTYPE html><title>Two</title><script>nowhere.at.all</script><img src=none.png>"),
            "guarded.html",
                    bytes(
                            "<!DOCTYPE html><meta http-equiv='Content-Security-Policy' content=\"script-src 'self'\">"
                                    + "<title>Three</title><p id=told>kept out</p><script>told.textContent = 'let in'</script>"));

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void aPageIsLoadedLookedAtAndTypedInto() {
        try (SiteServer server = SiteServer.of(SITE);
                Tab tab = Chromium.shared().tab()) {
            tab.go(server.url(""));
            assertEquals("One", tab.evaluate("document.title").asText());
            assertEquals("light", tab.evaluate("told.textContent").asText());
            tab.key("Tab");
            tab.type("Grüße");
            assertEquals("Grüße", tab.evaluate("field.value").asText());
            assertEquals(List.of(), tab.complaints());
            tab.size(320, 600);
            assertEquals(320, tab.evaluate("innerWidth").asInt());
            assertEquals(
                    "late",
                    tab.evaluate("new Promise(r => setTimeout(() => r('late'), 5))")
                            .asText());
            assertThrows(IllegalStateException.class, () -> tab.evaluate("nowhere.at.all"));
        }
    }

    @Test
    void mediaScriptAndPolicyCanBeSet() {
        try (SiteServer server = SiteServer.of(SITE);
                Tab tab = Chromium.shared().tab()) {
            tab.media(Map.of("prefers-color-scheme", "dark"));
            tab.go(server.url("index.html"));
            assertEquals("dark", tab.evaluate("told.textContent").asText());
            tab.script(false);
            tab.go(server.url("index.html"));
            assertEquals("no script", tab.evaluate("told.textContent").asText());
            tab.script(true);
            tab.go(server.url("guarded.html"));
            assertEquals("kept out", tab.evaluate("told.textContent").asText());
            assertEquals(1, tab.complaints().size());
            tab.policy(false);
            tab.go(server.url("guarded.html"));
            assertEquals("let in", tab.evaluate("told.textContent").asText());
        }
    }

    @Test
    void whatAPageComplainsOfIsHeard() {
        try (SiteServer server = SiteServer.of(SITE);
                Tab tab = Chromium.shared().tab()) {
            tab.go(server.url("faulty.html"));
            assertTrue(tab.complaints().stream().anyMatch(each -> each.contains("nowhere is not defined")));
            assertTrue(tab.complaints().stream().anyMatch(each -> each.contains("none.png")));
        }
    }
}
