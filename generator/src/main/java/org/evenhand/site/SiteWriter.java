package org.evenhand.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.evenhand.cache.Cache;
import org.evenhand.page.PageSink;
import org.evenhand.page.SiteFile;
import org.evenhand.read.Sha256;

/**
 * Writes a site beside its target and puts it in place by two renames.
 *
 * <p>Files in the target that the former manifest does not name are somebody else's: they move along, and if the new site needs
 * their place the publication is refused.
 */
public final class SiteWriter implements PageSink, AutoCloseable {

    private final Disk disk;
    private final Path target;
    private final Workshop workshop;
    private final Path prepared;
    private final Cache cache;
    private final Stood stood;
    private final Set<String> copies = ConcurrentHashMap.newKeySet();
    private final Map<String, String> digests = new ConcurrentHashMap<>();
    private final Map<String, String> byLowerCase = new ConcurrentHashMap<>();

    private SiteWriter(Disk disk, Path target, Workshop workshop, Cache cache) {
        this.cache = cache;
        this.disk = disk;
        this.target = target;
        this.stood = Stood.at(target, cache);
        this.workshop = workshop;
        this.prepared = workshop.prepared();
    }

    /**
     * Begins a site, and mends what a publication that was cut short has left. Until it is closed, no other can begin.
     *
     * @param wanted where it is to stand
     * @param source the results folder it is made from
     * @throws TargetException if it may not stand there, or if another publication is going on
     * @throws IOException if the folder around it may not be written; {@link Trouble} says it in words
     */
    public static SiteWriter begin(Path wanted, Path source) throws TargetException, IOException {
        return begin(wanted, source, Cache.none());
    }

    /**
     * The same, without writing again what the former site has already.
     *
     * @param cache knows what the files of the former site hold
     */
    public static SiteWriter begin(Path wanted, Path source, Cache cache) throws TargetException, IOException {
        return begin(wanted, source, cache, new LocalDisk());
    }

    static SiteWriter begin(Path wanted, Path source, Disk disk) throws TargetException, IOException {
        return begin(wanted, source, Cache.none(), disk);
    }

    static SiteWriter begin(Path wanted, Path source, Cache cache, Disk disk) throws TargetException, IOException {
        Path target = Target.check(wanted, source);
        return new SiteWriter(disk, target, Workshop.open(disk, target), cache);
    }

    /** @throws UncheckedIOException if it cannot be written */
    @Override
    public void put(String path, byte[] bytes) {
        try {
            disk.write(place(path), bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        digests.put(path, Sha256.of(bytes));
    }

    /** @throws IOException if the source cannot be read, or is not what it was when it was read before */
    @Override
    public void copy(String path, Path source, String sha256) throws IOException {
        take(path, source, sha256);
        copies.add(path);
    }

    private void take(String path, Path source, String sha256) throws IOException {
        Path place = place(path);
        Optional<Path> former = stood.holding(path, sha256);
        if (former.isEmpty() || !isLinked(former.get(), place)) {
            String found = disk.copy(source, place);
            if (!found.equals(sha256)) {
                throw new IOException(source.getFileName()
                        + " changed while the site was made of it; publish again when nobody writes to it");
            }
        }
        digests.put(path, sha256);
    }

    /** @throws UncheckedIOException if a file of the former site cannot be taken over */
    @Override
    public boolean again(SortedMap<String, SiteFile> files) {
        Map<String, Path> former = new TreeMap<>();
        files.forEach((path, file) -> stood.holding(path, file.sha256()).ifPresent(at -> former.put(path, at)));
        if (former.size() < files.size()) {
            return false;
        }
        try {
            for (Map.Entry<String, Path> entry : former.entrySet()) {
                take(entry.getKey(), entry.getValue(), files.get(entry.getKey()).sha256());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return true;
    }

    private boolean isLinked(Path former, Path place) {
        try {
            disk.link(former, place);
            return true;
        } catch (IOException e) {
            return false; // then it is copied
        }
    }

    private Path place(String path) throws IOException {
        String before = byLowerCase.putIfAbsent(path.toLowerCase(Locale.ROOT), path);
        if (before != null) {
            throw new IllegalStateException("two files for one address: " + before + ", " + path);
        }
        try {
            Path file = prepared.resolve(path).normalize();
            if (!file.startsWith(prepared) || file.equals(prepared)) {
                throw new IllegalStateException("an address outside of the site: " + path);
            }
            disk.createFolders(file.getParent());
            return file;
        } catch (InvalidPathException e) {
            throw new IOException("a file cannot be called " + path + " here; give it a plainer name", e);
        }
    }

    /**
     * Puts the site in place.
     *
     * @return what it consists of
     * @throws TargetException if a file of somebody else's stands in the way; then the former site stays
     * @throws IOException if it cannot be put in place; then the former site stays
     */
    public Manifest finish() throws TargetException, IOException {
        Manifest manifest = new Manifest(new TreeMap<>(digests));
        disk.write(prepared.resolve(Manifest.FILE), manifest.bytes());
        if (disk.exists(target)) {
            refuseAltered();
            keepStrangers();
        }
        workshop.exchange(manifest);
        Stood.keep(target, digests, cache);
        return manifest;
    }

    /**
     * What somebody wrote into our pages would be gone with them. Copies of the folder's own files are left out: they are
     * large, and what they should hold stands in the folder.
     */
    private void refuseAltered() throws TargetException, IOException {
        if (!disk.exists(target.resolve(Manifest.FILE))) {
            return;
        }
        List<String> altered = Manifest.of(target).digests().entrySet().parallelStream()
                .filter(e -> !copies.contains(e.getKey())
                        && stood.holding(e.getKey(), e.getValue()).isEmpty()
                        && isAltered(target.resolve(e.getKey()), e.getValue()))
                .map(Map.Entry::getKey)
                .toList();
        if (!altered.isEmpty()) {
            throw new TargetException("these files of " + target.getFileName()
                    + " were altered since they were published, and are not replaced: "
                    + altered.stream().limit(5).collect(Collectors.joining(", "))
                    + (altered.size() > 5 ? " and " + (altered.size() - 5) + " more" : "")
                    + "; keep elsewhere what you need of them, delete them, and publish again");
        }
    }

    private static boolean isAltered(Path file, String sha256) {
        try {
            return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                    && !Sha256.of(file).equals(sha256);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void keepStrangers() throws TargetException, IOException {
        Set<String> ours = new HashSet<>();
        if (disk.exists(target.resolve(Manifest.FILE))) {
            ours.addAll(Manifest.of(target).digests().keySet());
            ours.add(Manifest.FILE);
        }
        List<Path> entries = disk.walk(target);
        Set<Path> filled = entries.stream().map(Path::getParent).collect(Collectors.toSet());
        List<String> strangers = entries.stream()
                .filter(e -> !Files.isDirectory(e, LinkOption.NOFOLLOW_LINKS) || !filled.contains(e))
                .map(e -> Manifest.path(target, e))
                .filter(path -> !ours.contains(path))
                .toList();
        List<String> inTheWay = strangers.stream().filter(this::isInTheWay).toList();
        if (!inTheWay.isEmpty()) {
            throw new TargetException("these files of " + target.getFileName()
                    + " are not of a former site, and the new one needs their place: "
                    + inTheWay.stream().limit(5).collect(Collectors.joining(", ")));
        }
        for (String stranger : strangers) {
            Path to = prepared.resolve(stranger);
            boolean isThere = Files.isDirectory(to); // an empty folder of theirs that the new site fills
            if (!isThere) {
                disk.createFolders(to.getParent());
                disk.carryOver(target.resolve(stranger), to);
            }
        }
    }

    /** Asks the file system, which may take two names for one. An empty folder stands in the way of a file alone. */
    private boolean isInTheWay(String stranger) {
        Path place = prepared.resolve(stranger);
        for (Path above = place.getParent(); !above.equals(prepared); above = above.getParent()) {
            if (Files.isRegularFile(above)) {
                return true;
            }
        }
        boolean isFolder = Files.isDirectory(target.resolve(stranger), LinkOption.NOFOLLOW_LINKS);
        return disk.exists(place) && !(isFolder && Files.isDirectory(place));
    }

    /** Throws away what was prepared, if it was not put in place, and lets others begin. */
    @Override
    public void close() {
        workshop.close();
    }
}
