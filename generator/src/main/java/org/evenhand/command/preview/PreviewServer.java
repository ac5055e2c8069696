package org.evenhand.command.preview;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.evenhand.page.MediaTypes;

/** Serves the newest edition to browsers on this machine. */
final class PreviewServer implements AutoCloseable {

    private static final String NEXT = Assets.OWN + "next";
    private static final int THREADS = 6;
    private static final long PATIENCE_MS = 25_000;

    static {
        // Seconds in which a request must have arrived: one that comes in by drops would keep a thread for ever.
        System.setProperty("sun.net.httpserver.maxReqTime", "10");
    }

    private final HttpServer server;
    private final ExecutorService threads = Executors.newFixedThreadPool(THREADS, PreviewServer::named);
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(PreviewServer::named);
    private final AtomicReference<Edition> newest;
    private final Waiting waiting;
    private final Gate gate;

    /**
     * Begins to serve.
     *
     * @param port to listen on; 0 for any that is free
     * @param first what there is to see yet
     * @throws IOException if the port is not to be had
     */
    PreviewServer(int port, Edition first) throws IOException {
        this.newest = new AtomicReference<>(first);
        this.waiting = new Waiting(first.id(), PATIENCE_MS);
        byte[] loopback = {127, 0, 0, 1};
        this.server = HttpServer.create(new InetSocketAddress(InetAddress.getByAddress(loopback), port), 0);
        this.gate = new Gate(port());
        server.createContext("/", this::handle);
        server.setExecutor(threads);
        server.start();
        clock.scheduleWithFixedDelay(waiting::sweep, 1, 1, TimeUnit.SECONDS);
    }

    private static Thread named(Runnable work) {
        Thread thread = new Thread(work, "evenhand-preview");
        thread.setDaemon(true);
        return thread;
    }

    int port() {
        return server.getAddress().getPort();
    }

    /** How many browsers wait for a newer edition. */
    int waiting() {
        return waiting.count();
    }

    /** Shows this edition from now on, and tells all who wait. */
    void show(Edition edition) {
        newest.set(edition);
        waiting.announce(edition.id());
    }

    private void handle(HttpExchange exchange) {
        try {
            Optional<Gate.Refusal> refusal = gate.refusal(exchange);
            if (refusal.isPresent()) {
                refuse(exchange, refusal.get());
            } else {
                answer(exchange);
            }
        } catch (RuntimeException e) {
            // Most often a file of the folder that went away since it was read; then the next edition is on its way.
            Edition edition = newest.get();
            String said = "This page cannot be made as the folder stands: " + e.getMessage();
            Reply.html(exchange, 503, Dressing.of(Notes.page(edition, "Not to be had", said), edition));
        }
    }

    private static void refuse(HttpExchange exchange, Gate.Refusal refusal) {
        exchange.getResponseHeaders().set("Connection", "close");
        if (refusal.status() == 405) {
            exchange.getResponseHeaders().set("Allow", "GET, HEAD");
        }
        Reply.text(exchange, refusal.status(), refusal.why() + "\n");
    }

    private void answer(HttpExchange exchange) {
        URI target = exchange.getRequestURI();
        String address = target.getRawPath();
        Edition edition = newest.get();
        Optional<byte[]> own = Assets.at(address);
        if (own.isPresent()) {
            Reply.send(exchange, 200, MediaTypes.of(address), new Content.Bytes(own.get()));
        } else if (address.equals(NEXT)) {
            waiting.park(exchange, known(target.getRawQuery()));
        } else if (address.equals(Notes.FINDINGS)) {
            Reply.html(exchange, 200, Dressing.of(Notes.findings(edition), edition));
        } else if (edition.site().isEmpty()) {
            String said = "There is no site yet.";
            Reply.html(exchange, 503, Dressing.of(Notes.page(edition, "Preview", said), edition));
        } else {
            page(exchange, address, edition, edition.site().get());
        }
    }

    private static String known(String query) {
        return query != null && query.startsWith("after=") ? query.substring("after=".length()) : "";
    }

    private static void page(HttpExchange exchange, String address, Edition edition, SiteToOrder site) {
        Optional<String> path = SitePath.of(address);
        Optional<Content> content = path.flatMap(site::file);
        if (content.isEmpty()) {
            String said = "The site has no such page.";
            Reply.html(exchange, 404, Dressing.of(Notes.page(edition, "Not found", said), edition));
            return;
        }
        String type = MediaTypes.of(path.get());
        if (content.get() instanceof Content.Bytes page && type.equals("text/html")) {
            Reply.html(exchange, 200, Dressing.of(new String(page.bytes(), StandardCharsets.UTF_8), edition));
        } else {
            Reply.send(exchange, 200, type, content.get());
        }
    }

    /** Lets go of the port, the connections and the threads. */
    @Override
    public void close() {
        clock.shutdownNow();
        server.stop(0);
        threads.shutdownNow();
    }
}
