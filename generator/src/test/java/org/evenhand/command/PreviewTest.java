package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.evenhand.cache.Cache;
import org.evenhand.check.FolderChecker;
import org.evenhand.command.preview.Preview;
import org.evenhand.command.preview.Renewal;
import org.evenhand.model.Limits;
import org.evenhand.page.Pages;
import org.evenhand.page.Templates;
import org.evenhand.page.overview.Headers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is answered and what is refused: RFC 9110 (statuses, methods, Host), RFC 9112 (request targets). */
class PreviewTest {

    private static final String ANSWER = "/answers/plate/index.html";

    @TempDir
    private Path root;

    private Given given;
    private Preview preview;
    private Browsing browser;

    @BeforeEach
    void begin() throws IOException {
        given = Given.soundFolderIn(root.resolve("results"));
        preview =
                new Preview(given.root(), Optional.empty(), Limits.DEFAULT, "x", 0, Cache.none(), PreviewTest::ignore);
        browser = new Browsing(preview.address());
    }

    @AfterEach
    void end() {
        preview.close();
    }

    private static void ignore(Renewal renewal) {
        assertTrue(renewal.ms() >= 0);
    }

    @Test
    void everyFileOfTheSiteIsServedAsItWouldBePublishedAndPagesButForTheAdditions() {
        preview.begin();
        Map<String, byte[]> site = new ConcurrentHashMap<>();
        Pages.build(FolderChecker.check(given.root()), given.root(), Templates.bundled(), "x", site::put);
        for (Map.Entry<String, byte[]> file : new TreeMap<>(site).entrySet()) {
            HttpResponse<String> answer = browser.get("/" + file.getKey());
            assertEquals(200, answer.statusCode(), file.getKey());
            String body = answer.body();
            if (file.getKey().endsWith(".html")) {
                assertTrue(body.contains("; connect-src 'self'\""), "the policy of " + file.getKey());
                body = body.replaceFirst("; connect-src 'self'\"", "\"")
                        .replaceFirst("(?s)<link rel=\"icon\".*?</script>\n", "");
            }
            assertEquals(new String(file.getValue(), java.nio.charset.StandardCharsets.UTF_8), body, file.getKey());
        }
    }

    @Test
    void aFolderMeansItsIndexAndIsNeverListed() {
        preview.begin();
        assertEquals(browser.get("/index.html").body(), browser.get("/").body());
        assertEquals(browser.get(ANSWER).body(), browser.get("/answers/plate/").body());
        assertEquals(404, browser.get("/answers/").statusCode());
        assertEquals(404, browser.get("/answers/plate").statusCode());
        assertEquals(404, browser.get("/assets/").statusCode());
    }

    @Test
    void aChangeShowsOnTheNextLookAndNoOlderPageIsGivenAgain() {
        preview.begin();
        String before = browser.get(ANSWER).body();
        assertTrue(before.contains("Does the plate keep it cooler?"));
        given.replacing("studies/plate/study.md", "keep it cooler", "keep it quiet");
        browser.editionAfter(Browsing.edition(before));
        String after = browser.get(ANSWER).body();
        assertTrue(after.contains("Does the plate keep it quiet?"), after);
        assertTrue(browser.get("/").body().contains("keep it quiet"));
    }

    @Test
    void anErrorStandsOnEveryPageAndGoesAgain() {
        preview.begin();
        assertFalse(browser.get("/").body().contains("<aside class=\"evenhand-preview\""));
        given.replacing("studies/plate/runs/none-1.json", "\"run\": \"none-1\"", "\"run\": \"none-9\"");
        String page = browser.until("/", "<aside class=\"evenhand-preview\"");
        assertTrue(page.contains("studies/plate/runs/none-1.json"), page);
        assertTrue(browser.get("/.preview/findings").body().contains("studies/plate/runs/none-1.json"));
        given.replacing("studies/plate/runs/none-1.json", "\"run\": \"none-9\"", "\"run\": \"none-1\"");
        String mended = browser.get("/").body();
        while (mended.contains("<aside")) {
            browser.editionAfter(Browsing.edition(mended));
            mended = browser.get("/").body();
        }
        assertTrue(browser.get(ANSWER).body().contains("comparison.plate-rise"));
    }

    @Test
    void aFolderThatCannotBeUsedLeavesTheLastSiteInSightAndSaysSo() {
        preview.begin();
        String good = given.text("publication.yaml");
        given.writing("publication.yaml", "title: [");
        String page = browser.until(ANSWER, "nothing can be published");
        assertTrue(page.contains("comparison.plate-rise"), page);
        assertTrue(page.contains("What you see is the site as of "), page);
        given.writing("publication.yaml", good.replace("title: Trials", "title: Mended trials"));
        assertFalse(browser.until(ANSWER, "Mended trials").contains("<aside"));
    }

    @Test
    void aFolderThatNeverCouldBeUsedIsShownByItsErrorsUntilItCan() {
        String good = given.text("publication.yaml");
        given.writing("publication.yaml", "title: <script>alert(1)</script> [");
        preview.begin();
        HttpResponse<String> answer = browser.get("/");
        assertEquals(503, answer.statusCode());
        assertTrue(answer.body().contains("publication.yaml"), answer.body());
        assertFalse(answer.body().contains("<script>"), answer.body());
        given.writing("publication.yaml", good);
        browser.until("/", "Does the plate keep it cooler?");
    }

    @Test
    void whoeverAsksBeforeTheFolderIsReadIsToldAndWaits() {
        HttpResponse<String> early = browser.get("/");
        assertEquals(503, early.statusCode());
        assertTrue(early.body().contains("The folder is being read."), early.body());
        preview.begin();
        assertNotEquals(Browsing.edition(early.body()), browser.editionAfter(Browsing.edition(early.body())));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Host: attacker.example:PORT",
                "Host: attacker.example",
                "Host: 127.0.0.1",
                "Host: localhost",
                "Host: 127.0.0.1:1",
                "Host: 127.0.0.1:0PORT",
                "Host: 127.0.0.1:PORT.attacker.example",
                "Host: attacker.example#127.0.0.1:PORT",
                "Host: user@127.0.0.1:PORT",
                "Host: localhost.:PORT",
                "Host: localhost.attacker.example:PORT",
                "Host: 127.0.0.1.nip.example:PORT",
                "Host: 127.1:PORT",
                "Host: 2130706433:PORT",
                "Host: 0.0.0.0:PORT",
                "Host: [::]:PORT",
                "Host: [::ffff:127.0.0.1]:PORT",
                "Host: [0:0:0:0:0:0:0:1]:PORT",
                "Host: ::1:PORT",
                "Host: [::1]",
                "Host: [::1%25lo]:PORT",
                "Host:",
                "X-Forwarded-Host: localhost:PORT",
                "Host: localhost:PORT\r\nHost: attacker.example:PORT",
                "Host: localhost:PORT\r\nHost: localhost:PORT"
            })
    void aRequestThatIsNotMeantForThisMachineIsMisdirected(String header) throws IOException {
        preview.begin();
        String port = Integer.toString(browser.port());
        for (String target : List.of("/", "/.preview/next?after=x", "/.preview/findings")) {
            String request = "GET " + target + " HTTP/1.1\r\n" + header.replace("PORT", port) + "\r\n\r\n";
            String answer = browser.raw(request);
            assertTrue(answer.startsWith("HTTP/1.1 421 "), answer);
            assertFalse(answer.contains("plate"), answer);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1:PORT", "localhost:PORT", "LocalHost:PORT", "[::1]:PORT"})
    void theNamesOfThisMachineAreLetIn(String host) throws IOException {
        preview.begin();
        assertEquals(200, browser.status(request("GET", "/", "Host: " + host)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST", "PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "PROPFIND", "get"})
    void nothingButReadingIsAllowed(String method) throws IOException {
        preview.begin();
        String answer = browser.raw(request(method, "/", "Host: localhost:PORT"));
        assertTrue(answer.startsWith("HTTP/1.1 405 "), answer);
        assertTrue(answer.contains("\r\nAllow: GET, HEAD\r\n"), answer);
    }

    @Test
    void headTellsTheLengthAndSendsNoBody() throws IOException {
        preview.begin();
        String answer = browser.raw(request("HEAD", "/", "Host: localhost:PORT\r\nConnection: close"));
        int length = browser.get("/").body().getBytes(java.nio.charset.StandardCharsets.UTF_8).length;
        assertTrue(answer.startsWith("HTTP/1.1 200 "), answer);
        assertTrue(
                answer.toLowerCase(java.util.Locale.ROOT).contains("\r\ncontent-length: " + length + "\r\n"), answer);
        assertTrue(answer.endsWith("\r\n\r\n"), answer);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/../publication.yaml",
                "/../../../../../../etc/passwd",
                "/answers/../../results/publication.yaml",
                "/%2e%2e/publication.yaml",
                "/..%2fpublication.yaml",
                "/%2e%2e%2fpublication.yaml",
                "/%252e%252e/publication.yaml",
                "/%c0%ae%c0%ae/publication.yaml",
                "/..%5cpublication.yaml",
                "/..\\publication.yaml",
                "/./index.html",
                "//etc/passwd",
                "///etc/passwd",
                "/%2fetc/passwd",
                "/publication.yaml",
                "/index.html%00",
                "/index.html%00.css",
                "/.preview/../index.html",
                "/.preview/renew.js/",
                "/.preview/",
                "/.preview/preview.class",
                "http://attacker.example/",
                "file:///etc/passwd",
                "*",
                "/a b",
                "/%",
                ""
            })
    void noPathLeadsOutOfTheSite(String target) throws IOException {
        preview.begin();
        String answer = browser.raw(request("GET", target, "Host: localhost:PORT\r\nConnection: close"));
        int status = answer.startsWith("HTTP/1.1 ") ? Integer.parseInt(answer.substring(9, 12)) : 0;
        assertTrue(List.of(0, 400, 404).contains(status), answer);
        assertFalse(answer.contains("base-url") || answer.contains("root:"), answer);
    }

    @Test
    void aRequestWithABodyAndOneThatIsNoneAreRefused() throws IOException {
        preview.begin();
        String host = "Host: localhost:PORT\r\n";
        assertEquals(400, browser.status(request("GET", "/", host + "Content-Length: 3") + "abc"));
        assertEquals(400, browser.status(request("GET", "/", host + "Transfer-Encoding: chunked") + "0\r\n\r\n"));
        assertTrue(List.of(0, 400).contains(browser.status("nonsense\r\n\r\n")));
        assertTrue(List.of(0, 400).contains(browser.status("\u0016\u0003\u0001\u0002\u0000\r\n\r\n")));
        assertEquals(200, browser.get("/").statusCode());
    }

    @Test
    void anotherSiteMayLinkHereAndNotDrawOnIt() throws IOException {
        preview.begin();
        for (String site : List.of("cross-site", "same-site")) {
            String from =
                    "Host: localhost:PORT\r\nConnection: close\r\nSec-Fetch-Site: " + site + "\r\nSec-Fetch-Mode: ";
            assertEquals(200, browser.status(request("GET", "/", from + "navigate")));
            assertEquals(403, browser.status(request("GET", "/", from + "no-cors")));
            assertEquals(403, browser.status(request("GET", "/answers/plate/evidence.json", from + "cors")));
        }
    }

    @Test
    void everyAnswerCarriesTheHeadersOfThePublishedSite() {
        preview.begin();
        for (String path :
                List.of("/", "/assets/evenhand.css", "/nowhere", "/.preview/findings", "/.preview/renew.js")) {
            HttpResponse<String> answer = browser.get(path);
            String policy =
                    answer.headers().firstValue("Content-Security-Policy").orElseThrow();
            for (String directive : Headers.POLICY.split("; ")) {
                assertTrue(directive.startsWith("script-src") || policy.contains(directive), path + ": " + policy);
            }
            assertTrue(policy.endsWith("; frame-ancestors 'none'"), policy);
            assertFalse(policy.contains("unsafe"), policy);
            assertEquals(
                    "nosniff",
                    answer.headers().firstValue("X-Content-Type-Options").orElseThrow());
            assertEquals(
                    "no-store", answer.headers().firstValue("Cache-Control").orElseThrow());
            assertTrue(
                    answer.headers().firstValue("Access-Control-Allow-Origin").isEmpty(), path);
        }
    }

    @Test
    void mediaTypesAreThoseOfTheRegistry() {
        preview.begin();
        Map.of(
                        "/", "text/html; charset=utf-8",
                        "/assets/evenhand.css", "text/css; charset=utf-8",
                        "/.preview/renew.js", "text/javascript; charset=utf-8",
                        "/answers/plate/evidence.json", "application/json; charset=utf-8",
                        "/runs/plate/none-1/none-1.csv", "text/csv; charset=utf-8",
                        "/assets/fonts/archivo-latin.woff2", "font/woff2")
                .forEach((path, type) -> assertEquals(
                        type,
                        browser.get(path).headers().firstValue("Content-Type").orElse(""),
                        path));
    }

    @Test
    void noOtherAddressOfThisMachineIsListenedOn() throws IOException {
        for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            for (InetAddress address : Collections.list(card.getInetAddresses())) {
                if (!address.isLoopbackAddress()) {
                    assertFalse(isOpen(address), address.toString());
                }
            }
        }
        assertTrue(isOpen(InetAddress.getByName("127.0.0.1")));
    }

    private boolean isOpen(InetAddress address) {
        try (Socket socket = new Socket(address, browser.port())) {
            return socket.isConnected();
        } catch (IOException e) {
            return false;
        }
    }

    @Test
    void nothingIsWrittenIntoTheFolder() throws IOException {
        Map<String, byte[]> before = files();
        preview.begin();
        browser.get(ANSWER);
        browser.get("/ro-crate-metadata.json");
        Map<String, byte[]> after = files();
        assertEquals(before.keySet(), after.keySet());
        before.forEach(
                (name, bytes) -> assertEquals(List.of(name, bytes.length), List.of(name, after.get(name).length)));
    }

    private Map<String, byte[]> files() throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (var all = Files.walk(root)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(root.relativize(file).toString(), Files.readAllBytes(file));
            }
        }
        return files;
    }

    private String request(String method, String target, String headers) {
        return method + " " + target + " HTTP/1.1\r\n" + headers.replace("PORT", Integer.toString(browser.port()))
                + "\r\n\r\n";
    }
}
