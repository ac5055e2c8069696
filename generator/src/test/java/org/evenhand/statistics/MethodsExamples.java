package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads the fenced blocks of {@code docs/methods.md}. The line that opens a block names its kind and {@code name=…}; each further
 * line is {@code key = value} or {@code key = value value …}.
 */
public final class MethodsExamples {

    public record Block(String name, Map<String, String> entries) {

        public String word(String key) {
            String value = entries.get(key);
            return value == null ? fail(name + " has no " + key) : value;
        }

        public double number(String key) {
            return Double.parseDouble(word(key));
        }

        public double[] numbers(String key) {
            return java.util.Arrays.stream(word(key).split("\\s+"))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private MethodsExamples() {}

    public static List<Block> blocks(String kind) {
        List<Block> blocks = new ArrayList<>();
        Block open = null;
        for (String line : lines()) {
            if (line.startsWith("```" + kind + " name=")) {
                open = new Block(line.substring(line.indexOf('=') + 1).strip(), new LinkedHashMap<>());
            } else if (line.startsWith("```")) {
                if (open != null) {
                    blocks.add(open);
                }
                open = null;
            } else if (open != null && line.contains("=")) {
                open.entries()
                        .put(
                                line.substring(0, line.indexOf('=')).strip(),
                                line.substring(line.indexOf('=') + 1).strip());
            }
        }
        return blocks;
    }

    private static List<String> lines() {
        Path root = Path.of(System.getProperty("evenhand.root", ".."));
        try {
            return Files.readAllLines(root.resolve("docs").resolve("methods.md"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
