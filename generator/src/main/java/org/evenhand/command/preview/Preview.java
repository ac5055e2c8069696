package org.evenhand.command.preview;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.evenhand.cache.Cache;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.FolderChecker;
import org.evenhand.check.Progress;
import org.evenhand.model.Limits;
import org.evenhand.page.Templates;

/** A results folder that is watched, and the newest edition of its site, served. */
public final class Preview implements AutoCloseable {

    private final Path folder;
    private final Limits limits;
    private final Supplier<Templates> templates;
    private final String generator;
    private final Cache cache;
    private final Consumer<Renewal> told;
    private final String series;
    private final AtomicLong number = new AtomicLong();
    private final PreviewServer server;
    private final List<Path> watched;
    private Optional<FolderWatch> watch = Optional.empty();
    private volatile Edition newest;

    /**
     * Begins to serve; there is nothing to see yet.
     *
     * @param folder the results folder
     * @param overrides a folder of templates that replace those of the program
     * @param limits within which the folder is read
     * @param generator name and version of the program, as pages print it
     * @param port to listen on; 0 for any that is free
     * @param cache what is known of logs and charts that have not changed
     * @param told is told each renewal, one after the other
     * @throws IOException if the port is not to be had
     */
    public Preview(
            Path folder,
            Optional<Path> overrides,
            Limits limits,
            String generator,
            int port,
            Cache cache,
            Consumer<Renewal> told)
            throws IOException {
        this.folder = folder;
        this.limits = limits;
        // Templates that somebody may be writing are read anew each time.
        Templates bundled = Templates.bundled();
        this.templates = () -> overrides.map(Templates::overriddenBy).orElse(bundled);
        this.watched = Stream.concat(Stream.of(folder), overrides.stream()).toList();
        this.generator = generator;
        this.cache = cache;
        this.told = told;
        // A page of a former preview that is still open must not take an edition of this one for its own.
        this.series = Long.toString(System.currentTimeMillis(), Character.MAX_RADIX) + "-";
        this.newest = new Edition(series + 0, Optional.empty(), Optional.empty(), "", Optional.empty());
        this.server = new PreviewServer(port, newest);
    }

    /** Where a browser finds it. */
    public String address() {
        return "http://127.0.0.1:" + server.port() + "/";
    }

    /** How many browsers wait for a newer edition. */
    int waiting() {
        return server.waiting();
    }

    /** Reads the folder, shows it, and from then on does so after each change. */
    public void begin() {
        Snapshot before = Snapshot.of(watched);
        renew();
        watch = Optional.of(new FolderWatch(watched, before, this::renew, true));
        // The first change shall not have to wait for what a virtual machine learns only by doing.
        Thread warming = new Thread(this::makeAll, "evenhand-warming");
        warming.setDaemon(true);
        warming.setPriority(Thread.MIN_PRIORITY);
        warming.start();
    }

    private void makeAll() {
        Edition first = newest;
        try {
            first.site().ifPresent(SiteToOrder::makeAll);
        } catch (RuntimeException e) {
            if (first == newest) {
                show(faulty(first, e), 0);
            }
        }
    }

    private void renew() {
        long begun = System.nanoTime();
        Edition former = newest;
        Edition next;
        try {
            next = read(former);
        } catch (RuntimeException e) {
            next = faulty(former, e);
        }
        show(next, (System.nanoTime() - begun) / 1_000_000);
        if (!next.site().equals(former.site())) {
            former.site().ifPresent(SiteToOrder::giveUp);
        }
    }

    private Edition read(Edition former) {
        CheckedFolder checked = FolderChecker.check(folder, Optional.empty(), limits, cache, Progress.NONE);
        if (checked.isUnusable()) {
            return new Edition(nextId(), Optional.of(checked), former.site(), former.siteAt(), Optional.empty());
        }
        SiteToOrder site = new SiteToOrder(checked, folder, templates.get(), generator, cache);
        String now = LocalTime.now().truncatedTo(ChronoUnit.SECONDS).toString();
        return new Edition(nextId(), Optional.of(checked), Optional.of(site), now, Optional.empty());
    }

    private Edition faulty(Edition former, RuntimeException e) {
        return new Edition(
                nextId(),
                Optional.empty(),
                former.site(),
                former.siteAt(),
                Optional.of(String.valueOf(e.getMessage())));
    }

    private String nextId() {
        return series + number.incrementAndGet();
    }

    private synchronized void show(Edition edition, long ms) {
        newest = edition;
        server.show(edition);
        told.accept(new Renewal(edition.checked(), edition.fault(), ms));
    }

    @Override
    public void close() {
        watch.ifPresent(FolderWatch::close);
        server.close();
        newest.site().ifPresent(SiteToOrder::giveUp);
    }
}
