package org.evenhand.page;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import nu.validator.validation.SimpleDocumentValidator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Holds pages against the HTML standard (whatwg.org), as the Nu HTML checker 26.5.2 does. */
public final class NuChecker {

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
    private final SimpleDocumentValidator checker = new SimpleDocumentValidator();

    public NuChecker() {
        try {
            checker.setUpMainSchema(SCHEMA, complaints);
            checker.setUpValidatorAndParsers(complaints, false, false);
        } catch (Exception e) { // the library declares no narrower one
            throw new IllegalStateException(e);
        }
    }

    /** Checks a page; its path stands in front of what is found. */
    public void check(String path, byte[] html) {
        complaints.page = path;
        InputSource source = new InputSource(new ByteArrayInputStream(html));
        source.setEncoding("UTF-8");
        source.setSystemId(BASE + path);
        try {
            checker.checkHtmlInputSource(source);
        } catch (java.io.IOException | SAXException e) {
            throw new IllegalStateException(path, e);
        }
    }

    /** Errors and warnings so far. */
    public List<String> found() {
        return List.copyOf(complaints.found);
    }
}
