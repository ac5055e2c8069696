package org.evenhand.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A guide of the project, as its tests see it.
 *
 * <p>What is to be tried is marked where no reader sees it: in the info string of a fenced block ({@code yaml
 * file=items/a.yaml}), and in a comment above a table ({@code <!-- fields: item -->}).
 *
 * @param file of the guide, for messages
 * @param text all of it
 */
public record Guide(String file, String text) {

    private static final Pattern OPENING = Pattern.compile("(`{3,})([^`]*)");
    private static final Pattern TABLE_MARK = Pattern.compile("<!-- ([a-z-]+)(?:: ([^>]*?))? -->");
    private static final Path REPOSITORY = Path.of("..");

    /**
     * Reads a guide.
     *
     * @param file from the top of the repository: "docs/units.md"
     */
    public static Guide read(String file) {
        try {
            return new Guide(file, Files.readString(REPOSITORY.resolve(file), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The fenced blocks, in order. */
    public List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            Matcher opening = OPENING.matcher(lines.get(i));
            if (!opening.matches()) {
                continue;
            }
            int start = i + 1;
            StringBuilder content = new StringBuilder();
            for (i++; i < lines.size() && !lines.get(i).equals(opening.group(1)); i++) {
                content.append(lines.get(i)).append('\n');
            }
            if (i == lines.size()) {
                throw new IllegalStateException(file + ":" + start + ": a fenced block does not end");
            }
            blocks.add(new Block(start, opening.group(2).strip(), content.toString()));
        }
        return blocks;
    }

    /** The tables that a comment marks, in order. */
    public List<Table> tables() {
        List<Table> tables = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            Matcher mark = TABLE_MARK.matcher(lines.get(i));
            if (!mark.matches()) {
                continue;
            }
            int start = i + 1;
            List<List<String>> rows = new ArrayList<>();
            for (i++; i < lines.size() && !lines.get(i).isBlank() || rows.isEmpty(); i++) {
                if (lines.get(i).startsWith("|")) {
                    rows.add(cells(lines.get(i)));
                }
            }
            String of = mark.group(2) == null ? "" : mark.group(2);
            tables.add(new Table(start, mark.group(1), of, rows.subList(2, rows.size())));
        }
        return tables;
    }

    private static List<String> cells(String row) {
        List<String> cells = new ArrayList<>();
        for (String cell : row.substring(1, row.lastIndexOf('|')).split("(?<!\\\\)\\|", -1)) {
            cells.add(cell.strip().replace("\\|", "|"));
        }
        return cells;
    }

    /**
     * A fenced block.
     *
     * @param line of the guide on which it opens
     * @param info what stands behind the fence
     * @param content its lines, each ended
     */
    public record Block(int line, String info, String content) {

        /** The language: the first word of the info string, or an empty text. */
        public String language() {
            return info.split(" ", 2)[0];
        }

        /** The values given for a name in the info string, as in {@code file=items/a.yaml}. */
        public List<String> all(String name) {
            List<String> values = new ArrayList<>();
            for (String word : info.split(" ")) {
                if (word.startsWith(name + "=")) {
                    values.add(word.substring(name.length() + 1));
                }
            }
            return values;
        }

        /** Whether the block is a file to be written. */
        public boolean isFile() {
            return !all("file").isEmpty();
        }

        /** Writes the block into a results folder, in place of what may stand there. */
        public void writeInto(Path folder) {
            Path target = folder.resolve(all("file").get(0));
            try {
                Files.createDirectories(target.getParent());
                Files.writeString(target, content, StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /**
     * A marked table.
     *
     * @param line of the guide that marks it
     * @param kind the mark's word: "fields"
     * @param of what stands behind the word, or an empty text
     * @param rows the cells below the head
     */
    public record Table(int line, String kind, String of, List<List<String>> rows) {}

    /** The texts in code marks of a cell, in order. */
    public static List<String> codes(String cell) {
        List<String> codes = new ArrayList<>();
        Matcher code = Pattern.compile("(`{1,2})(.+?)\\1").matcher(cell);
        while (code.find()) {
            codes.add(code.group(2).strip());
        }
        return codes;
    }
}
