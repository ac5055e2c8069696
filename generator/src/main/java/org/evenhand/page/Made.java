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
    private volatile boolean lacksSome;
    private final SortedMap<String, SiteFile> files = new ConcurrentSkipListMap<>();

    public Made(PageSink next) {
        this.next = next;
    }

    @Override
    public void put(String path, byte[] bytes) {
        keep(path, new SiteFile(bytes.length, Sha256.of(bytes)));
        next.put(path, bytes);
    }

    @Override
    public void copy(String path, Path source, String sha256) throws IOException {
        keep(path, new SiteFile(Files.size(source), sha256));
        next.copy(path, source, sha256);
    }

    @Override
    public boolean again(SortedMap<String, SiteFile> known) {
        if (!next.again(known)) {
            return false;
        }
        known.forEach(this::keep);
        return true;
    }

    @Override
    public boolean wants(String path) {
        boolean wanted = next.wants(path);
        lacksSome |= !wanted;
        return wanted;
    }

    /** Whether some file was not made because it was not wanted. */
    boolean lacksSome() {
        return lacksSome;
    }

    private void keep(String path, SiteFile file) {
        if (files.putIfAbsent(path, file) != null) {
            throw new IllegalStateException("made twice: " + path);
        }
    }

    /** All files so far, by path. */
    public SortedMap<String, SiteFile> files() {
        return Collections.unmodifiableSortedMap(files);
    }
}
