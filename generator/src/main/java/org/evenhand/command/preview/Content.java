package org.evenhand.command.preview;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** What stands at an address of the site. */
sealed interface Content {

    /** In bytes. */
    long size() throws IOException;

    InputStream open() throws IOException;

    /** What was made, and is kept. */
    record Bytes(byte[] bytes) implements Content {

        @Override
        public long size() {
            return bytes.length;
        }

        @Override
        public InputStream open() {
            return new ByteArrayInputStream(bytes);
        }
    }

    /** A file of the results folder, which may be too long to be kept. */
    record Raw(Path source) implements Content {

        @Override
        public long size() throws IOException {
            return Files.size(source);
        }

        @Override
        public InputStream open() throws IOException {
            return Files.newInputStream(source, LinkOption.NOFOLLOW_LINKS);
        }
    }
}
