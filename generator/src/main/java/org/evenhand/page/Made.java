package org.evenhand.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentSkipListMap;
import org.evenhand.read.Sha256;

/** Passes files on and keeps a list of them. */
public final class Made implements PageSink {

    private final PageSink next;
    private final SortedMap<String, File> files = new ConcurrentSkipListMap<>();

    /**
     * A file of the site.
     *
     * @param size in bytes
     * @param sha256 of its bytes, 64 hexadecimal digits
     */
    public record File(long size, String sha256) {}

    public Made(PageSink next) {
        this.next = next;
    }

    @Override
    public void put(String path, byte[] bytes) {
        keep(path, new File(bytes.length, Sha256.of(bytes)));
        next.put(path, bytes);
    }

    @Override
    public void copy(String path, Path source, String sha256) throws IOException {
        keep(path, new File(Files.size(source), sha256));
        next.copy(path, source, sha256);
    }

    @Override
    public boolean wants(String path) {
        return next.wants(path);
    }

    private void keep(String path, File file) {
        if (files.putIfAbsent(path, file) != null) {
            throw new IllegalStateException("made twice: " + path);
        }
    }

    /** All files so far, by path. */
    public SortedMap<String, File> files() {
        return Collections.unmodifiableSortedMap(files);
    }
}
