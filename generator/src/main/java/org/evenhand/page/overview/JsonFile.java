package org.evenhand.page.overview;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** A document in JSON as the site's files have it: two spaces deep, lines ended alike everywhere. */
final class JsonFile {

    private JsonFile() {}

    /** @param document of maps, lists, texts and numbers, in the order in which they are to stand */
    static byte[] of(Map<String, Object> document) {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
        try {
            return (JsonMapper.builder().build().writer(printer).writeValueAsString(document) + "\n")
                    .getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
