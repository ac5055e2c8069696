package org.evenhand.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.evenhand.model.Finding;
import org.evenhand.model.Limit;
import org.evenhand.model.Waiver;

/** Findings as JSON, for programs; docs/schema/findings.json describes it. */
final class FindingJson {

    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private FindingJson() {}

    static String write(List<Finding> findings, int leftOut) {
        ObjectNode document = JsonNodeFactory.instance.objectNode();
        ArrayNode array = document.putArray("findings");
        findings.forEach(f -> array.add(node(f)));
        document.put("leftOut", leftOut);
        return pretty(document);
    }

    /** Indented, with "\n" between lines on every system. */
    static String pretty(ObjectNode document) {
        try {
            return MAPPER.writeValueAsString(document).replace("\r\n", "\n");
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static ObjectNode node(Finding finding) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("rule", finding.rule());
        node.put("severity", finding.severity().word());
        node.put("outcome", finding.outcome().word());
        node.put("file", finding.place().file());
        node.put("line", finding.place().line());
        node.put("column", finding.place().column());
        node.put("length", finding.place().length());
        node.put("study", finding.subject().study().orElse(null));
        node.put("comparison", finding.subject().comparison().orElse(null));
        node.put("run", finding.subject().run().orElse(null));
        node.put("message", finding.message());
        Limit limit = finding.limit().orElse(null);
        if (limit == null) {
            node.putNull("limit");
        } else {
            node.putObject("limit").put("value", limit.value()).put("origin", limit.origin());
        }
        node.put("consequence", finding.consequence());
        node.put("remedy", finding.remedy());
        Waiver waiver = finding.waiver().orElse(null);
        if (waiver == null) {
            node.putNull("waiver");
        } else {
            node.putObject("waiver")
                    .put("why", waiver.why())
                    .put("by", waiver.by())
                    .put("on", waiver.on().toString());
        }
        return node;
    }
}
