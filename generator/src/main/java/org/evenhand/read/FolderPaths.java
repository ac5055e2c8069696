package org.evenhand.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.evenhand.model.Limits;
import org.evenhand.model.Place;
import org.evenhand.model.Quota;

/** Finds files within a results folder, and nothing outside it. */
final class FolderPaths {

    private final Path root;
    private final Path realRoot;
    private final Limits limits;

    FolderPaths(Path root, Limits limits) throws IOException {
        this.root = root;
        this.realRoot = root.toRealPath();
        this.limits = limits;
    }

    Path root() {
        return root;
    }

    boolean isFolder(String folder) {
        return Files.isDirectory(root.resolve(folder));
    }

    boolean isFile(String file) {
        return Files.isRegularFile(root.resolve(file));
    }

    /** The names in a folder, in bytewise order; none if there is no such folder. Hidden files are passed over. */
    List<String> names(String folder, Faults faults) {
        return names(folder, Quota.FOLDER_ENTRIES, faults);
    }

    /** The same, where there may be another number of them. */
    List<String> names(String folder, Quota quota, Faults faults) {
        if (limits.of(Quota.FOLDER_ENTRIES) < limits.of(quota)) {
            return names(folder, Quota.FOLDER_ENTRIES, faults);
        }
        long most = limits.of(quota);
        Path path = root.resolve(folder);
        if (!Files.isDirectory(path)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(path)) {
            List<String> names = entries.map(p -> p.getFileName().toString())
                    .filter(name -> !name.startsWith("."))
                    .limit(most + 1L)
                    .sorted()
                    .toList();
            if (names.size() <= most) {
                return names;
            }
            UnreadableException.tooMuch(
                            Place.of(folder),
                            "the folder has more entries than are read",
                            limits,
                            quota,
                            "split it into several")
                    .reportTo(faults);
            return names.subList(0, (int) most);
        } catch (IOException e) {
            faults.add(
                    Rules.FILE_UNREADABLE,
                    Place.of(folder),
                    "the folder cannot be listed",
                    "check that you may read it");
            return List.of();
        }
    }

    /** Whether the file is where it seems to be, and not a link to somewhere else. */
    boolean isInside(String file, Faults faults) {
        try {
            if (root.resolve(file).toRealPath().startsWith(realRoot)) {
                return true;
            }
            faults.add(
                    Rules.PATH_OUTSIDE,
                    Place.of(file),
                    "this is a link to a place outside the results folder",
                    "copy the file into the folder");
            return false;
        } catch (IOException e) {
            faults.add(
                    Rules.FILE_UNREADABLE,
                    Place.of(file),
                    "the file cannot be reached",
                    "check that the link leads somewhere");
            return false;
        }
    }

    /**
     * Resolves a path that stands in a file.
     *
     * @param from the file in which it stands
     * @param text the path, with its place
     * @return the path relative to the results folder, without "." and ".."; nothing if it leads outside
     */
    Optional<String> resolve(String from, Node.Text text, Faults faults) {
        String written = text.value();
        boolean absolute = written.startsWith("/") || written.startsWith("\\") || written.matches("[A-Za-z]:.*");
        if (absolute || written.indexOf('\\') >= 0 || written.indexOf('\0') >= 0) {
            return outside(text, faults);
        }
        Deque<String> parts = new ArrayDeque<>(List.of(from.split("/")));
        parts.removeLast();
        for (String part : written.split("/")) {
            if (part.equals("..")) {
                if (parts.isEmpty()) {
                    return outside(text, faults);
                }
                parts.removeLast();
            } else if (!part.isEmpty() && !part.equals(".")) {
                parts.addLast(part);
            }
        }
        String normal = String.join("/", new ArrayList<>(parts));
        try {
            Path path = root.resolve(normal);
            if (Files.exists(path) && !path.toRealPath().startsWith(realRoot)) {
                return outside(text, faults);
            }
        } catch (IOException | InvalidPathException e) {
            return outside(text, faults);
        }
        return Optional.of(normal);
    }

    private static Optional<String> outside(Node.Text text, Faults faults) {
        faults.add(
                Rules.PATH_OUTSIDE,
                text.place(),
                "“" + text.value() + "” leads out of the results folder",
                "put the file into the folder and give its path relative to this file, with / between the parts");
        return Optional.empty();
    }
}
