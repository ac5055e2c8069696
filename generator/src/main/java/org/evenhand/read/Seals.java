package org.evenhand.read;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.evenhand.model.Limits;
import org.evenhand.model.Seal;
import org.evenhand.model.Seal.Flaw;

/**
 * Reads the sealed versions of answers: those of a results folder, where they lie below {@code sealed/}, or those of a
 * site. Both have the same paths; on a site the pages have a banner.
 */
public final class Seals {

    /** The folder of a results folder that holds what was sealed. */
    public static final String FOLDER = "sealed";

    private static final Pattern VERSION = Pattern.compile("[1-9][0-9]{0,5}");
    private static final String ANSWERS = "answers";

    private Seals() {}

    /**
     * All that was sealed.
     *
     * @param tree the sealed folder of a results folder, or a site
     * @return by study, the oldest version first; nothing if nothing was sealed
     */
    public static SortedMap<String, List<Seal>> of(Path tree) {
        SortedMap<String, List<Seal>> seals = new TreeMap<>();
        for (String study : names(tree.resolve(ANSWERS))) {
            List<Seal> versions = names(tree.resolve(ANSWERS).resolve(study).resolve("v")).stream()
                    .filter(name -> VERSION.matcher(name).matches())
                    .map(Integer::parseInt)
                    .sorted()
                    .map(version -> read(tree, study, version))
                    .toList();
            if (!versions.isEmpty() && Scalars.ID.matcher(study).matches()) {
                seals.put(study, versions);
            }
        }
        return seals;
    }

    private static List<String> names(Path folder) {
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(p -> p.getFileName().toString())
                    .filter(name -> !name.startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    private static Seal read(Path tree, String study, int version) {
        String folder = Seal.folder(study, version);
        SortedMap<String, String> files;
        try {
            files = DigestList.read(tree.resolve(folder + Seal.LIST));
        } catch (IOException e) {
            return new Seal(
                    study,
                    version,
                    "",
                    Collections.emptySortedMap(),
                    List.of(new Seal.Fault(folder + Seal.LIST, Flaw.LIST_MISSING)));
        }
        List<Seal.Fault> faults = new ArrayList<>();
        for (Map.Entry<String, String> file : files.entrySet()) {
            boolean isOwn = file.getKey().startsWith(folder) || file.getKey().startsWith("assets/");
            Optional<Flaw> flaw =
                    isOwn ? flaw(tree, file.getKey(), file.getValue()) : Optional.of(Flaw.OF_OTHER_VERSION);
            flaw.ifPresent(f -> faults.add(new Seal.Fault(file.getKey(), f)));
        }
        if (!files.containsKey(folder + "index.html")) {
            faults.add(new Seal.Fault(folder + "index.html", Flaw.NOT_LISTED));
        }
        return new Seal(study, version, question(tree, folder), files, faults);
    }

    private static Optional<Flaw> flaw(Path tree, String path, String sha256) {
        try {
            Path file = tree.resolve(path);
            if (!file.normalize().startsWith(tree.normalize())) {
                return Optional.of(Flaw.ELSEWHERE);
            }
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                return Optional.of(Flaw.MISSING);
            }
            byte[] bytes = Files.readAllBytes(file);
            if (path.endsWith(".html")) {
                bytes = SealedPage.withoutBanner(new String(bytes, StandardCharsets.UTF_8))
                        .getBytes(StandardCharsets.UTF_8);
            }
            return Sha256.of(bytes).equals(sha256)
                    ? SealedContent.flaw(path, new String(bytes, StandardCharsets.UTF_8))
                    : Optional.of(Flaw.CHANGED);
        } catch (IOException | InvalidPathException e) {
            return Optional.of(Flaw.UNREADABLE);
        }
    }

    /** A later version of the program may not understand the text any more, and the seal holds all the same. */
    private static String question(Path tree, String folder) {
        Optional<Document> text = Files.isRegularFile(tree.resolve(folder + FormerAnswer.TEXT))
                ? Document.read(
                        tree, folder + FormerAnswer.TEXT, StudyFile.SHAPE, (f, x) -> {}, Limits.DEFAULT, new Faults())
                : Optional.empty();
        return text.flatMap(t -> t.fields().optionalText("question")).orElse("");
    }
}
