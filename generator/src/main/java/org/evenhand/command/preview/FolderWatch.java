package org.evenhand.command.preview;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * Tells when something in some folders has changed and come to rest.
 *
 * <p>The system's own notices only wake it early: what counts is a look at the files, since notices may be lost, and since
 * some file systems give none. All of it happens on one thread, and so does what the change brings about.
 */
final class FolderWatch implements AutoCloseable {

    /** How long the files must stay as they are before they count as written. */
    private static final Duration REST = Duration.ofMillis(50);
    /** After which time a change is told although the files do not come to rest. */
    private static final Duration PATIENCE = Duration.ofSeconds(1);
    /** Between two looks without a notice; looking shall not take more than a twentieth of the time. */
    private static final Duration LOOK = Duration.ofMillis(400);

    private static final int SHARE = 20;

    private final List<Path> roots;
    private final Runnable changed;
    private final Thread thread;
    private final Optional<WatchService> notices;
    private volatile boolean closed;
    private Snapshot last;
    private long lookedForNs;

    /**
     * Begins to watch.
     *
     * @param last how the folders stood when they were last read
     * @param changed is run after each change, never twice at a time
     * @param withNotices whether to ask the system for notices
     */
    FolderWatch(List<Path> roots, Snapshot last, Runnable changed, boolean withNotices) {
        this.roots = List.copyOf(roots);
        this.last = last;
        this.changed = changed;
        this.notices = withNotices ? service() : Optional.empty();
        this.thread = new Thread(this::watch, "evenhand-watch");
        thread.setDaemon(true);
        thread.start();
    }

    private static Optional<WatchService> service() {
        try {
            return Optional.of(FileSystems.getDefault().newWatchService());
        } catch (IOException | UnsupportedOperationException e) {
            return Optional.empty(); // looking does as well, only later
        }
    }

    private void watch() {
        try {
            register();
            while (!closed) {
                await();
                Snapshot now = look();
                if (!now.files().equals(last.files())) {
                    last = settled(now);
                    register();
                    changed.run();
                }
            }
        } catch (InterruptedException | ClosedWatchServiceException e) {
            closed = true;
        }
    }

    private Snapshot look() {
        long begun = System.nanoTime();
        Snapshot now = Snapshot.of(roots);
        lookedForNs = System.nanoTime() - begun;
        return now;
    }

    /** Looks again until two looks see the same, so that a file that is being written is not read by halves. */
    private Snapshot settled(Snapshot first) throws InterruptedException {
        long until = System.nanoTime() + PATIENCE.toNanos();
        Snapshot before = first;
        while (true) {
            Thread.sleep(REST.toMillis());
            Snapshot now = look();
            if (now.files().equals(before.files()) || System.nanoTime() - until >= 0) {
                return now;
            }
            before = now;
        }
    }

    private void await() throws InterruptedException {
        long ms = Math.max(LOOK.toMillis(), TimeUnit.NANOSECONDS.toMillis(SHARE * lookedForNs));
        if (notices.isEmpty()) {
            Thread.sleep(ms);
            return;
        }
        WatchKey key = notices.get().poll(ms, TimeUnit.MILLISECONDS);
        while (key != null) {
            key.pollEvents();
            key.reset();
            key = notices.get().poll();
        }
    }

    /** Asks for notices from all folders; from one that is asked already this changes nothing. */
    private void register() {
        for (Path folder : notices.isPresent() ? last.folders() : List.<Path>of()) {
            try {
                folder.register(
                        notices.get(),
                        StandardWatchEventKinds.ENTRY_CREATE,
                        StandardWatchEventKinds.ENTRY_DELETE,
                        StandardWatchEventKinds.ENTRY_MODIFY);
            } catch (IOException e) {
                return; // too many folders for the system, or one went away: looking finds it
            }
        }
    }

    @Override
    public void close() {
        closed = true;
        thread.interrupt();
        notices.ifPresent(service -> {
            try {
                service.close();
            } catch (IOException e) {
                closed = true; // it ends with the process
            }
        });
    }
}
