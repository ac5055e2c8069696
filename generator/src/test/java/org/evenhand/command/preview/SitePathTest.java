package org.evenhand.command.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected values by hand from RFC 3986, 2.1 (percent-encoding), 3.3 (segments), and RFC 3629 (what is no UTF-8). */
class SitePathTest {

    @ParameterizedTest
    @CsvSource({
        "/, index.html",
        "/index.html, index.html",
        "/answers/plate/, answers/plate/index.html",
        "/runs/plate/none-1/none-1.csv, runs/plate/none-1/none-1.csv",
        "/runs/a%20b/gr%C3%BC%c3%9fe.csv, runs/a b/grüße.csv",
        "/100%25, 100%",
        "/%69ndex.html, index.html",
        "/a..b/...x, a..b/...x"
    })
    void aPathNamesAFile(String raw, String path) {
        assertEquals(Optional.of(path), SitePath.of(raw));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/..",
                "/../x",
                "/a/../../x",
                "/./x",
                "//x",
                "/a//x",
                "/%2e%2e/x",
                "/%2E./x",
                "/a%2fx",
                "/a%2F..%2Fx",
                "/..%5cx",
                "/a\\x",
                "/a%00",
                "/a%0ax",
                "/a%",
                "/a%2",
                "/a%zz",
                "/a%-1",
                "/a%c3",
                "/%c0%ae%c0%ae/x",
                "/%ed%a0%80",
                "/%252e%252e%252f%00"
            })
    void whatCouldLeadElsewhereNamesNone(String raw) {
        assertEquals(Optional.empty(), SitePath.of(raw));
    }
}
