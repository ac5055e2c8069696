package org.evenhand.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.evenhand.prose.ProseFault.Correction;

/**
 * Corrections as a unified diff, which {@code patch -p1} and {@code git apply} take.
 *
 * <p>A correction changes characters within a line, so that no line comes or goes and every hunk is as long after as before.
 */
final class SuggestedPatch {

    private static final int CONTEXT = 3;

    private final Path root;

    SuggestedPatch(Path root) {
        this.root = root;
    }

    /** The patch; empty if there is nothing to correct. */
    String of(List<Correction> corrections) throws IOException {
        SortedMap<String, List<Correction>> byFile = new TreeMap<>();
        corrections.forEach(c ->
                byFile.computeIfAbsent(c.place().file(), f -> new ArrayList<>()).add(c));
        StringBuilder patch = new StringBuilder();
        for (String file : byFile.keySet()) {
            List<String> before = List.of(
                    Files.readString(root.resolve(file), StandardCharsets.UTF_8).split("\n", -1));
            List<String> after = corrected(before, byFile.get(file));
            patch.append("--- a/").append(file).append("\n+++ b/").append(file).append('\n');
            hunks(before, after, patch);
        }
        return patch.toString();
    }

    /** From the end to the beginning, so that places stay; of two that overlap the later one is left for another time. */
    private static List<String> corrected(List<String> lines, List<Correction> corrections) {
        List<String> result = new ArrayList<>(lines);
        int line = Integer.MAX_VALUE;
        int free = Integer.MAX_VALUE;
        List<Correction> backwards = corrections.stream()
                .sorted(Comparator.comparing(Correction::place).reversed())
                .toList();
        for (Correction correction : backwards) {
            int start = correction.place().column() - 1;
            int end = start + correction.place().length();
            boolean overlaps = correction.place().line() == line && end > free;
            if (!overlaps) {
                String old = result.get(correction.place().line() - 1);
                result.set(
                        correction.place().line() - 1,
                        old.substring(0, start) + correction.text() + old.substring(end));
                line = correction.place().line();
                free = start;
            }
        }
        return result;
    }

    private static void hunks(List<String> before, List<String> after, StringBuilder patch) {
        // The last element is what stands behind the last line break: nothing, in a file that ends with one.
        int count = before.get(before.size() - 1).isEmpty() ? before.size() - 1 : before.size();
        int next = 0;
        while (next < count) {
            int first = next;
            while (first < count && before.get(first).equals(after.get(first))) {
                first++;
            }
            if (first == count) {
                return;
            }
            int last = first;
            for (int i = first; i < count && i <= last + 2 * CONTEXT; i++) {
                last = before.get(i).equals(after.get(i)) ? last : i;
            }
            hunk(before, after, Math.max(0, first - CONTEXT), Math.min(count, last + CONTEXT + 1), count, patch);
            next = last + 1;
        }
    }

    private static void hunk(
            List<String> before, List<String> after, int from, int to, int count, StringBuilder patch) {
        String range = (from + 1) + "," + (to - from);
        patch.append("@@ -").append(range).append(" +").append(range).append(" @@\n");
        for (int i = from; i < to; i++) {
            boolean same = before.get(i).equals(after.get(i));
            String end = i == count - 1 && count == before.size() ? "\n\\ No newline at end of file\n" : "\n";
            if (same) {
                patch.append(' ').append(before.get(i)).append(end);
            } else {
                patch.append('-').append(before.get(i)).append(end);
                patch.append('+').append(after.get(i)).append(end);
            }
        }
    }
}
