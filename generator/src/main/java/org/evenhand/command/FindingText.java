package org.evenhand.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.evenhand.model.Finding;
import org.evenhand.model.Outcome;
import org.evenhand.model.Place;

/** Writes findings as a compiler does: place, severity, rule, what is wrong, the line with a mark, what to do. */
final class FindingText {

    private static final int LONGEST_LINE = 160;

    private final Path root;
    private final boolean colour;
    private final Map<String, List<String>> lines = new HashMap<>();

    FindingText(Path root, boolean colour) {
        this.root = root;
        this.colour = colour;
    }

    String write(Finding finding) {
        StringBuilder text = new StringBuilder();
        text.append(bold(finding.place().toString())).append(": ");
        text.append(severity(finding)).append(": [").append(finding.rule()).append("] ");
        text.append(finding.message()).append('\n');
        text.append(excerpt(finding.place()));
        finding.limit()
                .ifPresent(l -> text.append("  limit: ")
                        .append(l.value())
                        .append(" (")
                        .append(l.origin())
                        .append(")\n"));
        if (!finding.consequence().isEmpty()) {
            text.append("  means: ").append(finding.consequence()).append('\n');
        }
        finding.waiver()
                .ifPresent(w -> text.append("  waived: ")
                        .append(w.why())
                        .append(" (")
                        .append(w.by())
                        .append(", ")
                        .append(w.on())
                        .append(")\n"));
        text.append("  fix: ").append(finding.remedy()).append('\n');
        return text.toString();
    }

    private String severity(Finding finding) {
        String word = finding.severity().level();
        if (finding.outcome() == Outcome.WAIVED) {
            return "waived";
        }
        if (finding.outcome() == Outcome.NOT_CHECKABLE) {
            return "not checkable";
        }
        String code = switch (word) {
            case "error" -> "31;1";
            case "warning" -> "33;1";
            default -> "36";
        };
        return colour ? "\u001b[" + code + "m" + word + "\u001b[0m" : word;
    }

    private String bold(String text) {
        return colour ? "\u001b[1m" + text + "\u001b[0m" : text;
    }

    /** The line of the file, and a mark under the characters that are meant. */
    private String excerpt(Place place) {
        List<String> file = place.line() == 0 ? List.of() : lines.computeIfAbsent(place.file(), this::linesOf);
        if (place.line() == 0 || place.line() > file.size()) {
            return "";
        }
        String line = printable(file.get(place.line() - 1));
        if (place.column() == 0 || line.length() > LONGEST_LINE) {
            return line.length() > LONGEST_LINE ? "" : "    " + line + "\n";
        }
        int length = Math.max(1, Math.min(place.length(), line.length() - place.column() + 1));
        return "    " + line + "\n    " + " ".repeat(place.column() - 1) + "^" + "~".repeat(length - 1) + "\n";
    }

    /** Control characters of the input must not reach a terminal. */
    private static String printable(String line) {
        StringBuilder safe = new StringBuilder();
        line.chars().forEach(c -> safe.append(c == '\t' ? ' ' : Character.isISOControl(c) ? '\ufffd' : (char) c));
        return safe.toString();
    }

    private List<String> linesOf(String file) {
        try {
            Path path = root.resolve(file);
            if (!Files.isRegularFile(path) || Files.size(path) > 4_000_000) {
                return List.of();
            }
            return new String(Files.readAllBytes(path), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }
}
