package org.evenhand.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.Optional;
import org.evenhand.model.Seal.Flaw;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files of a sealed folder that somebody else may have written: what could run is not put onto a site. */
class SealedContentTest {

    private static final String PAGE =
            "<!DOCTYPE html><html lang=\"en\"><head><meta http-equiv=\"Content-Security-Policy\" content=\"default-src"
                    + " 'none'; style-src 'self'\"><title>x</title></head><body><p>T &lt; 85 °C</p>%s</body></html>";

    private static Optional<Flaw> ofPage(String body) {
        return SealedContent.flaw("answers/a/v/1/index.html", String.format(PAGE, body));
    }

    private static Optional<Flaw> ofDrawing(String content) {
        return SealedContent.flaw(
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
        assertEquals(Optional.of(Flaw.ACTIVE), ofPage(content), content);
        assertEquals(Optional.of(Flaw.ACTIVE), ofDrawing(content), content);
    }

    @Test
    void aDocumentTypeWithEntitiesIsRefused() {
        String text = "<!DOCTYPE svg [<!ENTITY a \"x\">]><svg xmlns=\"http://www.w3.org/2000/svg\">&a;</svg>";
        assertEquals(Optional.of(Flaw.ACTIVE), SealedContent.flaw("a.svg", text));
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
        assertEquals(Optional.empty(), ofPage(content), content);
        assertEquals(Optional.empty(), ofDrawing(content), content);
    }

    @Test
    void aPageHasToCarryThePolicyAndAFileToBeOfAKnownKind() {
        assertEquals(Optional.of(Flaw.WITHOUT_POLICY), SealedContent.flaw("a/index.html", "<p>x</p>"));
        assertEquals(Optional.of(Flaw.WITHOUT_POLICY), SealedContent.flaw("a/x.html", String.format(PAGE, "")));
        assertEquals(Optional.of(Flaw.KIND), SealedContent.flaw("a/x.js", ""));
        assertEquals(Optional.empty(), SealedContent.flaw("a/x.csv", "<script>"));
    }

    @Test
    void aPageThatIsMadeToTakeTimeDoesNot() {
        for (String part : new String[] {"<a ", "<", "<a\"", "<a on", "<!ENTITY"}) {
            String text = part.repeat(4_000_000 / part.length());
            assertTimeoutPreemptively(Duration.ofSeconds(20), () -> ofPage(text));
        }
    }
}
