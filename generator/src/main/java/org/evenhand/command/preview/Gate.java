package org.evenhand.command.preview;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Lets in what a browser on this machine asks of its own accord, and nothing else.
 *
 * <p>A page of a stranger can make a browser call any port of its machine. It cannot forge the header Host: where the
 * stranger's name was made to lead here, that name stands in it. Source: RFC 9110, 7.2 and 15.5.20.
 */
final class Gate {

    /** "same-site" means another port of this machine. Source: Fetch Metadata Request Headers, 2.3. */
    private static final Set<String> FOREIGN = Set.of("cross-site", "same-site");

    private final Set<String> hosts;

    /** @param port on which is listened */
    Gate(int port) {
        this.hosts = Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
    }

    /**
     * Why a request is not let in.
     *
     * @param status as RFC 9110 names it
     */
    record Refusal(int status, String why) {}

    /** Looks at a request before anything is done for it; nothing if it may come in. */
    Optional<Refusal> refusal(HttpExchange exchange) {
        String method = exchange.getRequestMethod();
        String target = exchange.getRequestURI().toString();
        Headers headers = exchange.getRequestHeaders();
        List<String> named = values(headers, "Host");
        if (named.size() != 1 || !hosts.contains(named.get(0).toLowerCase(Locale.ROOT))) {
            return Optional.of(new Refusal(421, "this is a preview for this machine alone"));
        }
        if (!method.equals("GET") && !method.equals("HEAD")) {
            return Optional.of(new Refusal(405, "a preview is for reading"));
        }
        boolean hasBody = !values(headers, "Transfer-Encoding").isEmpty()
                || values(headers, "Content-Length").stream().anyMatch(length -> !length.equals("0"));
        if (hasBody || !target.startsWith("/") || target.startsWith("//")) {
            return Optional.of(new Refusal(400, "this is no request for a page"));
        }
        // Another site may lead here by a link, but not draw on what is here.
        boolean isForeign = values(headers, "Sec-Fetch-Site").stream().anyMatch(FOREIGN::contains);
        if (isForeign && !values(headers, "Sec-Fetch-Mode").equals(List.of("navigate"))) {
            return Optional.of(new Refusal(403, "other sites may not draw on a preview"));
        }
        return Optional.empty();
    }

    private static List<String> values(Headers headers, String name) {
        return headers.getOrDefault(name, List.of());
    }
}
