package org.evenhand.command.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenhand.read.Sha256;
import org.evenhand.site.Manifest;

/** A site against its own manifest: every file there and unaltered, and no stranger among them. */
public final class Integrity {

    private Integrity() {}

    /** @throws IOException if the site cannot be walked through */
    public static SortedSet<Difference> differences(Path site, Manifest manifest) throws IOException {
        SortedSet<Difference> differences = new TreeSet<>();
        for (Map.Entry<String, String> entry : manifest.digests().entrySet()) {
            String wrong = wrong(site, entry.getKey(), entry.getValue());
            if (!wrong.isEmpty()) {
                differences.add(new Difference(entry.getKey(), wrong));
            }
        }
        strangers(site, manifest)
                .forEach(path ->
                        differences.add(new Difference(path, "is not of this site: the manifest does not name it")));
        return differences;
    }

    /**
     * What stands in a site and is not of it, by path.
     *
     * @throws IOException if the site cannot be walked through
     */
    public static SortedSet<String> strangers(Path site, Manifest manifest) throws IOException {
        try (Stream<Path> entries = Files.walk(site)) {
            return entries.filter(e -> !Files.isDirectory(e, LinkOption.NOFOLLOW_LINKS))
                    .map(e -> site.relativize(e).toString().replace('\\', '/'))
                    .filter(path ->
                            !path.equals(Manifest.FILE) && !manifest.digests().containsKey(path))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static String wrong(Path site, String path, String sha256) {
        Path file;
        try {
            file = site.resolve(path).normalize();
        } catch (InvalidPathException e) {
            return "is named by the manifest, and no file can be called so here";
        }
        if (!file.startsWith(site.normalize())) {
            return "is named by the manifest, and lies outside of the site";
        }
        if (Files.isSymbolicLink(file)) {
            return "is a link; a site of ours has none";
        }
        if (!Files.isRegularFile(file)) {
            return "is missing";
        }
        try {
            return Sha256.of(file).equals(sha256) ? "" : "is altered: its SHA-256 is not that of the manifest";
        } catch (IOException e) {
            return "cannot be read";
        }
    }
}
