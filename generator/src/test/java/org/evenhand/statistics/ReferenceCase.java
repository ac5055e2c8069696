package org.evenhand.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.StreamSupport;

/** One case of {@code reference/open.json}. It remembers which expected values were checked, so that none is passed over. */
final class ReferenceCase {

    /** For a full-precision value whose case states a tolerance for other names only. */
    private static final double USUAL_RELATIVE = 1e-9;

    /** Values printed with fewer digits than the tolerance of their case allows for: half of the last digit. */
    private static final Map<String, Double> PRINTED_SHORTER =
            Map.of("welch-sleep/df", 5e-4, "line-zarr13-drift/p_slope", 5e-5);

    private final JsonNode node;
    private final Set<String> unchecked = new TreeSet<>();

    private ReferenceCase(JsonNode node) {
        this.node = node;
        collect(node.path("expected"), "");
        collect(node.path("expected_computed"), "");
        unchecked.remove("/provenance");
    }

    static List<ReferenceCase> all() {
        try (InputStream in = ReferenceCase.class.getResourceAsStream("/reference/open.json")) {
            JsonNode root = new ObjectMapper().readTree(in);
            return StreamSupport.stream(root.spliterator(), false)
                    .map(ReferenceCase::new)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String id() {
        return node.get("id").asText();
    }

    String method() {
        return node.get("method").asText();
    }

    @Override
    public String toString() {
        return id() + ": " + node.get("source").asText() + " ("
                + node.get("provenance").asText() + ")";
    }

    JsonNode in(String name) {
        JsonNode value = node.get("inputs").get(name);
        return value == null ? fail(id() + " has no input " + name) : value;
    }

    boolean has(String input) {
        return node.get("inputs").has(input);
    }

    double number(String name) {
        return in(name).asDouble();
    }

    double number(String name, double otherwise) {
        return has(name) ? number(name) : otherwise;
    }

    double[] numbers(String name) {
        return numbers(in(name));
    }

    static double[] numbers(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false)
                .mapToDouble(JsonNode::asDouble)
                .toArray();
    }

    JsonNode expected(String pointer) {
        return node.get("expected").at(pointer);
    }

    double expectedNumber(String name) {
        return node.get("expected").get(name).asDouble();
    }

    /** The named column of the case's data file, as numbers. */
    double[] column(String name) {
        return text(name).stream().mapToDouble(Double::parseDouble).toArray();
    }

    /** The named column of the case's data file. */
    List<String> text(String name) {
        String path = "/reference/" + in("csv").asText();
        try (BufferedReader reader = new BufferedReader(
                new InputStreamReader(ReferenceCase.class.getResourceAsStream(path), StandardCharsets.UTF_8))) {
            int index = Arrays.asList(reader.readLine().split(",")).indexOf(name);
            List<String> values = new ArrayList<>();
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                values.add(line.split(",")[index]);
            }
            return values;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void check(String name, OptionalDouble actual) {
        checkAt("/" + name, actual);
    }

    void check(String name, double actual) {
        checkAt("/" + name, OptionalDouble.of(actual));
    }

    void check(String name, double[] actual) {
        for (int i = 0; i < actual.length; i++) {
            checkAt("/" + name + "/" + i, OptionalDouble.of(actual[i]));
        }
    }

    void check(String name, boolean actual) {
        for (String part : List.of("expected", "expected_computed")) {
            JsonNode value = node.path(part).path(name);
            if (!value.isMissingNode()) {
                assertEquals(value.asBoolean(), actual, name);
            }
        }
        unchecked.remove("/" + name);
    }

    /**
     * Compares with the printed and the full-precision value at a JSON pointer, whichever the case has. A value that the case does
     * not hold is passed over; {@link #requireAllChecked} sees to it that no value which it does hold is.
     */
    void checkAt(String pointer, OptionalDouble actual) {
        JsonNode printed = node.path("expected").at(pointer);
        JsonNode computed = node.path("expected_computed").at(pointer);
        boolean published = node.get("provenance").asText().equals("published");
        if (!printed.isMissingNode()) {
            compare(pointer, printed, actual, published);
        }
        if (!computed.isMissingNode()) {
            compare(pointer, computed, actual, false);
        }
        unchecked.remove(pointer);
    }

    /** Compares a printed value that the case gives another name or its own tolerance. */
    void checkPrinted(String name, double actual, double tolerance) {
        assertEquals(expectedNumber(name), actual, tolerance, name);
        unchecked.remove("/" + name);
    }

    /** Compares a printed value at a pointer with its own tolerance. */
    void checkAtPrinted(String pointer, double actual, double tolerance) {
        JsonNode printed = node.path("expected").at(pointer);
        assertTrue(printed.isNumber(), "no printed value " + pointer);
        assertEquals(printed.asDouble(), actual, tolerance, pointer);
        unchecked.remove(pointer);
    }

    /** Compares the printed value with its own tolerance and the full-precision value of the same name. */
    void checkBoth(String name, double actual, double tolerance) {
        checkPrinted(name, actual, tolerance);
        checkComputed("/" + name, actual);
    }

    /** Compares a full-precision value at a pointer under {@code expected_computed}. */
    void checkComputed(String pointer, double actual) {
        JsonNode computed = node.path("expected_computed").at(pointer);
        assertTrue(computed.isNumber(), "no computed value " + pointer);
        compare(pointer, computed, OptionalDouble.of(actual), false);
        unchecked.remove(pointer);
    }

    /** Values that the case holds for comparison and that this program does not compute. */
    void notOurs(String reason, String... pointers) {
        assertTrue(reason.length() > 10, "a reason is needed");
        for (String pointer : pointers) {
            assertTrue(
                    unchecked.removeIf(path -> path.equals(pointer) || path.startsWith(pointer + "/")),
                    "nothing to leave out at " + pointer);
        }
    }

    void notOursIfPresent(String reason, String pointer) {
        if (unchecked.contains(pointer)) {
            notOurs(reason, pointer);
        }
    }

    void requireAllChecked() {
        assertEquals(Set.of(), unchecked, "expected values never compared");
    }

    private void compare(String pointer, JsonNode expected, OptionalDouble actual, boolean printed) {
        if (expected.isNull()) {
            assertTrue(actual.isEmpty(), pointer + " must be absent");
            return;
        }
        double value = expected.asDouble();
        double tolerance = tolerance(pointer, value, printed);
        assertEquals(value, actual.orElseThrow(), tolerance, pointer);
    }

    private double tolerance(String pointer, double value, boolean printed) {
        JsonNode stated = node.path("tolerance");
        String own = pointer.substring(1) + "_rel";
        if (stated.has(own)) {
            return stated.get(own).asDouble() * Math.abs(value);
        }
        if (printed && PRINTED_SHORTER.containsKey(id() + pointer)) {
            return PRINTED_SHORTER.get(id() + pointer);
        }
        if (printed && (stated.path("published_abs").isNumber() || stated.has("published_rel"))) {
            return stated.path("published_abs").asDouble(0)
                    + stated.path("published_rel").asDouble(0) * Math.abs(value);
        }
        if (stated.has("abs") || stated.has("rel")) {
            return stated.path("abs").asDouble(0) + stated.path("rel").asDouble(0) * Math.abs(value);
        }
        return USUAL_RELATIVE * Math.abs(value);
    }

    private void collect(JsonNode value, String pointer) {
        if (value.isContainerNode()) {
            value.fieldNames().forEachRemaining(name -> collect(value.get(name), pointer + "/" + name));
            for (int i = 0; value.isArray() && i < value.size(); i++) {
                collect(value.get(i), pointer + "/" + i);
            }
        } else if (!value.isMissingNode()) {
            unchecked.add(pointer);
        }
    }
}
