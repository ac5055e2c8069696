package org.evenhand.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.GZIPOutputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.evenhand.words.Words;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The drawing as a document: read back with the XML parser of the Java runtime. */
class SvgDocumentTest {

    private static final Set<String> ELEMENTS =
            Set.of("svg", "title", "desc", "defs", "clipPath", "g", "use", "path", "circle");

    private static Document parse(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        } catch (javax.xml.parsers.ParserConfigurationException | org.xml.sax.SAXException | IOException e) {
            throw new AssertionError(svg, e);
        }
    }

    private static List<Element> elements(Document document) {
        NodeList nodes = document.getElementsByTagName("*");
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    @Test
    void every_kind_is_well_formed_and_has_plain_drawing_elements_without_style() {
        for (Map.Entry<String, Figure> sample : Samples.all().entrySet()) {
            Chart chart = Charts.svg(
                    sample.getValue(), GoldenChartTest.caption(sample.getKey()), Charts.COLUMN, Words.english());
            for (Element element : elements(parse(chart.svg()))) {
                assertTrue(ELEMENTS.contains(element.getTagName()), element.getTagName());
                assertFalse(element.hasAttribute("style"), sample.getKey());
                for (int i = 0; i < element.getAttributes().getLength(); i++) {
                    String name = element.getAttributes().item(i).getNodeName();
                    assertFalse(name.startsWith("on"), name);
                }
            }
        }
    }

    @Test
    void the_text_alternative_is_named_by_the_root() {
        Document document =
                parse(Charts.svg(Samples.levels(), new Caption("a", "Title", "Words & more"), 600, Words.english())
                        .svg());
        Element root = document.getDocumentElement();
        assertEquals("img", root.getAttribute("role"));
        assertEquals("a-title a-desc", root.getAttribute("aria-labelledby"));
        assertEquals("Title", document.getElementsByTagName("title").item(0).getTextContent());
        assertEquals(
                "Words & more", document.getElementsByTagName("desc").item(0).getTextContent());
        assertEquals(
                "0 0 " + root.getAttribute("width") + " " + root.getAttribute("height"), root.getAttribute("viewBox"));
    }

    @Test
    void ids_are_unique_on_a_page_with_all_kinds_twice_and_every_reference_finds_its_own() {
        Set<String> ids = new HashSet<>();
        for (String page : List.of("one", "two")) {
            for (Map.Entry<String, Figure> sample : Samples.all().entrySet()) {
                Caption caption = new Caption(page + "-" + sample.getKey(), "", "");
                List<Element> elements = elements(parse(Charts.svg(sample.getValue(), caption, 600, Words.english())
                        .svg()));
                Set<String> own = new HashSet<>();
                for (Element element : elements) {
                    if (element.hasAttribute("id")) {
                        assertTrue(ids.add(element.getAttribute("id")), element.getAttribute("id"));
                        own.add(element.getAttribute("id"));
                    }
                }
                for (Element element : elements) {
                    if (element.hasAttribute("href")) {
                        assertTrue(own.contains(element.getAttribute("href").substring(1)));
                    }
                    if (element.hasAttribute("clip-path")) {
                        String clip = element.getAttribute("clip-path");
                        assertTrue(own.contains(clip.substring(5, clip.length() - 1)), clip);
                    }
                }
            }
        }
    }

    @Test
    void every_colour_has_its_class_and_a_fallback_of_the_same_role() {
        for (Figure figure : Samples.all().values()) {
            for (Element element : elements(parse(Charts.svg(figure, new Caption("c", "", ""), 600, Words.english())
                    .svg()))) {
                if (element.getTagName().equals("svg") || !element.hasAttribute("class")) {
                    continue;
                }
                String name = element.getAttribute("class");
                String paint = name.endsWith("-f") ? "fill" : "stroke";
                boolean matches = false;
                for (Ink ink : Ink.values()) {
                    matches |= (name.equals(ink.fillClass()) || name.equals(ink.strokeClass()))
                            && element.getAttribute(paint).equals(ink.hex());
                }
                assertTrue(matches, name + " " + element.getAttribute(paint));
            }
        }
    }

    @Test
    void what_a_stranger_wrote_stays_text() {
        String hostile = "</title><script>alert(1)</script> & ]]> \u0007 \u202E \uFFFE ${x}";
        LevelChart figure = new LevelChart(
                hostile,
                List.of(new LevelChart.Level(hostile, Samples.dots(1, 2), Optional.empty(), hostile, hostile)),
                hostile,
                hostile);
        Document document = parse(Charts.svg(figure, new Caption("h", hostile, hostile), 600, Words.english())
                .svg());
        assertEquals(0, document.getElementsByTagName("script").getLength());
        String expected = "</title><script>alert(1)</script> & ]]>  \u202E  ${x}";
        assertEquals(expected, document.getElementsByTagName("desc").item(0).getTextContent());
    }

    @Test
    void a_chart_takes_less_than_40_kB_gzipped() throws IOException {
        for (Map.Entry<String, Figure> sample : Samples.all().entrySet()) {
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
                gzip.write(Charts.svg(sample.getValue(), new Caption("s", "", ""), 600, Words.english())
                        .svg()
                        .getBytes(StandardCharsets.UTF_8));
            }
            assertTrue(packed.size() < 40_000, sample.getKey() + ": " + packed.size());
        }
    }
}
