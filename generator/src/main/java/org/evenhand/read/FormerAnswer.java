package org.evenhand.read;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * An answer as a former publication gave it, read back from the site.
 *
 * @param status where it stood: "final", "draft" …
 * @param revisions how many it had
 * @param figures by their address within the study: {@code level/none/energy}, or the id of a comparison
 */
public record FormerAnswer(String status, int revisions, SortedMap<String, FormerFigure> figures) {

    /** Below an answer's folder: what was published before the study was withheld. */
    public static final String KEPT = "former";

    public static final String EVIDENCE = "evidence.json";
    public static final String TEXT = "study.md";

    /**
     * A published figure.
     *
     * @param value absent if there was none
     * @param low the lower end of its interval
     * @param high the upper end
     * @param unit as it was written
     * @param verdict of a comparison; empty for others
     */
    public record FormerFigure(
            OptionalDouble value, OptionalDouble low, OptionalDouble high, String unit, String verdict) {}

    public FormerAnswer {
        figures = Collections.unmodifiableSortedMap(new TreeMap<>(figures));
    }

    /**
     * Reads an answer of a site.
     *
     * @param site its root
     * @param study the study's id
     * @return nothing if the site has no such answer, or none that can be read
     */
    public static Optional<FormerAnswer> of(Path site, String study) {
        return folder(site, study).flatMap(folder -> read(site, folder));
    }

    /**
     * The folder of a site that holds the last published figures and text of a study: its own, or, where the study was
     * withheld since, the one in which they are kept.
     */
    public static Optional<String> folder(Path site, String study) {
        String own = "answers/" + study;
        return Stream.of(own + "/" + KEPT, own)
                .filter(f -> Files.isRegularFile(site.resolve(f).resolve(EVIDENCE))
                        && Files.isRegularFile(site.resolve(f).resolve(TEXT)))
                .findFirst();
    }

    private static Optional<FormerAnswer> read(Path site, String folder) {
        Path evidence = site.resolve(folder).resolve(EVIDENCE);
        Optional<Document> text =
                Document.read(site, folder + "/" + TEXT, StudyFile.SHAPE, (f, x) -> {}, Limits.DEFAULT, new Faults());
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            JsonNode json = new ObjectMapper().readTree(evidence.toFile());
            SortedMap<String, FormerFigure> figures = new TreeMap<>();
            for (JsonNode summary : json.path("summaries")) {
                String address = "level/" + summary.path("level").asText() + "/"
                        + summary.path("measurand").asText();
                figures.put(address, figure(summary, "mean"));
            }
            for (JsonNode comparison : json.path("comparisons")) {
                figures.put(comparison.path("id").asText(), figure(comparison, "estimate"));
            }
            Fields fields = text.get().fields();
            int revisions = fields.groups("revisions").size();
            return Optional.of(new FormerAnswer(fields.text("status"), revisions, figures));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static FormerFigure figure(JsonNode node, String value) {
        return new FormerFigure(
                number(node, value),
                number(node, "low"),
                number(node, "high"),
                node.path("unit").asText(""),
                node.path("verdict").asText(""));
    }

    private static OptionalDouble number(JsonNode node, String field) {
        JsonNode number = node.path(field);
        return number.isNumber() ? OptionalDouble.of(number.asDouble()) : OptionalDouble.empty();
    }
}
