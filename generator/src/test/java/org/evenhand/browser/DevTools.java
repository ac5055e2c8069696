package org.evenhand.browser;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/**
 * A connection that speaks the Chrome DevTools Protocol (1.3, sessions flat): commands with their answers, and events.
 */
final class DevTools implements WebSocket.Listener, AutoCloseable {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final long ANSWER_LIMIT_S = 60;

    private final WebSocket socket;
    private final AtomicInteger last = new AtomicInteger();
    private final Map<Integer, CompletableFuture<JsonNode>> open = new ConcurrentHashMap<>();
    private final Map<String, Consumer<JsonNode>> listeners = new ConcurrentHashMap<>();
    private final StringBuilder message = new StringBuilder();

    DevTools(URI endpoint) {
        socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(endpoint, this)
                .join();
    }

    /** Hands each event of a session, {@code {method, params}}, to the listener; on the thread that receives. */
    void listen(String session, Consumer<JsonNode> listener) {
        listeners.put(session, listener);
    }

    void forget(String session) {
        listeners.remove(session);
    }

    /**
     * Sends a command and waits for its answer.
     *
     * @param session it is for; empty for the browser itself
     * @return the field {@code result} of the answer
     * @throws IllegalStateException if the browser refuses it, or does not answer within a minute
     */
    JsonNode call(String session, String method, Map<String, ?> parameters) {
        int id = last.incrementAndGet();
        ObjectNode command = JSON.createObjectNode();
        command.put("id", id).put("method", method).set("params", JSON.valueToTree(parameters));
        if (!session.isEmpty()) command.put("sessionId", session);
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        open.put(id, answer);
        // The socket takes one message at a time.
        synchronized (socket) {
            socket.sendText(command.toString(), true).join();
        }
        try {
            JsonNode told = answer.get(ANSWER_LIMIT_S, TimeUnit.SECONDS);
            if (told.has("error")) throw new IllegalStateException(method + ": " + told.get("error"));
            return told.path("result");
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(method + " was interrupted", interrupted);
        } catch (ExecutionException | TimeoutException silent) {
            throw new IllegalStateException(method + " was not answered", silent);
        } finally {
            open.remove(id);
        }
    }

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean whole) {
        message.append(part);
        if (whole) {
            String text = message.toString();
            message.setLength(0);
            try {
                received(JSON.readTree(text));
            } catch (JsonProcessingException broken) {
                fail(broken);
            }
        }
        from.request(1);
        return null;
    }

    private void received(JsonNode node) {
        if (node.has("id")) {
            CompletableFuture<JsonNode> answer = open.get(node.get("id").asInt());
            if (answer != null) answer.complete(node);
        } else {
            Consumer<JsonNode> listener = listeners.get(node.path("sessionId").asText());
            if (listener != null) listener.accept(node);
        }
    }

    @Override
    public CompletionStage<?> onClose(WebSocket from, int status, String reason) {
        fail(new IllegalStateException("the browser closed the connection: " + reason));
        return null;
    }

    @Override
    public void onError(WebSocket from, Throwable cause) {
        fail(cause);
    }

    private void fail(Throwable cause) {
        open.values().forEach(answer -> answer.completeExceptionally(cause));
    }

    @Override
    public void close() {
        socket.abort();
    }
}
