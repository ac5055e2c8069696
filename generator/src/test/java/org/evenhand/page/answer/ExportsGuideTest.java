package org.evenhand.page.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Whether the guide to what can be taken into an article names files that the sample's site really has. */
class ExportsGuideTest {

    private static final Pattern NAMED = Pattern.compile("`(answers/[^`]+[^/`])`");

    @Test
    void everyFileThatTheGuideNamesIsInTheSite() throws IOException {
        String guide = Files.readString(Path.of("../docs/publishing.md"));
        List<String> named = NAMED.matcher(guide)
                .results()
                .map((MatchResult r) -> r.group(1))
                .toList();
        assertTrue(named.size() >= 10, "the guide names " + named);
        assertEquals(
                List.of(),
                named.stream()
                        .filter(file -> !SampleSite.FILES.containsKey(file))
                        .toList());
    }
}
