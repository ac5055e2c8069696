package org.evenhand.command;

import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Somebody who looks at a preview: as a browser does, and byte by byte. */
final class Browsing {

    private static final Pattern EDITION = Pattern.compile("data-edition=\"([^\"]+)\"");
    private static final Duration LONG = Duration.ofSeconds(40);

    private final HttpClient client = HttpClient.newHttpClient();
    private final URI home;

    Browsing(String address) {
        this.home = URI.create(address);
    }

    int port() {
        return home.getPort();
    }

    HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(home.resolve(path)));
    }

    HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.timeout(LONG).build(), HttpResponse.BodyHandlers.ofString());
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The edition that a page is of. */
    static String edition(String page) {
        Matcher edition = EDITION.matcher(page);
        if (!edition.find()) {
            throw new IllegalStateException("no edition in: " + page);
        }
        return edition.group(1);
    }

    /** Waits for an edition other than the one that is known, as the script of a page does; the known one if none comes. */
    String editionAfter(String known) {
        HttpResponse<String> answer = get("/.preview/next?after=" + known);
        return answer.statusCode() == 200 ? answer.body() : known;
    }

    /** Follows a page until it shows a text. */
    String until(String path, String text) {
        long end = System.nanoTime() + LONG.toNanos();
        String page = get(path).body();
        while (!page.contains(text)) {
            if (System.nanoTime() - end >= 0) {
                throw new AssertionError(path + " never showed “" + text + "” but: " + page);
            }
            editionAfter(edition(page));
            page = get(path).body();
        }
        return page;
    }

    /** Sends these characters as they stand and reads what comes back. */
    String raw(String request) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", port())) {
            socket.setSoTimeout((int) LONG.toMillis());
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.shutdownOutput();
            InputStream in = socket.getInputStream();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** The status that a raw request is answered with. */
    int status(String request) throws IOException {
        String answer = raw(request);
        return answer.startsWith("HTTP/1.1 ") ? Integer.parseInt(answer.substring(9, 12)) : 0;
    }
}
