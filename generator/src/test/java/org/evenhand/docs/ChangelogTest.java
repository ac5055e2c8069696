package org.evenhand.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page of changes says of each version first which published figures move, and is not a version behind. */
class ChangelogTest {

    private static final String CHANGES = Guide.read("docs/CHANGELOG.md").text();
    private static final Pattern VERSION = Pattern.compile("(?m)^## (\\d+\\.\\d+\\.\\d+)$");

    @Test
    void theVersionAtTheTopIsThatOfTheProgram() {
        Matcher project = Pattern.compile("<version>([^<]*)</version>")
                .matcher(Guide.read("pom.xml").text());
        Matcher top = VERSION.matcher(CHANGES);
        assertTrue(project.find() && top.find());
        assertEquals(project.group(1).replace("-SNAPSHOT", ""), top.group(1));
    }

    @Test
    void everyVersionBeginsWithTheFiguresThatMove() {
        List<String> versions =
                VERSION.splitAsStream(CHANGES).skip(1).map(String::strip).toList();
        assertTrue(!versions.isEmpty());
        versions.forEach(text ->
                assertTrue(text.matches("(?s)### Published figures that move\\s+(?:None|- |\\w).*"), () -> text));
    }
}
