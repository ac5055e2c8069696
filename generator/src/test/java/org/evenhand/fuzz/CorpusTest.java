package org.evenhand.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.evenhand.log.LogFuzz;
import org.evenhand.page.TemplateFuzz;
import org.evenhand.prose.MarkdownFuzz;
import org.evenhand.quantity.QuantityFuzz;
import org.evenhand.quantity.UnitFuzz;
import org.evenhand.read.FrontMatterFuzz;
import org.evenhand.read.JsonFuzz;
import org.evenhand.read.YamlFuzz;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every reader takes the inputs that are kept, those on which one once stumbled among them.
 *
 * <p>How the same targets are run for long, with inputs that a fuzzer makes: docs/security.md.
 */
class CorpusTest {

    private static final Path CORPUS = Path.of("src/test/resources/fuzz");

    /** By the name of the folder that keeps its inputs. */
    private static final Map<String, Class<?>> TARGETS = new TreeMap<>(Map.of(
            "json", JsonFuzz.class,
            "yaml", YamlFuzz.class,
            "front-matter", FrontMatterFuzz.class,
            "log", LogFuzz.class,
            "quantity", QuantityFuzz.class,
            "unit", UnitFuzz.class,
            "markdown", MarkdownFuzz.class,
            "template", TemplateFuzz.class));

    @TestFactory
    Stream<DynamicTest> everyReaderTakesWhatIsKept() {
        return TARGETS.entrySet().stream()
                .flatMap(target -> inputs(target.getKey()).stream()
                        .map(input -> DynamicTest.dynamicTest(
                                target.getKey() + "/" + input.getFileName(),
                                () -> Assertions.assertTimeoutPreemptively(
                                        Duration.ofSeconds(20), () -> take(target.getValue(), input)))));
    }

    @Test
    void everyTargetHasInputsAndNoInputsLackATarget() throws IOException {
        try (Stream<Path> folders = Files.list(CORPUS)) {
            assertEquals(
                    List.copyOf(TARGETS.keySet()),
                    folders.map(f -> f.getFileName().toString()).sorted().toList());
        }
        TARGETS.keySet().forEach(name -> assertTrue(inputs(name).size() >= 5, name));
    }

    private static void take(Class<?> target, Path input) throws ReflectiveOperationException, IOException {
        Method method = target.getMethod("fuzzerTestOneInput", byte[].class);
        method.invoke(null, (Object) Files.readAllBytes(input));
    }

    private static List<Path> inputs(String name) {
        try (Stream<Path> files = Files.list(CORPUS.resolve(name))) {
            return files.sorted().toList();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
