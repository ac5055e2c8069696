package org.evenhand.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every language says all that the program asks for, with the same arguments, and nothing besides. */
class BundlesTest {
    private static final Path BUNDLES = Path.of("src/main/resources/org/evenhand/words");
    private static final List<Path> SPEAKING = List.of(Path.of("src/main/java"), Path.of("../templates"));

    /** A key in code or in a template; the beginning of one, to which the rest is added, ends in a dot or a hyphen. */
    private static final Pattern LITERAL = Pattern.compile("\"([a-z][a-z0-9-]*(?:\\.[A-Za-z0-9-]+)*[.-]?)\"");

    private static final Pattern SAID = Pattern.compile("\\b(?:say|has)\\(\\s*\"([^\".]+\\.[^\"]*)\"");

    private static final Set<String> LITERALS = found(LITERAL);

    @Test
    void allLanguagesHaveTheSameKeysInTheSameRoomsWithTheSameArguments() throws IOException {
        Map<String, Integer> english = arguments("en");
        assertTrue(english.size() > 20, "the bundles were not found");
        for (String other : Words.LANGUAGES) {
            assertEquals(lines(english), lines(arguments(other)), other);
        }
    }

    @Test
    void everyLanguageThatHasAFolderIsSpoken() throws IOException {
        try (Stream<Path> folders = Files.list(BUNDLES)) {
            assertEquals(
                    new TreeSet<>(Words.LANGUAGES),
                    folders.map(f -> f.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new)));
        }
    }

    @Test
    void everyKeyIsInTheRoomThatItNames() throws IOException {
        for (String language : Words.LANGUAGES) {
            for (String room : rooms(language)) {
                Set<String> keys = Bundle.read(language, room).keySet();
                assertFalse(keys.isEmpty(), language + "/" + room);
                keys.forEach(key -> assertTrue(key.startsWith(room + "."), language + "/" + room + ": " + key));
            }
        }
    }

    @Test
    void everyKeyThatIsAskedForExists() throws IOException {
        Set<String> keys = arguments("en").keySet();
        Set<String> missing = found(SAID);
        missing.removeIf(asked -> keys.contains(asked) || keys.stream().anyMatch(k -> isBeginning(asked, k)));
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyKeyThatExistsIsAskedFor() throws IOException {
        Set<String> unused = new TreeSet<>(arguments("en").keySet());
        unused.removeIf(key -> LITERALS.contains(key) || LITERALS.stream().anyMatch(l -> isBeginning(l, key)));
        assertEquals(Set.of(), unused);
    }

    private static boolean isBeginning(String literal, String key) {
        return literal.contains(".") && (literal.endsWith(".") || literal.endsWith("-")) && key.startsWith(literal);
    }

    private static Set<String> lines(Map<String, Integer> arguments) {
        return arguments.entrySet().stream()
                .map(e -> e.getKey() + " takes " + e.getValue())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Map<String, Integer> arguments(String language) throws IOException {
        Map<String, Integer> arguments = new TreeMap<>();
        for (String room : rooms(language)) {
            Bundle.read(language, room).forEach((key, message) -> arguments.put(key, message.arguments()));
        }
        return arguments;
    }

    private static List<String> rooms(String language) throws IOException {
        try (Stream<Path> files = Files.list(BUNDLES.resolve(language))) {
            return files.map(f -> f.getFileName().toString().replace(".properties", ""))
                    .sorted()
                    .toList();
        }
    }

    private static Set<String> found(Pattern pattern) {
        Set<String> found = new TreeSet<>();
        for (Path root : SPEAKING) {
            try (Stream<Path> files = Files.walk(root)) {
                for (Path file : files.filter(f -> f.toString().matches(".*\\.(java|ftlh)"))
                        .toList()) {
                    pattern.matcher(Files.readString(file))
                            .results()
                            .map((MatchResult r) -> r.group(1))
                            .forEach(found::add);
                }
            } catch (IOException cause) {
                throw new java.io.UncheckedIOException(cause);
            }
        }
        return found;
    }
}
