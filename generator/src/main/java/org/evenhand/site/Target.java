package org.evenhand.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Where a site is to stand, once it is sure that nothing of somebody else's is in the way. */
final class Target {

    private static final List<String> RESULTS = List.of("publication.yaml", "publication.yml", "publication.json");

    private Target() {}

    /**
     * Makes sure that the folder may be written.
     *
     * @param wanted as the user gave it
     * @param source the results folder, which must stay apart
     * @return the same, absolute and without ".."
     */
    static Path check(Path wanted, Path source) throws TargetException, IOException {
        Path target = wanted.toAbsolutePath().normalize();
        if (target.getParent() == null || target.getFileName() == null) {
            throw new TargetException("a site cannot be the root of the file system; give a folder of its own");
        }
        String home = System.getProperty("user.home", "");
        if (!home.isEmpty() && target.equals(Path.of(home).toAbsolutePath().normalize())) {
            throw new TargetException("a site cannot be your home folder; give a folder of its own");
        }
        Path results = source.toAbsolutePath().normalize();
        if (results.startsWith(target) || target.startsWith(results)) {
            throw new TargetException(
                    "the site and the results folder cannot stand within each other; give a folder elsewhere");
        }
        if (Files.isSymbolicLink(target)) {
            throw new TargetException(target.getFileName() + " is a link; give the folder it leads to");
        }
        if (Files.exists(target)) {
            checkExisting(target);
        }
        return target;
    }

    private static void checkExisting(Path target) throws TargetException, IOException {
        if (!Files.isDirectory(target)) {
            throw new TargetException(target.getFileName() + " is a file; give a folder");
        }
        for (String results : RESULTS) {
            if (Files.exists(target.resolve(results))) {
                throw new TargetException(target.getFileName() + " is a results folder; give a folder for the site");
            }
        }
        boolean empty;
        try (Stream<Path> entries = Files.list(target)) {
            empty = entries.findAny().isEmpty();
        }
        if (!empty && !Files.isRegularFile(target.resolve(Manifest.FILE))) {
            throw new TargetException(target.getFileName()
                    + " holds files, but none of them says that it is a site of ours; give an empty or a new folder");
        }
    }
}
