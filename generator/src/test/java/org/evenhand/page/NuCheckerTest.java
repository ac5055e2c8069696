package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every page of the sample against the HTML standard (whatwg.org), as the Nu HTML checker 26.5.2 holds it. */
class NuCheckerTest {

    private final NuChecker checker = new NuChecker();

    @Test
    void noPageOfTheSampleHasAnErrorOrAWarning() throws Exception {
        for (String path : SampleSiteFiles.PAGES.keySet()) {
            checker.check(path, SampleSiteFiles.FILES.get(path));
        }
        assertEquals(List.of(), checker.found());
    }

    /** That the checker looks at all. */
    @Test
    void aPageWithAFaultIsFound() throws Exception {
        byte[] page = SampleSiteFiles.text("index.html")
                .replace("</h1>", "</h1><p><div id=content></div><img src=x.png>")
                .getBytes(StandardCharsets.UTF_8);
        checker.check("index.html", page);
        assertTrue(checker.found().size() >= 2, () -> checker.found().toString());
    }
}
