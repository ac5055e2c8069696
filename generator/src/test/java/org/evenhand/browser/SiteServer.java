package org.evenhand.browser;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;

/** Files of a site on the loopback address, under a path of their own as on a shared host. */
public final class SiteServer implements AutoCloseable {

    private static final Map<String, String> TYPES = Map.of(
            "html", "text/html; charset=utf-8",
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "json", "application/json",
            "svg", "image/svg+xml",
            "png", "image/png",
            "woff2", "font/woff2",
            "xml", "application/xml");

    private final HttpServer server;
    private final ExecutorService threads = Executors.newCachedThreadPool(task -> {
        Thread thread = new Thread(task, "site-server");
        thread.setDaemon(true);
        return thread;
    });
    private final Function<String, Optional<byte[]>> files;

    private SiteServer(Function<String, Optional<byte[]>> files) {
        this.files = files;
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
        server.createContext("/trials/", this::answer);
        // Browsers ask for it unasked, and would complain that there is none.
        server.createContext("/favicon.ico", SiteServer::nothing);
        server.setExecutor(threads);
        server.start();
    }

    /** Serves files by their paths from the site's root. */
    public static SiteServer of(Map<String, byte[]> files) {
        return new SiteServer(path -> Optional.ofNullable(files.get(path)));
    }

    /** Serves the files of a folder. */
    public static SiteServer of(Path folder) {
        return new SiteServer(path -> {
            Path file = folder.resolve(path).normalize();
            if (!file.startsWith(folder.normalize()) || !Files.isRegularFile(file)) return Optional.empty();
            try {
                return Optional.of(Files.readAllBytes(file));
            } catch (IOException cause) {
                throw new UncheckedIOException(cause);
            }
        });
    }

    /** The address of a file. */
    public String url(String path) {
        return "http://127.0.0.1:" + server.getAddress().getPort() + "/trials/" + path;
    }

    private void answer(HttpExchange exchange) throws IOException {
        try (exchange) {
            String path = exchange.getRequestURI().getPath().substring("/trials/".length());
            String file = path.isEmpty() || path.endsWith("/") ? path + "index.html" : path;
            Optional<byte[]> bytes = files.apply(file);
            if (bytes.isEmpty()) {
                exchange.sendResponseHeaders(404, -1);
                return;
            }
            String ending = file.substring(file.lastIndexOf('.') + 1);
            exchange.getResponseHeaders().set("Content-Type", TYPES.getOrDefault(ending, "application/octet-stream"));
            exchange.sendResponseHeaders(200, bytes.get().length == 0 ? -1 : bytes.get().length);
            exchange.getResponseBody().write(bytes.get());
        }
    }

    private static void nothing(HttpExchange exchange) throws IOException {
        try (exchange) {
            exchange.sendResponseHeaders(204, -1);
        }
    }

    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }
}
