package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.security.MessageDigest;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** What machines read of the sample's site: RFC 4287 (Atom), sitemaps.org 0.9, RO-Crate 1.2. */
class SiteMetadataTest {

    private static final String ATOM = "http://www.w3.org/2005/Atom";
    private static final String SITEMAP = "http://www.sitemaps.org/schemas/sitemap/0.9";
    private static final String BASE = "https://results.example.org/relay/";

    private static Document xml(String path) throws ParserConfigurationException, SAXException, IOException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(SampleSiteFiles.FILES.get(path)));
    }

    private static String child(Element of, String namespace, String name) {
        NodeList found = of.getElementsByTagNameNS(namespace, name);
        for (int i = 0; i < found.getLength(); i++) {
            if (found.item(i).getParentNode() == of) {
                return found.item(i).getTextContent();
            }
        }
        return "";
    }

    @Test
    void theFeedHasWhatAtomAsksFor() throws Exception {
        Element feed = xml("feed.xml").getDocumentElement();
        Set<String> ids = new HashSet<>();
        assertTrue(ids.add(child(feed, ATOM, "id")));
        assertFalse(child(feed, ATOM, "title").isEmpty());
        Instant updated = Instant.parse(child(feed, ATOM, "updated"));
        NodeList entries = feed.getElementsByTagNameNS(ATOM, "entry");
        assertTrue(entries.getLength() > 0);
        Instant before = updated;
        for (int i = 0; i < entries.getLength(); i++) {
            Element entry = (Element) entries.item(i);
            URI id = URI.create(child(entry, ATOM, "id"));
            assertTrue(id.isAbsolute() && ids.add(id.toString()), id.toString());
            assertFalse(child(entry, ATOM, "title").isEmpty());
            Instant at = Instant.parse(child(entry, ATOM, "updated"));
            assertFalse(at.isAfter(before), "the newest first");
            before = at;
        }
        assertEquals(updated, Instant.parse(child((Element) entries.item(0), ATOM, "updated")));
    }

    @Test
    void caveatsTravelWithTheAnswerIntoTheFeed() throws Exception {
        NodeList summaries = xml("feed.xml").getElementsByTagNameNS(ATOM, "summary");
        for (int i = 0; i < summaries.getLength(); i++) {
            String text = summaries.item(i).getTextContent();
            if (text.contains("comparisons were refused")) {
                assertTrue(text.contains("All runs of Quillet 3 encoder were made on one specimen"), text);
                return;
            }
        }
        throw new AssertionError("the imperfect study is not in the feed");
    }

    @Test
    void theSitemapListsEveryPageOnceWithDatesOfTheData() throws Exception {
        NodeList urls = xml("sitemap.xml").getElementsByTagNameNS(SITEMAP, "url");
        Set<String> paths = new HashSet<>();
        for (int i = 0; i < urls.getLength(); i++) {
            Element url = (Element) urls.item(i);
            String location = child(url, SITEMAP, "loc");
            assertTrue(location.startsWith(BASE), location);
            assertTrue(paths.add(location.substring(BASE.length()) + "index.html"), location);
            String modified = child(url, SITEMAP, "lastmod");
            assertTrue(modified.isEmpty() || LocalDate.parse(modified).getYear() == 2026, modified);
        }
        assertEquals(SampleSiteFiles.PAGES.keySet(), paths);
    }

    @Test
    void theResearchObjectDescribesItsRootAsTheSpecificationAsks() throws IOException {
        Map<String, JsonNode> entities = entities();
        JsonNode descriptor = entities.get("ro-crate-metadata.json");
        assertEquals("CreativeWork", descriptor.get("@type").asText());
        assertEquals("./", descriptor.get("about").get("@id").asText());
        assertEquals(
                "https://w3id.org/ro/crate/1.2",
                descriptor.get("conformsTo").get("@id").asText());
        JsonNode root = entities.get("./");
        assertEquals("Dataset", root.get("@type").asText());
        for (String must : new String[] {"name", "description", "datePublished", "license"}) {
            assertTrue(root.hasNonNull(must), must);
        }
        assertEquals("2026-05-04", root.get("datePublished").asText());
    }

    @Test
    void everyFileOfTheResearchObjectIsThereAndReachedFromItsRoot() throws Exception {
        Map<String, JsonNode> entities = entities();
        Set<String> reached = new HashSet<>();
        reach("./", entities, reached);
        int files = 0;
        for (JsonNode entity : entities.values()) {
            if (entity.get("@type").asText().equals("File")) {
                String path = entity.get("@id").asText();
                byte[] bytes = SampleSiteFiles.FILES.get(path);
                assertEquals(
                        Integer.toString(bytes.length),
                        entity.get("contentSize").asText(),
                        path);
                String digest = HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
                assertEquals(digest, entity.get("sha256").asText(), path);
                assertTrue(reached.contains(path), path);
                files++;
            }
        }
        long data = SampleSiteFiles.FILES.keySet().stream()
                .filter(path -> path.startsWith("runs/") || path.startsWith("answers/"))
                .filter(path -> !path.endsWith(".html"))
                .count();
        assertEquals(data, files);
    }

    private static void reach(String id, Map<String, JsonNode> entities, Set<String> reached) {
        assertTrue(entities.containsKey(id), () -> "nothing describes " + id);
        if (reached.add(id)) {
            entities.get(id)
                    .path("hasPart")
                    .forEach(part -> reach(part.get("@id").asText(), entities, reached));
        }
    }

    private static Map<String, JsonNode> entities() throws IOException {
        JsonNode crate = new ObjectMapper().readTree(SampleSiteFiles.FILES.get("ro-crate-metadata.json"));
        assertEquals(
                "https://w3id.org/ro/crate/1.2/context", crate.get("@context").asText());
        Map<String, JsonNode> entities = new TreeMap<>();
        for (JsonNode entity : crate.get("@graph")) {
            assertEquals(null, entities.put(entity.get("@id").asText(), entity), "described twice");
        }
        return entities;
    }
}
