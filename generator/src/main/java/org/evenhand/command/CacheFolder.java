package org.evenhand.command;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.evenhand.cache.Cache;
import org.evenhand.cache.FileState;

/** Where the user's cache lies, by the customs of the system. */
final class CacheFolder {

    private CacheFolder() {}

    /** The cache of this build of the program; one that keeps nothing where the program does not come from a jar. */
    static Cache open() {
        Optional<String> program = program();
        Optional<Path> folder =
                of(System.getProperty("os.name", ""), System.getProperty("user.home", ""), System.getenv());
        return program.isPresent() && folder.isPresent() ? Cache.in(folder.get(), program.get()) : Cache.none();
    }

    /**
     * The folder: XDG_CACHE_HOME or .cache, LOCALAPPDATA on Windows, Library/Caches on macOS, and "evenhand" in it.
     *
     * @param home of the user; empty if there is none
     * @return nothing where the system has no place for it
     */
    static Optional<Path> of(String system, String home, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        String fallback = home.isEmpty() ? "" : home + "/.cache";
        String around;
        if (name.startsWith("windows")) {
            around = environment.getOrDefault("LOCALAPPDATA", "");
        } else if (name.startsWith("mac")) {
            around = home.isEmpty() ? "" : home + "/Library/Caches";
        } else {
            String wanted = environment.getOrDefault("XDG_CACHE_HOME", "");
            around = wanted.startsWith("/") ? wanted : fallback;
        }
        try {
            return around.isEmpty() ? Optional.empty() : Optional.of(Path.of(around, "evenhand"));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** Tells this build from any other: a version alone is the same for all that is built on the way to the next. */
    private static Optional<String> program() {
        CodeSource source = CacheFolder.class.getProtectionDomain().getCodeSource();
        try {
            Path jar = Path.of(source.getLocation().toURI());
            return Files.isRegularFile(jar)
                    ? Optional.of(Version.current() + " " + FileState.of(jar))
                    : Optional.empty();
        } catch (URISyntaxException | IOException | RuntimeException e) {
            return Optional.empty();
        }
    }
}
