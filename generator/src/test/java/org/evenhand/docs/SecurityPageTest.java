package org.evenhand.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Each gate of the page on security has tests that shut it and tests that it lets through, and these exist. */
class SecurityPageTest {

    private static final Pattern REFERENCE = Pattern.compile("(case )?`([\\w/-]+)(?:\\.(\\w+))?`");
    private static final Path RULES = Path.of("src/test/resources/rules");

    private static List<String[]> gates() {
        String text = Guide.read("docs/security.md").text();
        String table = text.substring(text.indexOf("<!-- the gates begin -->"), text.indexOf("<!-- the gates end -->"));
        return table.lines()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| ---") && !line.startsWith("| gate"))
                .map(line -> line.substring(2, line.length() - 2).split(" \\| "))
                .toList();
    }

    private static Map<String, String> sources() throws IOException {
        Map<String, String> sources = new TreeMap<>();
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith("Test.java")).toList()) {
                sources.put(file.getFileName().toString().replace(".java", ""), Files.readString(file));
            }
        }
        return sources;
    }

    @Test
    void everyTestThatAGateNamesExists() throws IOException {
        Map<String, String> sources = sources();
        List<String> missing = new ArrayList<>();
        for (String[] gate : gates()) {
            assertEquals(3, gate.length, gate[0]);
            for (int side = 1; side < 3; side++) {
                Matcher reference = REFERENCE.matcher(gate[side]);
                assertTrue(reference.find(), gate[0] + " has no test");
                do {
                    boolean exists = reference.group(1) != null
                            ? Files.isRegularFile(
                                    RULES.resolve(reference.group(2)).resolve("expected.txt"))
                            : isTest(sources.get(reference.group(2)), reference.group(3));
                    if (!exists) {
                        missing.add(gate[0] + ": " + reference.group());
                    }
                } while (reference.find());
            }
        }
        assertEquals(List.of(), missing);
        assertTrue(gates().size() >= 15, "gates: " + gates().size());
    }

    /** @param method may be absent: then the whole class is meant */
    private static boolean isTest(String source, String method) {
        return source != null
                && source.contains("Test")
                && (method == null || source.contains(" void " + method + "("));
    }

    @Test
    void aTestThatIsNotThereIsMissed() throws IOException {
        assertFalse(isTest(sources().get("NoSuchTest"), "x"));
        assertFalse(isTest(sources().get("ProseTest"), "noSuchMethod"));
        assertTrue(isTest(sources().get("ProseTest"), "lessThanIsText"));
    }
}
