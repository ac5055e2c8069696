package org.evenhand.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.util.RawValue;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenhand.page.view.Markup;
import org.evenhand.page.words.Exact;
import org.evenhand.read.Sha256;

/**
 * Writes what a page says in the vocabulary of schema.org, as JSON-LD for the inside of a script element.
 *
 * <p>Source: JSON-LD 1.1, 7; HTML (whatwg.org), 4.12.1.3: no text within may close the element or open a comment.
 */
public final class LinkedData {

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private LinkedData() {}

    /** A document of several entities. */
    public static Markup of(List<Map<String, Object>> graph) {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("@context", "https://schema.org");
        document.put("@graph", graph);
        try {
            return new Markup(safe(JSON.writeValueAsString(document)));
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** As a security policy names it: a checker that takes a data block for a script then sees that it is meant. */
    public static String digest(Markup data) {
        byte[] digest = HexFormat.of().parseHex(Sha256.of(data.html().getBytes(StandardCharsets.UTF_8)));
        return Base64.getEncoder().encodeToString(digest);
    }

    /** In JSON these characters occur within strings alone, where a reference says the same. */
    private static String safe(String json) {
        StringBuilder safe = new StringBuilder();
        json.chars().forEach(c -> {
            if (c == '<' || c == '>' || c == '&' || c == '\'' || c == '\u2028' || c == '\u2029') {
                safe.append("\\u").append(String.format(java.util.Locale.ROOT, "%04x", c));
            } else {
                safe.append((char) c);
            }
        });
        return safe.toString();
    }

    /**
     * An entity, or a value of several parts; what is empty is left out.
     *
     * @param properties names and values in turn
     */
    public static Map<String, Object> entity(String type, Object... properties) {
        Map<String, Object> entity = new LinkedHashMap<>();
        entity.put("@type", type);
        for (int i = 0; i < properties.length; i += 2) {
            put(entity, (String) properties[i], properties[i + 1]);
        }
        return entity;
    }

    private static void put(Map<String, Object> entity, String name, Object value) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresent(there -> put(entity, name, there));
        } else if (value instanceof Double number) {
            entity.put(name, new RawValue(Exact.of(number)));
        } else if (!value.equals("") && !value.equals(List.of())) {
            entity.put(name, value);
        }
    }

    /** A reference to an entity that is described elsewhere. */
    public static Map<String, Object> id(String address) {
        return Map.of("@id", address);
    }
}
