package org.evenhand.command.audit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.evenhand.model.Seal;
import org.evenhand.read.DigestList;
import org.evenhand.read.Seals;
import org.evenhand.words.Words;

/** Sealed versions of a site against the digests that were sealed with them; their banners apart. */
public final class SealAudit {

    private SealAudit() {}

    /** What is not as it was sealed. */
    public static SortedSet<Difference> differences(Path site) {
        SortedSet<Difference> differences = new TreeSet<>();
        for (Seal seal : all(site).values()) {
            seal.faults()
                    .forEach(fault ->
                            differences.add(new Difference(seal.folder(), "the seal is broken: " + said(fault))));
        }
        return differences;
    }

    private static String said(Seal.Fault fault) {
        return Words.english().say("seal." + fault.flaw().id(), fault.path());
    }

    /** How many sealed versions there are. */
    public static int count(Path site) {
        return all(site).size();
    }

    /**
     * Sealed versions of a former site that are gone, or that were sealed anew.
     *
     * @throws IOException if a list of digests cannot be read
     */
    public static SortedSet<Difference> lost(Path site, Path former) throws IOException {
        SortedSet<Difference> differences = new TreeSet<>();
        SortedMap<String, Seal> now = all(site);
        for (Map.Entry<String, Seal> before : all(former).entrySet()) {
            Seal seal = now.get(before.getKey());
            if (seal == null) {
                differences.add(new Difference(before.getKey(), "was sealed on the former site, and is gone"));
            } else if (!list(site, seal).equals(list(former, before.getValue()))) {
                differences.add(new Difference(before.getKey(), "is not what was sealed on the former site"));
            }
        }
        return differences;
    }

    private static SortedMap<String, String> list(Path site, Seal seal) throws IOException {
        Path list = site.resolve(seal.list());
        return Files.isRegularFile(list) ? DigestList.read(list) : new TreeMap<>();
    }

    private static SortedMap<String, Seal> all(Path site) {
        return Seals.of(site).values().stream()
                .flatMap(Collection::stream)
                .collect(Collectors.toMap(Seal::folder, s -> s, (a, b) -> a, TreeMap::new));
    }
}
