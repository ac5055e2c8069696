package org.evenhand.site;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.evenhand.read.DigestList;

/**
 * Every file of a site with its SHA-256, in the form that the usual tools check: digest, two spaces, path.
 *
 * @param digests by path from the site's root, bytewise sorted; the manifest itself is not among them
 */
public record Manifest(SortedMap<String, String> digests) {

    /** Its name at the root of a site. */
    public static final String FILE = "manifest-sha256.txt";

    public Manifest {
        digests = Collections.unmodifiableSortedMap(new TreeMap<>(digests));
    }

    /**
     * Reads the manifest of a site.
     *
     * @throws IOException if it cannot be read or is none
     */
    public static Manifest of(Path site) throws IOException {
        return new Manifest(DigestList.read(site.resolve(FILE)));
    }

    /** How a manifest names a file of a site. */
    static String path(Path site, Path file) {
        return site.relativize(file).toString().replace('\\', '/');
    }

    byte[] bytes() {
        return DigestList.write(digests).getBytes(StandardCharsets.UTF_8);
    }
}
