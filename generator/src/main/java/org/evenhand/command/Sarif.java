package org.evenhand.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenhand.check.Catalogue;
import org.evenhand.check.Explanation;
import org.evenhand.check.RuleFacts;
import org.evenhand.model.Finding;
import org.evenhand.model.Outcome;
import org.evenhand.model.Place;
import org.evenhand.words.Words;

/**
 * Findings as a host of code reads them, to mark the lines of a contributed file.
 *
 * <p>Source: SARIF 2.1.0, OASIS Standard (2020). The severity itself stands among the properties of a result, since SARIF knows
 * three levels only.
 */
final class Sarif {

    private static final String SCHEMA = "https://json.schemastore.org/sarif-2.1.0.json";

    private Sarif() {}

    static String write(List<Finding> findings) {
        ObjectNode document = JsonNodeFactory.instance.objectNode();
        document.put("$schema", SCHEMA);
        document.put("version", "2.1.0");
        ObjectNode run = document.putArray("runs").addObject();
        Map<String, Integer> indexes = rules(run.putObject("tool").putObject("driver"));
        run.put("columnKind", "utf16CodeUnits");
        ArrayNode results = run.putArray("results");
        findings.forEach(f -> results.add(result(f, indexes)));
        return FindingJson.pretty(document);
    }

    private static Map<String, Integer> rules(ObjectNode driver) {
        driver.put("name", "Evenhand");
        driver.put("version", Version.current());
        ArrayNode rules = driver.putArray("rules");
        Map<String, Integer> indexes = new LinkedHashMap<>();
        for (RuleFacts facts : Catalogue.facts()) {
            indexes.put(facts.id(), rules.size());
            Explanation explanation = Explanation.of(facts);
            ObjectNode rule = rules.addObject();
            rule.put("id", facts.id());
            rule.putObject("shortDescription").put("text", "Finds " + facts.finds(Words.english()) + ".");
            rule.putObject("fullDescription").put("text", explanation.section(Explanation.MEANING));
            String help = explanation.section(Explanation.WHY) + "\n\n" + explanation.section(Explanation.MEND);
            rule.putObject("help").put("text", help).put("markdown", help);
            rule.putObject("defaultConfiguration").put("level", facts.severity().level());
            rule.putObject("properties")
                    .put("severity", facts.severity().word())
                    .put("group", facts.group().title());
        }
        return indexes;
    }

    private static ObjectNode result(Finding finding, Map<String, Integer> indexes) {
        ObjectNode result = JsonNodeFactory.instance.objectNode();
        result.put("ruleId", finding.rule());
        if (indexes.containsKey(finding.rule())) {
            result.put("ruleIndex", indexes.get(finding.rule()));
        }
        boolean open = finding.outcome() == Outcome.NOT_CHECKABLE;
        // SARIF 3.27.9: a result that is not a failure has the level "none".
        result.put("kind", open ? "open" : "fail");
        result.put("level", open ? "none" : finding.severity().level());
        String meaning = finding.consequence().isEmpty() ? "" : " " + finding.consequence();
        result.putObject("message").put("text", finding.message() + "." + meaning + " Fix: " + finding.remedy() + ".");
        result.putArray("locations").addObject().set("physicalLocation", location(finding.place()));
        finding.waiver()
                .ifPresent(w -> result.putArray("suppressions")
                        .addObject()
                        .put("kind", "inSource")
                        .put("status", "accepted")
                        .put("justification", w.why() + " (" + w.by() + ", " + w.on() + ")"));
        ObjectNode properties = result.putObject("properties");
        properties.put("severity", finding.severity().word());
        properties.put("outcome", finding.outcome().word());
        finding.limit().ifPresent(l -> properties.put("limit", l.value()).put("limitOrigin", l.origin()));
        return result;
    }

    private static ObjectNode location(Place place) {
        ObjectNode location = JsonNodeFactory.instance.objectNode();
        location.putObject("artifactLocation").put("uri", uri(place.file()));
        if (place.line() > 0) {
            ObjectNode region = location.putObject("region");
            region.put("startLine", place.line());
            if (place.column() > 0) {
                region.put("startColumn", place.column());
                region.put("endColumn", place.column() + place.length());
            }
        }
        return location;
    }

    /** A path as a relative reference: spaces and the like are escaped. */
    private static String uri(String file) {
        try {
            return new URI(null, null, file, null).getRawPath();
        } catch (URISyntaxException e) {
            return file;
        }
    }
}
