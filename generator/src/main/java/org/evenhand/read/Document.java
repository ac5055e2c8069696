package org.evenhand.read;

import java.nio.file.Path;
import java.util.Optional;
import org.evenhand.model.Limits;
import org.evenhand.model.Place;
import org.evenhand.model.Quota;

/**
 * A structured file that was found to be of its shape.
 *
 * @param file relative to the results folder
 * @param fields of the file, or of its front matter
 * @param body what stands behind the front matter; empty for other files
 * @param bodyLine on which the body begins, from 1
 * @param sha256 of the bytes that were read
 */
record Document(String file, Fields fields, String body, int bodyLine, String sha256) {

    private static final String FENCE = "---";

    /** Checks that go beyond single fields. */
    @FunctionalInterface
    interface TogetherCheck {
        void check(Fields fields, Faults faults);
    }

    /**
     * Reads a file and holds it against its shape.
     *
     * @return nothing if anything was wrong, which then stands among the faults
     */
    static Optional<Document> read(
            Path root, String file, Shape shape, TogetherCheck together, Limits limits, Faults faults) {
        int before = faults.count();
        try {
            SourceText.Whole whole = SourceText.read(root, file, limits);
            String text = whole.text();
            SourceText.reportDeceptive(file, text, faults);
            SourceText.reportNested(file, text, limits, faults);
            SourceText.checkNumbers(file, text, limits);
            Split split = file.endsWith(".md") ? split(file, text) : new Split(text, 0, "", 1);
            if (split.body.length() > limits.of(Quota.PROSE_CHARACTERS)) {
                throw UnreadableException.tooMuch(
                        new Place(file, split.bodyLine, 1, 1),
                        "the text that begins here has " + split.body.length() + " characters",
                        limits,
                        Quota.PROSE_CHARACTERS,
                        "divide it");
            }
            Node tree = file.endsWith(".json")
                    ? JsonTree.read(file, split.front, limits, faults)
                    : YamlTree.read(file, split.front, split.before, limits, faults);
            if (tree == null) {
                throw new UnreadableException(
                        Rules.FILE_UNREADABLE,
                        Place.of(file),
                        "the file is empty",
                        "write " + shape.what() + " into it, or delete it");
            }
            int soFar = faults.count();
            shape.check(tree, faults);
            if (faults.count() == soFar) {
                together.check(new Fields((Node.Mapping) tree), faults);
            }
            return faults.count() == before
                    ? Optional.of(new Document(
                            file, new Fields((Node.Mapping) tree), split.body, split.bodyLine, whole.sha256()))
                    : Optional.empty();
        } catch (UnreadableException e) {
            e.reportTo(faults);
            return Optional.empty();
        }
    }

    private record Split(String front, int before, String body, int bodyLine) {}

    /** Front matter between two lines of three hyphens, and what follows. */
    private static Split split(String file, String text) throws UnreadableException {
        if (!text.startsWith(FENCE + "\n")) {
            throw new UnreadableException(
                    Rules.FILE_UNREADABLE,
                    new Place(file, 1, 1, 1),
                    "the file does not begin with front matter",
                    "begin with a line of three hyphens, then fields as in YAML, then three hyphens again");
        }
        int end = text.indexOf("\n" + FENCE + "\n", FENCE.length());
        if (end < 0 && text.endsWith("\n" + FENCE)) {
            end = text.length() - FENCE.length() - 1;
        }
        if (end < 0) {
            throw new UnreadableException(
                    Rules.FILE_UNREADABLE,
                    new Place(file, 1, 1, FENCE.length()),
                    "the front matter that begins here does not end",
                    "close it with a line of three hyphens");
        }
        String front = text.substring(FENCE.length() + 1, end + 1);
        int lines = (int) front.chars().filter(c -> c == '\n').count();
        String body = text.substring(Math.min(text.length(), end + 1 + FENCE.length() + 1));
        return new Split(front, 1, body, lines + 3);
    }
}
