package org.evenhand.command.audit;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.evenhand.page.PageSink;
import org.evenhand.read.Sha256;
import org.evenhand.site.Manifest;

/** A site that is made for its digests alone. */
public final class Digests implements PageSink {

    private final Map<String, String> digests = new ConcurrentHashMap<>();

    @Override
    public void put(String path, byte[] bytes) {
        digests.put(path, Sha256.of(bytes));
    }

    @Override
    public void copy(String path, Path source, String sha256) throws IOException {
        digests.put(path, sha256);
    }

    /** What the folder gives otherwise than the manifest says. */
    public SortedSet<Difference> from(Manifest manifest) {
        SortedSet<Difference> differences = new TreeSet<>();
        manifest.digests().forEach((path, sha256) -> {
            String made = digests.get(path);
            if (made == null) {
                differences.add(new Difference(path, "is of the site, and the folder does not give it"));
            } else if (!made.equals(sha256)) {
                differences.add(new Difference(path, "comes out of the folder otherwise"));
            }
        });
        digests.keySet().stream()
                .filter(path -> !manifest.digests().containsKey(path))
                .forEach(path ->
                        differences.add(new Difference(path, "comes out of the folder, and the site lacks it")));
        return differences;
    }
}
