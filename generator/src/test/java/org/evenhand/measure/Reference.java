package org.evenhand.measure;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The independent check values; their sources stand in the file, and in its README. */
public final class Reference {

    private Reference() {}

    /** The cases of a method. */
    public static List<JsonNode> cases(String method) {
        try (InputStream in = Reference.class.getResourceAsStream("/reference/open.json")) {
            List<JsonNode> cases = new ArrayList<>();
            for (JsonNode node : new ObjectMapper().readTree(in)) {
                if (node.get("method").asText().equals(method)) {
                    cases.add(node);
                }
            }
            return cases;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static JsonNode oneCase(String method, String id) {
        return cases(method).stream()
                .filter(node -> node.get("id").asText().equals(id))
                .findFirst()
                .orElseThrow();
    }

    static double[] numbers(JsonNode array) {
        double[] numbers = new double[array.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = array.get(i).asDouble();
        }
        return numbers;
    }

    static double[] column(String file, String name) {
        try (InputStream in = Reference.class.getResourceAsStream("/reference/" + file)) {
            List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            int at = List.of(lines.get(0).split(",")).indexOf(name);
            return lines.stream()
                    .skip(1)
                    .mapToDouble(line -> Double.parseDouble(line.split(",")[at]))
                    .toArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
