package org.evenhand.browser;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A Chromium without a window, with a profile of its own that goes when it is closed.
 *
 * <p>The program is the one that the system property {@code evenhand.chromium} names, else {@code chromium} or {@code
 * chromium-browser} on the path.
 */
public final class Chromium implements AutoCloseable {

    private static final long START_LIMIT_S = 60;
    private static Chromium shared;

    private final Path profile;
    private final Process process;
    private final DevTools tools;

    private Chromium(Path profile, Process process, DevTools tools) {
        this.profile = profile;
        this.process = process;
        this.tools = tools;
    }

    /** Whether there is one to be started. */
    public static boolean isPresent() {
        return program().isPresent();
    }

    /** The one that all tests of this process share; it ends with the process. */
    public static synchronized Chromium shared() {
        if (shared == null) {
            shared = start();
            Runtime.getRuntime().addShutdownHook(new Thread(shared::close));
        }
        return shared;
    }

    /**
     * Starts one.
     *
     * @throws IllegalStateException if there is none, or it does not answer within a minute
     */
    public static Chromium start() {
        Path program = program().orElseThrow(() -> new IllegalStateException("no Chromium"));
        try {
            Path profile = Files.createTempDirectory("evenhand-chromium-");
            // Without a sandbox, for those who build as root or in a container: it is shown our own pages only.
            Process process = new ProcessBuilder(
                            program.toString(),
                            "--headless",
                            "--no-sandbox",
                            "--disable-gpu",
                            "--disable-dev-shm-usage",
                            "--disable-background-networking",
                            "--disable-component-update",
                            "--no-first-run",
                            "--hide-scrollbars",
                            "--remote-debugging-port=0",
                            "--user-data-dir=" + profile,
                            "about:blank")
                    .redirectErrorStream(true)
                    .redirectOutput(profile.resolve("output.txt").toFile())
                    .start();
            return new Chromium(profile, process, new DevTools(endpoint(profile, process)));
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    /** A new empty page, 1280 by 900 CSS pixels. */
    public Tab tab() {
        String target = tools.call("", "Target.createTarget", Map.of("url", "about:blank"))
                .path("targetId")
                .asText();
        String session = tools.call("", "Target.attachToTarget", Map.of("targetId", target, "flatten", true))
                .path("sessionId")
                .asText();
        return new Tab(tools, target, session);
    }

    @Override
    public void close() {
        tools.close();
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        try {
            process.waitFor(10, TimeUnit.SECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        try (Stream<Path> files = Files.walk(profile)) {
            files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
        } catch (IOException | UncheckedIOException leftOver) {
            // A profile in the folder for temporary files, which the last of its processes may still be leaving.
            profile.toFile().deleteOnExit();
        }
    }

    /** Where it listens: it writes port and path into its profile. */
    private static URI endpoint(Path profile, Process process) throws IOException {
        Path told = profile.resolve("DevToolsActivePort");
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(START_LIMIT_S);
        while (System.nanoTime() < end && process.isAlive()) {
            if (Files.exists(told)) {
                List<String> lines = Files.readAllLines(told);
                if (lines.size() == 2) return URI.create("ws://127.0.0.1:" + lines.get(0) + lines.get(1));
            }
            try {
                Thread.sleep(20);
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
                break;
            }
        }
        process.destroyForcibly();
        throw new IllegalStateException("Chromium did not start:\n" + Files.readString(profile.resolve("output.txt")));
    }

    private static Optional<Path> program() {
        String named = System.getProperty("evenhand.chromium", "");
        if (!named.isEmpty()) return Optional.of(Path.of(named)).filter(Files::isExecutable);
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .filter(folder -> !folder.isEmpty())
                .flatMap(folder -> Stream.of("chromium", "chromium-browser").map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }
}
