package org.evenhand.command.pack;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.text.Normalizer;
import java.util.Collections;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.evenhand.site.Manifest;

/** The files that a package is to hold, looked at once: their sizes and digests. */
public final class Payload {

    private static final String RESULTS = "data/results/";
    private static final String SITE = "data/site/";
    private static final int MOST_FILES = 500_000;
    private static final int MOST_DEPTH = 64;

    private final long mostBytes;
    private final SortedMap<String, Piece> pieces = new TreeMap<>();
    private final Map<String, String> alike = new HashMap<>();
    private long bytes;

    /** @param mostBytes that all files together may have */
    public Payload(long mostBytes) {
        this.mostBytes = mostBytes;
    }

    /**
     * Takes a results folder along, without its hidden files: what tools keep there (versions, locks, caches) is no part of
     * it. The schemas are, by which editors know its fields.
     *
     * @throws PackException if it holds what cannot be packed
     */
    public void addResults(Path folder) throws PackException, IOException {
        Walk walk = new Walk(folder);
        Files.walkFileTree(folder, walk);
        if (walk.refused != null) {
            throw walk.refused;
        }
        for (Path file : walk.files.values()) {
            add(RESULTS + relative(folder, file), file, "");
        }
    }

    /**
     * Takes a site along: its manifest and what that names.
     *
     * @throws PackException if a file is not what the manifest says
     */
    public void addSite(Path site) throws PackException, IOException {
        Path real = site.toRealPath();
        for (Map.Entry<String, String> entry : Manifest.of(site).digests().entrySet()) {
            Path file = site.resolve(entry.getKey());
            boolean isOwn = Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                    && file.toRealPath().equals(real.resolve(entry.getKey()).normalize());
            if (!isOwn) {
                throw new PackException(entry.getKey() + " of the site is missing, or a link; publish again");
            }
            add(SITE + entry.getKey(), file, entry.getValue());
        }
        add(SITE + Manifest.FILE, site.resolve(Manifest.FILE), "");
    }

    /** All files, by their path in the package. */
    public SortedMap<String, Piece> pieces() {
        return Collections.unmodifiableSortedMap(pieces);
    }

    /** How long they are together. */
    public long bytes() {
        return bytes;
    }

    private void add(String path, Path file, String sha256) throws PackException, IOException {
        checkName(path);
        long size = Files.size(file);
        if (bytes + size > mostBytes || pieces.size() >= MOST_FILES) {
            throw new PackException("the package would hold more than "
                    + (pieces.size() >= MOST_FILES ? MOST_FILES + " files" : mostBytes / 1_000_000_000 + " GB")
                    + "; raise --most, or pack less");
        }
        Piece piece;
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            piece = Piece.of(file, in);
        }
        if (!sha256.isEmpty() && !piece.sha256().equals(sha256)) {
            throw new PackException(path.substring(SITE.length())
                    + " of the site is not what its manifest says; publish again, or ask “evenhand audit”");
        }
        bytes += piece.size();
        pieces.put(path, piece);
    }

    /**
     * A package may be opened on a system that knows fewer names. "%" is taken by no reader as RFC 8493, 2.1.3, has it: the
     * one of the Library of Congress (bagit-java 5.2.0) leaves its code as it stands.
     */
    private void checkName(String path) throws PackException {
        if (path.chars().anyMatch(c -> c == '\\' || c == '%' || Character.isISOControl(c))) {
            throw new PackException("the name of " + path.replaceAll("\\p{Cntrl}", "?")
                    + " holds a character that not every reader of packages takes; rename the file");
        }
        String plain = Normalizer.normalize(path, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
        String other = alike.put(plain, path);
        if (other != null) {
            throw new PackException(other + " and " + path + " are one name on some systems; rename one of the two");
        }
    }

    private static String relative(Path folder, Path file) {
        return folder.relativize(file).toString().replace(file.getFileSystem().getSeparator(), "/");
    }

    /** Finds the regular files of a folder, and stops at what is neither one nor a folder. */
    private static final class Walk extends SimpleFileVisitor<Path> {

        private final Path root;
        private final SortedMap<String, Path> files = new TreeMap<>();
        private PackException refused;

        Walk(Path root) {
            this.root = root;
        }

        @Override
        public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
            if (!folder.equals(root) && isHidden(folder)) {
                return FileVisitResult.SKIP_SUBTREE;
            }
            if (folder.getNameCount() - root.getNameCount() > MOST_DEPTH) {
                refused = new PackException(relative(root, folder) + " lies more than " + MOST_DEPTH + " folders deep");
                return FileVisitResult.TERMINATE;
            }
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            if (isHidden(file)) {
                return FileVisitResult.CONTINUE;
            }
            if (!attributes.isRegularFile()) {
                String kind = attributes.isSymbolicLink() ? "a link" : "no ordinary file";
                refused = new PackException(relative(root, file) + " is " + kind
                        + "; put a copy of the file in its place, or take it away");
                return FileVisitResult.TERMINATE;
            }
            files.put(relative(root, file), file);
            return FileVisitResult.CONTINUE;
        }

        private static boolean isHidden(Path path) {
            String name = path.getFileName().toString();
            return name.startsWith(".") && !name.equals(".schema");
        }
    }
}
