package org.evenhand.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentSkipListMap;
import org.evenhand.cache.Cache;
import org.evenhand.cache.FileState;

/**
 * The files of a site as they stood when it was put in place, so that one that nobody has written to since need not be read to
 * know what it holds.
 *
 * @param target the site's folder
 * @param files by path
 */
record Stood(Path target, SortedMap<String, File> files) {

    /**
     * A file of the site.
     *
     * @param state what the file system told of it
     * @param sha256 of its bytes, in hexadecimal
     */
    record File(String state, String sha256) {}

    /** What the cache keeps. */
    record Kept(SortedMap<String, File> files) {}

    /** Those of the site that stands at a target; none if nothing is known of it. */
    static Stood at(Path target, Cache cache) {
        return new Stood(
                target,
                cache.get(key(target, cache), Kept.class).map(Kept::files).orElse(new ConcurrentSkipListMap<>()));
    }

    /** Takes note of a site that was put in place just now. */
    static void keep(Path target, Map<String, String> digests, Cache cache) {
        if (cache.keepsNothing()) {
            return;
        }
        SortedMap<String, File> files = new ConcurrentSkipListMap<>();
        digests.entrySet().parallelStream().forEach(entry -> {
            try {
                FileState state = FileState.of(target.resolve(entry.getKey()));
                files.put(entry.getKey(), new File(state.toString(), entry.getValue()));
            } catch (IOException e) {
                // Somebody has taken it away; it is made again the next time.
            }
        });
        cache.put(key(target, cache), new Kept(files));
    }

    private static String key(Path target, Cache cache) {
        return cache.key("site", target.toAbsolutePath().normalize().toString());
    }

    /** The file at a path, if it still stands there and is known to hold these bytes. */
    Optional<Path> holding(String path, String sha256) {
        File known = files.get(path);
        if (known == null || !known.sha256().equals(sha256)) {
            return Optional.empty();
        }
        try {
            Path file = target.resolve(path);
            boolean same = Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                    && FileState.of(file).toString().equals(known.state());
            return same ? Optional.of(file) : Optional.empty();
        } catch (IOException | InvalidPathException e) {
            return Optional.empty();
        }
    }
}
