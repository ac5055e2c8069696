package org.evenhand.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenhand.page.PageSink;

/**
 * Writes a site beside its target and puts it in place by two renames.
 *
 * <p>Files in the target that the former manifest does not name are somebody else's: they move along, and if the new site needs
 * their place the publication is refused.
 */
public final class SiteWriter implements PageSink, AutoCloseable {

    private final Path target;
    private final Path prepared;
    private final Path former;
    private final Map<String, String> digests = new ConcurrentHashMap<>();
    private final Map<String, String> byLowerCase = new ConcurrentHashMap<>();

    private SiteWriter(Path target) {
        this.target = target;
        String name = target.getFileName().toString();
        this.prepared = target.resolveSibling("." + name + ".new");
        this.former = target.resolveSibling("." + name + ".old");
    }

    /**
     * Begins a site, and mends what a publication that was cut short has left.
     *
     * @param wanted where it is to stand
     * @param source the results folder it is made from
     * @throws TargetException if it may not stand there
     */
    public static SiteWriter begin(Path wanted, Path source) throws TargetException, IOException {
        Path target = Target.check(wanted, source);
        SiteWriter writer = new SiteWriter(target);
        writer.mend();
        Files.createDirectories(writer.prepared);
        return writer;
    }

    /** Cut short between the two renames, the former site is put back; what was half prepared is thrown away. */
    private void mend() throws IOException {
        if (Files.exists(former) && !Files.exists(target)) {
            Files.move(former, target, StandardCopyOption.ATOMIC_MOVE);
        }
        delete(former);
        delete(prepared);
    }

    @Override
    public void put(String path, byte[] bytes) {
        String before = byLowerCase.putIfAbsent(path.toLowerCase(Locale.ROOT), path);
        if (before != null) {
            throw new IllegalStateException("two files for one address: " + before + ", " + path);
        }
        try {
            Path file = prepared.resolve(path);
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        digests.put(path, Manifest.sha256(bytes));
    }

    /**
     * Puts the site in place.
     *
     * @return what it consists of
     * @throws TargetException if a file of somebody else's stands in the way; then the former site stays
     */
    public Manifest finish() throws TargetException, IOException {
        Manifest manifest = new Manifest(new TreeMap<>(digests));
        Files.write(prepared.resolve(Manifest.FILE), manifest.bytes());
        boolean replaces = Files.exists(target);
        if (replaces) {
            keepStrangers(manifest);
            Files.move(target, former, StandardCopyOption.ATOMIC_MOVE);
        } else {
            Files.createDirectories(target.getParent());
        }
        Files.move(prepared, target, StandardCopyOption.ATOMIC_MOVE);
        delete(former);
        return manifest;
    }

    private void keepStrangers(Manifest manifest) throws TargetException, IOException {
        Set<String> ours = new TreeSet<>();
        if (Files.exists(target.resolve(Manifest.FILE))) {
            ours.addAll(Manifest.of(target).digests().keySet());
            ours.add(Manifest.FILE);
        }
        List<String> strangers =
                files(target).stream().filter(f -> !ours.contains(f)).toList();
        List<String> inTheWay = strangers.stream()
                .filter(f -> manifest.digests().containsKey(f))
                .toList();
        if (!inTheWay.isEmpty()) {
            throw new TargetException("these files of " + target.getFileName()
                    + " are not of a former site, and the new one needs their place: "
                    + inTheWay.stream().limit(5).collect(Collectors.joining(", ")));
        }
        for (String stranger : strangers) {
            Path to = prepared.resolve(stranger);
            Files.createDirectories(to.getParent());
            Files.copy(target.resolve(stranger), to, StandardCopyOption.COPY_ATTRIBUTES);
        }
    }

    /** Throws away what was prepared, if it was not put in place. */
    @Override
    public void close() throws IOException {
        delete(prepared);
    }

    private static List<String> files(Path folder) throws IOException {
        List<String> files = new ArrayList<>();
        try (Stream<Path> entries = Files.walk(folder)) {
            entries.filter(Files::isRegularFile)
                    .map(f -> folder.relativize(f).toString().replace('\\', '/'))
                    .sorted()
                    .forEach(files::add);
        }
        return files;
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        List<Path> deepestFirst;
        try (Stream<Path> entries = Files.walk(folder)) {
            deepestFirst = entries.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path entry : deepestFirst) {
            Files.delete(entry);
        }
    }
}
