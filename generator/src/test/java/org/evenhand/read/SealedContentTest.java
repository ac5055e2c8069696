package org.evenhand.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files of a sealed folder that somebody else may have written: what could run is not put onto a site. */
class SealedContentTest {

    private static final String PAGE =
            "<!DOCTYPE html><html lang=\"en\"><head><meta http-equiv=\"Content-Security-Policy\" content=\"default-src"
                    + " 'none'; style-src 'self'\"><title>x</title></head><body><p>T &lt; 85 °C</p>%s</body></html>";

    private static String ofPage(String body) {
        return SealedContent.fault("answers/a/v/1/index.html", String.format(PAGE, body));
    }

    private static String ofDrawing(String content) {
        return SealedContent.fault(
                "answers/a/v/1/chart.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\">" + content + "</svg>");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>x()</script>",
                "<path d=\"M0 0\" onload=\"x()\"/>",
                "<g ONCLICK=x()/>",
                "<g/onclick=x()>",
                "<foreignObject><p>x</p></foreignObject>",
                "<a href=\"javascript:x()\">x</a>",
                "<a xlink:href=\"java&#115;cript:x()\">x</a>",
                "<image href='data:image/svg+xml,x'/>",
                "<animate attributeName=\"href\" values=\"javascript:x()\"/>",
                "<set attributeName=\"href\" to=\"javascript:x()\"/>",
                "<iframe src=\"x.html\"></iframe>",
                "<object data=\"x.svg\"></object>",
                "<embed src=\"x.svg\">",
                "<form action=\"x\"></form>",
                "<base href=\"https://elsewhere.example/\">",
                "<meta http-equiv=\"refresh\" content=\"0\">",
                "<p title=\"x>",
                "<p <script>x()</script>",
                "<p id=x"
            })
    void whatCouldRunIsRefusedOnPagesAndInDrawings(String content) {
        assertEquals(" holds something that could run in a reader's browser", ofPage(content), content);
        assertEquals(" holds something that could run in a reader's browser", ofDrawing(content), content);
    }

    @Test
    void aDocumentTypeWithEntitiesIsRefused() {
        String text = "<!DOCTYPE svg [<!ENTITY a \"x\">]><svg xmlns=\"http://www.w3.org/2000/svg\">&a;</svg>";
        assertTrue(SealedContent.fault("a.svg", text).contains("could run"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<title>A chart</title><path class=\"c-ink-s\" d=\"M0 0 L1 1\"/>",
                "<use href=\"#a\"/>",
                "<a href=\"../../items/board/index.html#limits\">the board</a>",
                "<a href=\"https://results.example.org/\">x</a>",
                "<a href=\"mailto:trials@results.example.org\">x</a>",
                "<p>onclick=x() as words, and javascript: too</p>",
                "<p title=\"set on = off\">x</p>"
            })
    void whatIsOnlyShownIsNot(String content) {
        assertEquals("", ofPage(content), content);
        assertEquals("", ofDrawing(content), content);
    }

    @Test
    void aPageHasToCarryThePolicyAndAFileToBeOfAKnownKind() {
        assertTrue(SealedContent.fault("a/index.html", "<p>x</p>").contains("lacks the policy"));
        assertTrue(SealedContent.fault("a/x.html", String.format(PAGE, "")).contains("lacks the policy"));
        assertTrue(SealedContent.fault("a/x.js", "").contains("no kind that is sealed"));
        assertEquals("", SealedContent.fault("a/x.csv", "<script>"));
    }

    @Test
    void aPageThatIsMadeToTakeTimeDoesNot() {
        for (String part : new String[] {"<a ", "<", "<a\"", "<a on", "<!ENTITY"}) {
            String text = part.repeat(4_000_000 / part.length());
            assertTimeoutPreemptively(Duration.ofSeconds(20), () -> ofPage(text));
        }
    }
}
