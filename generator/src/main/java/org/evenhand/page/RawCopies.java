package org.evenhand.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** Hands raw files on, byte for byte. */
public final class RawCopies {

    private RawCopies() {}

    /** @throws UncheckedIOException if one cannot be read any more */
    public static void put(Path root, List<RawFile> files, PageSink sink) {
        for (RawFile raw : files) {
            try {
                sink.copy(raw.path(), root.resolve(raw.file()), FileRows.sha256(root, raw));
            } catch (IOException e) {
                throw new UncheckedIOException("cannot read " + raw.file(), e);
            }
        }
    }
}
