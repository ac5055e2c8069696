package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import nu.validator.validation.SimpleDocumentValidator;
import org.junit.jupiter.api.Test;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** Every page of the sample against the HTML standard (whatwg.org), as the Nu HTML checker 26.5.2 holds it. */
class NuCheckerTest {

    private static final String SCHEMA = "http://s.validator.nu/html5-rdfalite.rnc";

    /** Pages are checked as if they were served: on other addresses the checker warns of style sheets it cannot tell. */
    private static final String BASE = "https://results.example.org/relay/";

    private static final class Complaints implements ErrorHandler {

        private final List<String> found = new ArrayList<>();
        private String page = "";

        @Override
        public void warning(SAXParseException e) {
            found.add(page + ":" + e.getLineNumber() + ": warning: " + e.getMessage());
        }

        @Override
        public void error(SAXParseException e) {
            found.add(page + ":" + e.getLineNumber() + ": error: " + e.getMessage());
        }

        @Override
        public void fatalError(SAXParseException e) {
            error(e);
        }
    }

    private final Complaints complaints = new Complaints();

    private SimpleDocumentValidator checker() throws Exception {
        SimpleDocumentValidator checker = new SimpleDocumentValidator();
        checker.setUpMainSchema(SCHEMA, complaints);
        checker.setUpValidatorAndParsers(complaints, false, false);
        return checker;
    }

    private void check(SimpleDocumentValidator checker, String path, byte[] html) throws Exception {
        complaints.page = path;
        InputSource source = new InputSource(new ByteArrayInputStream(html));
        source.setEncoding("UTF-8");
        source.setSystemId(BASE + path);
        checker.checkHtmlInputSource(source);
    }

    @Test
    void noPageOfTheSampleHasAnErrorOrAWarning() throws Exception {
        SimpleDocumentValidator checker = checker();
        for (String path : SampleSiteFiles.PAGES.keySet()) {
            check(checker, path, SampleSiteFiles.FILES.get(path));
        }
        assertEquals(List.of(), complaints.found);
    }

    /** That the checker looks at all. */
    @Test
    void aPageWithAFaultIsFound() throws Exception {
        byte[] page = SampleSiteFiles.text("index.html")
                .replace("</h1>", "</h1><p><div id=content></div><img src=x.png>")
                .getBytes(StandardCharsets.UTF_8);
        check(checker(), "index.html", page);
        assertTrue(complaints.found.size() >= 2, complaints.found::toString);
    }
}
