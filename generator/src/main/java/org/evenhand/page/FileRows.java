package org.evenhand.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.evenhand.page.view.FileRow;
import org.evenhand.page.view.Link;
import org.evenhand.quantity.Figures;
import org.evenhand.read.Sha256;
import org.evenhand.words.Words;

/** Rows of tables of files: name, size, SHA-256. */
public final class FileRows {

    private FileRows() {}

    /**
     * A raw file, by what stands in the results folder.
     *
     * @throws UncheckedIOException if it cannot be read any more
     */
    public static FileRow of(Path root, RawFile raw, Words words) {
        Path file = root.resolve(raw.file());
        try {
            return new FileRow(link(raw.path()), raw.what(), size(Files.size(file), words), sha256(root, raw));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + raw.file(), e);
        }
    }

    /** A file that the site makes, by its bytes. */
    public static FileRow of(String path, String what, byte[] bytes, Words words) {
        return new FileRow(link(path), what, size(bytes.length, words), Sha256.of(bytes));
    }

    /** A number of bytes for readers: "842 B", "6.2 kB", "17 MB". */
    public static String size(long bytes, Words words) {
        if (bytes < 1000) {
            return bytes + Figures.NO_BREAK_SPACE + "B";
        }
        String[] units = {"kB", "MB", "GB", "TB"};
        int unit = 0;
        double scaled = bytes / 1e3;
        // From 999.5 on it would be written as 1000.
        while (scaled >= 999.5 && unit < units.length - 1) {
            scaled /= 1000;
            unit++;
        }
        return words.number(Figures.at(scaled, scaled < 9.95 ? 1 : 0)) + Figures.NO_BREAK_SPACE + units[unit];
    }

    /** The digest of a raw file: that of measuring, where it was measured. */
    public static String sha256(Path root, RawFile raw) throws IOException {
        return raw.sha256().isPresent() ? raw.sha256().get() : Sha256.of(root.resolve(raw.file()));
    }

    private static Link link(String path) {
        return Link.to(path.substring(path.lastIndexOf('/') + 1), Href.of(path));
    }
}
