package org.evenhand.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.evenhand.model.Limits;
import org.evenhand.model.Spelling;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Where the characters of a value stand, for each way to write one of YAML 1.1 (9.1, 9.2). The value itself is snakeyaml's, which
 * shares nothing with what is tested: each character is looked up in the file.
 */
class YamlSpellingTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a: >\n  One two\n  three.\n",
                "a: >-\n  One two\n  three.\n",
                "a: >+\n  One two\n  three.\n\n\nb: x\n",
                "a: >\n  One two\n\n  three.\n\n\n  four\n  five\n",
                "a: >\n\n  One two\n   more\n   indented\n  three\n",
                "a: >2\n    One two\n   three\n  four\n",
                "a: |\n  One two\n  three.\n",
                "a: |-\n  One two\n\n    three.\n",
                "a: |2\n    One\n  two\n",
                "a: | # remark\n    One\n    two\n",
                "a: |\n\n\n  One\n",
                "a: \"One \\\"two\\\" 5\\u00a0\\xb0C\\tend\"\n",
                "a: \"One \\\n   two\n   three \\\n   four\"\n",
                "a: \"One   \n\n   two\n   three\"\n",
                "a: 'One''s two'\n",
                "a: 'One''s two\n  three\n\n  four'\n",
                "a: One two\n  three\n\n  four\n",
                "b:\n  - x\n  - One two\n    three\nc: 1\n",
                "b:\n  - what: >\n      One two\n      three\n    why: |\n      four\n",
                "a: \"\\U0001F600 one \\\n two\"\n",
                "a: >\n  Grüße – 5 °C\n  und „mehr“\n",
            })
    void eachCharacterStandsWhereItIsSaidToStand(String file) throws UnreadableException {
        List<String> lines = file.lines().toList();
        int spelled = 0;
        for (Node.Text text : texts(YamlTree.read("f.yaml", file, 0, Limits.DEFAULT, new Faults()))) {
            if (text.verbatim()) {
                continue;
            }
            Spelling spelling = text.spelling().orElseThrow(() -> new AssertionError("no spelling: " + text.value()));
            assertEquals(text.value().length(), spelling.lines().length);
            for (int i = 0; i < text.value().length(); i++) {
                char c = text.value().charAt(i);
                if (spelling.lengths()[i] == 1) {
                    char there = lines.get(spelling.lines()[i] - 1).charAt(spelling.columns()[i] - 1);
                    assertEquals(c, there, text.value() + " at " + i);
                    spelled++;
                } else if (spelling.lengths()[i] == 0) {
                    assertTrue(Character.isWhitespace(c) || Character.isLowSurrogate(c), text.value() + " at " + i);
                } else {
                    char there = lines.get(spelling.lines()[i] - 1).charAt(spelling.columns()[i] - 1);
                    assertTrue(there == '\\' || there == '\'', text.value() + " at " + i);
                }
            }
        }
        assertTrue(spelled > 2, "something was looked at");
    }

    /** Where each blank, or each line, made the rest be looked through, these took minutes. */
    @ParameterizedTest
    @MethodSource("longValues")
    void aLongValueTakesATimeInProportion(String file) {
        assertTimeoutPreemptively(
                Duration.ofSeconds(20), () -> YamlTree.read("f.yaml", file, 0, Limits.DEFAULT, new Faults()));
    }

    static Stream<String> longValues() {
        return Stream.of(
                "a: \"x" + " ".repeat(900_000) + "y\n  z\"\n",
                "a: |\n" + "  x\n".repeat(400_000),
                "a: >\n" + "  x\n".repeat(400_000),
                "a: |\n" + "\n".repeat(900_000) + "  x\n");
    }

    private static List<Node.Text> texts(Node node) {
        if (node instanceof Node.Mapping mapping) {
            return mapping.entries().values().stream()
                    .flatMap(entry -> texts(entry.value()).stream())
                    .toList();
        }
        return node instanceof Node.Sequence sequence
                ? sequence.elements().stream()
                        .flatMap(element -> texts(element).stream())
                        .toList()
                : List.of((Node.Text) node);
    }
}
