package org.evenhand.read;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;
import org.evenhand.model.Seal;

/**
 * An answer as a former publication gave it, read back from the site.
 *
 * @param status where it stood: "final", "draft" …
 * @param revisions how many it had
 * @param figures by their address within the study: {@code level/none/energy}, the id of a comparison, or a part of one:
 *     {@code ID/slope}, {@code ID/exponent}, {@code ID/median/LEVEL}
 */
public record FormerAnswer(String status, int revisions, SortedMap<String, FormerFigure> figures) {

    /** An answer that is there, but whose figures or text cannot be read. */
    public static final FormerAnswer UNREADABLE = new FormerAnswer("", 0, Collections.emptySortedMap());

    private static final Limits ONCE_TAKEN = manifold();

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
     * @param unit as it was written; empty for a slope or an exponent
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
     * @return nothing if the site has no such answer; {@link #UNREADABLE} if it has one that cannot be read
     */
    public static Optional<FormerAnswer> of(Path site, String study) {
        Optional<String> folder = folder(site, study);
        if (folder.isEmpty()) {
            boolean damaged =
                    Files.exists(site.resolve("answers").resolve(study).resolve(EVIDENCE));
            return damaged ? Optional.of(UNREADABLE) : Optional.empty();
        }
        return Optional.of(read(site, folder.get()).orElse(UNREADABLE));
    }

    /**
     * Reads an answer as it was sealed.
     *
     * @param root of the results folder
     * @return nothing if the seal is not whole; {@link #UNREADABLE} if this program cannot read it any more
     */
    public static Optional<FormerAnswer> of(Path root, Seal seal) {
        String folder = seal.folder().substring(0, seal.folder().length() - 1);
        return seal.isWhole()
                ? Optional.of(read(root.resolve(Seals.FOLDER), folder).orElse(UNREADABLE))
                : Optional.empty();
    }

    public boolean isReadable() {
        return this != UNREADABLE;
    }

    /** A text that is published was within the limits of that day, which may have been raised. */
    private static Limits manifold() {
        Limits limits = Limits.DEFAULT;
        for (Quota quota : Quota.values()) {
            limits = limits.with(quota, 16 * quota.usual());
        }
        return limits;
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
                Document.read(site, folder + "/" + TEXT, StudyFile.SHAPE, (f, x) -> {}, ONCE_TAKEN, new Faults());
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            JsonNode json = new ObjectMapper().readTree(evidence.toFile());
            if (!json.isObject()) {
                return Optional.empty();
            }
            SortedMap<String, FormerFigure> figures = new TreeMap<>();
            for (JsonNode summary : json.path("summaries")) {
                String address = "level/" + summary.path("level").asText() + "/"
                        + summary.path("measurand").asText();
                figures.put(address, figure(summary, "mean", "low", "high", unit(summary), ""));
            }
            for (JsonNode comparison : json.path("comparisons")) {
                String id = comparison.path("id").asText();
                String verdict = comparison.path("verdict").asText("");
                figures.put(id, figure(comparison, "estimate", "low", "high", unit(comparison), verdict));
                for (String part : List.of("slope", "exponent")) {
                    if (comparison.has(part)) {
                        figures.put(
                                id + "/" + part, figure(comparison, part, part + "Low", part + "High", "", verdict));
                    }
                }
                for (JsonNode curve : comparison.path("levels")) {
                    figures.put(
                            id + "/median/" + curve.path("level").asText(),
                            figure(curve, "median", "low", "high", unit(comparison), verdict));
                }
            }
            Fields fields = text.get().fields();
            int revisions = fields.groups("revisions").size();
            return Optional.of(new FormerAnswer(fields.text("status"), revisions, figures));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static FormerFigure figure(
            JsonNode node, String value, String low, String high, String unit, String verdict) {
        return new FormerFigure(number(node, value), number(node, low), number(node, high), unit, verdict);
    }

    private static String unit(JsonNode node) {
        return node.path("unit").asText("");
    }

    private static OptionalDouble number(JsonNode node, String field) {
        JsonNode number = node.path(field);
        return number.isNumber() ? OptionalDouble.of(number.asDouble()) : OptionalDouble.empty();
    }
}
