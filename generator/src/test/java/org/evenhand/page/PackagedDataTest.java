package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * The sample's data as packages and linked data: Data Package and Table Schema 2.0 (datapackage.org), Citation File Format
 * 1.2.0, the vocabulary of schema.org as schema-dts 2.1.0 declares it. What is asked of the first two is taken from the
 * words of their specifications.
 */
class PackagedDataTest {

    private static JsonNode described() throws IOException {
        return new ObjectMapper().readTree(SampleSiteFiles.FILES.get("datapackage.json"));
    }

    /** Data Package 2.0: resources, at least one, each with a name of its own and a path within; profiles are named. */
    @Test
    void thePackageHasWhatTheStandardAsks() throws Exception {
        JsonNode described = described();
        assertEquals(
                "https://datapackage.org/profiles/2.0/datapackage.json",
                described.get("$schema").asText());
        assertTrue(described.get("name").asText().matches("[a-z0-9._-]+"));
        assertTrue(described.get("licenses").get(0).has("name"));
        assertTrue(described.get("resources").size() > 20);
        Set<String> names = new HashSet<>();
        for (JsonNode resource : described.get("resources")) {
            assertTrue(names.add(resource.get("name").asText()));
            assertEquals("table", resource.get("type").asText());
            String path = resource.get("path").asText();
            assertFalse(path.startsWith("/") || path.contains("..") || path.contains(":"), path);
            byte[] bytes = SampleSiteFiles.FILES.get(path);
            assertEquals(bytes.length, resource.get("bytes").asInt());
            String digest = HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
            assertEquals("sha256:" + digest, resource.get("hash").asText());
        }
    }

    /** Table Schema 2.0: the columns are those of the fields, in order; cells are of their type; keys tell rows apart. */
    @Test
    void everyTableIsAsItsSchemaSays() throws IOException {
        for (JsonNode resource : described().get("resources")) {
            String path = resource.get("path").asText();
            List<List<String>> rows = new ArrayList<>();
            CsvReader.builder().ofCsvRecord(SampleSiteFiles.text(path)).forEach(row -> rows.add(row.getFields()));
            JsonNode fields = resource.get("schema").get("fields");
            List<String> names = new ArrayList<>();
            fields.forEach(field -> names.add(field.get("name").asText()));
            assertEquals(names, rows.get(0), path);
            Set<List<String>> keys = new HashSet<>();
            for (List<String> row : rows.subList(1, rows.size())) {
                List<String> key = new ArrayList<>();
                resource.get("schema")
                        .get("primaryKey")
                        .forEach(name -> key.add(row.get(names.indexOf(name.asText()))));
                assertTrue(keys.add(key), path + " has twice: " + key);
                for (int i = 0; i < row.size(); i++) {
                    assertTyped(fields.get(i), row.get(i), path);
                }
            }
        }
    }

    private static void assertTyped(JsonNode field, String cell, String path) {
        assertFalse(field.get("description").asText().isBlank(), path);
        if (cell.isEmpty()) {
            return; // the one missing value
        }
        switch (field.get("type").asText()) {
            case "integer" -> assertTrue(cell.matches("-?\\d+"), path + ": " + cell);
            case "number" -> assertEquals(0, new BigDecimal(cell).compareTo(new BigDecimal(cell)), path);
            case "boolean" ->
                assertTrue(
                        cell.equals(field.get("trueValues").get(0).asText())
                                || cell.equals(field.get("falseValues").get(0).asText()),
                        path + ": " + cell);
            default ->
                assertTrue(Set.of("string", "any").contains(field.get("type").asText()), path);
        }
    }

    /** Citation File Format 1.2.0: four keys must be there; the date and the address have their forms. */
    @Test
    void theCitationHasWhatItsFormatAsks() {
        Map<String, Object> cff =
                new Yaml(new SafeConstructor(new LoaderOptions())).load(SampleSiteFiles.text("CITATION.cff"));
        assertEquals("1.2.0", cff.get("cff-version").toString());
        assertEquals("dataset", cff.get("type"));
        assertFalse(cff.get("message").toString().isBlank());
        assertEquals(
                SampleSiteFiles.CHECKED.folder().publication().orElseThrow().title(), cff.get("title"));
        List<?> authors = (List<?>) cff.get("authors");
        assertTrue(authors.contains(Map.of("name", "Fernhollow Community Radio")), authors::toString);
        assertEquals(2026, LocalDate.parse(cff.get("date-released").toString()).getYear());
        assertTrue(URI.create(cff.get("url").toString()).isAbsolute());
    }

    @Test
    void whatMachinesReadOnAPageKeepsToTheVocabulary() throws IOException {
        Map<String, Set<String>> properties = properties();
        int seen = 0;
        for (Map.Entry<String, Document> page : SampleSiteFiles.PAGES.entrySet()) {
            var data = page.getValue().selectFirst("script[type=application/ld+json]");
            if (data == null) {
                continue;
            }
            assertFalse(data.data().contains("<"), page.getKey());
            JsonNode document = new ObjectMapper().readTree(data.data());
            assertEquals("https://schema.org", document.get("@context").asText());
            for (JsonNode entity : document.get("@graph")) {
                hold(entity, properties, page.getKey());
                assertTrue(URI.create(entity.get("@id").asText()).isAbsolute());
            }
            JsonNode report = document.get("@graph").get(0);
            assertEquals("Dataset", report.get("@type").asText());
            for (String must : List.of("name", "description", "license", "creator", "distribution")) {
                assertTrue(report.has(must), page.getKey() + " lacks " + must);
            }
            seen++;
        }
        assertEquals(SampleSiteFiles.CHECKED.studies().size(), seen);
    }

    private static void hold(JsonNode value, Map<String, Set<String>> properties, String page) {
        if (value.isArray()) {
            value.forEach(each -> hold(each, properties, page));
        } else if (value.isObject() && value.has("@type")) {
            String type = value.get("@type").asText();
            assertTrue(properties.containsKey(type), page + ": " + type);
            value.properties().forEach(field -> {
                if (!field.getKey().startsWith("@")) {
                    assertTrue(
                            properties.get(type).contains(field.getKey()), page + ": " + type + "." + field.getKey());
                    hold(field.getValue(), properties, page);
                }
            });
        }
    }

    private static Map<String, Set<String>> properties() throws IOException {
        Map<String, Set<String>> properties = new TreeMap<>();
        try (InputStream in = PackagedDataTest.class.getResourceAsStream("schema-org-properties.txt")) {
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .forEach(line -> {
                        String[] parts = line.split(": ");
                        properties.put(parts[0], Set.of(parts[1].split(" ")));
                    });
        }
        return properties;
    }
}
