package org.evenhand.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.evenhand.words.Words;

/**
 * What a rule means, for people: the page docs/rules/RULE.md, which is packed with the program.
 *
 * @param facts of the rule
 * @param sections Markdown by heading, in the order written
 */
public record Explanation(RuleFacts facts, Map<String, String> sections) {

    /** The sections that every page has, in this order. */
    public static final String MEANING = "What it means";

    public static final String WHY = "Why it matters";
    public static final String MEND = "How to mend it";
    public static final String SOURCE = "Limit and source";
    public static final String WAIVE = "How to waive it";

    private static final String FOLDER = "/org/evenhand/rules/";

    /**
     * Reads the page of a rule.
     *
     * @throws IllegalStateException if the program was built without it
     */
    public static Explanation of(RuleFacts facts) {
        Map<String, String> sections = new LinkedHashMap<>();
        String heading = null;
        StringBuilder body = new StringBuilder();
        for (String line : page(facts.id()).lines().toList()) {
            if (line.startsWith("## ")) {
                if (heading != null) {
                    sections.put(heading, body.toString().strip());
                }
                heading = line.substring(3).strip();
                body.setLength(0);
            } else {
                body.append(line).append('\n');
            }
        }
        if (heading != null) {
            sections.put(heading, body.toString().strip());
        }
        return new Explanation(facts, sections);
    }

    /** A section; empty if the page has none of this heading. */
    public String section(String heading) {
        return sections.getOrDefault(heading, "");
    }

    /** The whole for a terminal. */
    public String text() {
        StringBuilder text = new StringBuilder();
        text.append(facts.id()).append(" (").append(facts.group().title()).append(", ");
        text.append(facts.severity().word()).append(")\n");
        text.append("finds ").append(facts.finds(Words.english())).append('\n');
        facts.limit()
                .ifPresent(l -> text.append("limit ")
                        .append(l.value())
                        .append(" (")
                        .append(l.origin(Words.english()))
                        .append(")\n"));
        sections.forEach((heading, body) ->
                text.append('\n').append(heading).append('\n').append(body).append('\n'));
        return text.toString();
    }

    private static String page(String id) {
        try (InputStream in = Explanation.class.getResourceAsStream(FOLDER + id + ".md")) {
            if (in == null) {
                throw new IllegalStateException("docs/rules/" + id + ".md is not packed");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
