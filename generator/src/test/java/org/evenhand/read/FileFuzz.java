package org.evenhand.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenhand.model.Finding;
import org.evenhand.model.Limits;

/**
 * A file of any content, held against each shape in turn. The first byte chooses the shape, the others are the file.
 *
 * <p>It either is of its shape and becomes a record, or something is found at a place.
 */
final class FileFuzz {

    private record Kind(Shape shape, Document.TogetherCheck together, Binding binding) {}

    private interface Binding {
        Object bind(Document document);
    }

    private static final List<Kind> KINDS = List.of(
            new Kind(RunFile.SHAPE, RunFile::checkTogether, d -> RunFile.bind(d.fields(), "s", Map.of(), null)),
            new Kind(
                    StudyFile.SHAPE,
                    StudyFile::checkTogether,
                    d -> StudyFile.bind(d.fields(), d.body(), d.bodyLine(), List.of())),
            new Kind(MethodFile.SHAPE, (f, x) -> {}, d -> MethodFile.bind(d.fields(), d.body(), d.bodyLine())),
            new Kind(ItemFile.SHAPE, ItemFile::checkTogether, d -> ItemFile.bind(d.fields())),
            new Kind(InstrumentFile.SHAPE, (f, x) -> {}, d -> InstrumentFile.bind(d.fields())),
            new Kind(PublicationFile.SHAPE, (f, x) -> {}, d -> PublicationFile.bind(d.fields())));

    private static final Path FOLDER = folder();

    private FileFuzz() {}

    static void read(byte[] data, String name) {
        if (data.length == 0) {
            return;
        }
        write(FOLDER.resolve(name), Arrays.copyOfRange(data, 1, data.length));
        Kind kind = KINDS.get((data[0] & 0x7f) % KINDS.size());
        Faults faults = new Faults();
        Optional<Document> document =
                Document.read(FOLDER, name, kind.shape(), kind.together(), Limits.DEFAULT, faults);
        if (document.isEmpty()) {
            if (faults.findings().isEmpty()) {
                throw new IllegalStateException("no record, and nothing found");
            }
            faults.findings().forEach(FileFuzz::check);
            return;
        }
        kind.binding().bind(document.get());
        document.get().fields().places();
    }

    private static void check(Finding finding) {
        if (!finding.place().file().startsWith("x.")
                || finding.message().isBlank()
                || finding.place().line() < 0) {
            throw new IllegalStateException("found nowhere: " + finding);
        }
    }

    private static void write(Path file, byte[] bytes) {
        try {
            Files.write(file, bytes);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Path folder() {
        try {
            Path folder = Files.createTempDirectory("evenhand-fuzz");
            folder.toFile().deleteOnExit();
            return folder;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
