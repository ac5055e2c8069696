package org.evenhand.command.preview;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Answers to requests. A browser that went away meanwhile is no fault: nobody is left to tell. */
final class Reply {

    private Reply() {}

    static void html(HttpExchange exchange, int status, String html) {
        send(exchange, status, "text/html", new Content.Bytes(html.getBytes(StandardCharsets.UTF_8)));
    }

    static void text(HttpExchange exchange, int status, String text) {
        send(exchange, status, "text/plain", new Content.Bytes(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** An answer without a body. */
    static void nothing(HttpExchange exchange, int status) {
        try (exchange) {
            common(exchange.getResponseHeaders());
            exchange.sendResponseHeaders(status, -1);
        } catch (IOException e) {
            return;
        }
    }

    /** @param type a media type; for text, the charset is added */
    static void send(HttpExchange exchange, int status, String type, Content content) {
        try (exchange;
                InputStream in = content.open()) {
            Headers headers = exchange.getResponseHeaders();
            common(headers);
            headers.set("Content-Type", isText(type) ? type + "; charset=utf-8" : type);
            long size = content.size();
            if (exchange.getRequestMethod().equals("HEAD")) {
                headers.set("Content-Length", Long.toString(size));
                exchange.sendResponseHeaders(status, -1);
                return;
            }
            exchange.sendResponseHeaders(status, size == 0 ? -1 : size);
            try (OutputStream out = exchange.getResponseBody()) {
                in.transferTo(out);
            }
        } catch (IOException e) {
            return;
        }
    }

    /** Those of the published site, and what keeps an edition from outliving the next. */
    private static void common(Headers headers) {
        headers.set("Content-Security-Policy", Dressing.POLICY + "; frame-ancestors 'none'");
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Referrer-Policy", "no-referrer");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Cache-Control", "no-store");
    }

    private static boolean isText(String type) {
        return type.startsWith("text/") || type.endsWith("xml") || type.endsWith("json") || type.endsWith("yaml");
    }
}
