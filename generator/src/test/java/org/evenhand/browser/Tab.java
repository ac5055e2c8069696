package org.evenhand.browser;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * One page of a {@link Chromium}; for one thread at a time. What is set on it (size, media, script) stays until it is
 * set anew, over {@link #go} too.
 */
public final class Tab implements AutoCloseable {

    private static final long LOAD_LIMIT_S = 60;

    private final DevTools tools;
    private final String target;
    private final String session;
    private final List<String> complaints = new ArrayList<>();
    private final List<String> requests = new ArrayList<>();
    private volatile CountDownLatch loaded = new CountDownLatch(1);

    Tab(DevTools tools, String target, String session) {
        this.tools = tools;
        this.target = target;
        this.session = session;
        tools.listen(session, this::heard);
        for (String domain : List.of("Page", "Runtime", "Log", "Network")) call(domain + ".enable", Map.of());
        size(1280, 900);
    }

    /** Loads a page and waits until it and all it refers to are there. What was complained of before is forgotten. */
    public void go(String url) {
        synchronized (complaints) {
            complaints.clear();
            requests.clear();
        }
        loaded = new CountDownLatch(1);
        JsonNode went = call("Page.navigate", Map.of("url", url));
        if (went.has("errorText"))
            throw new IllegalStateException(url + ": " + went.get("errorText").asText());
        // Only another fragment of the same page: nothing is loaded.
        if (!went.has("loaderId")) return;
        try {
            if (!loaded.await(LOAD_LIMIT_S, TimeUnit.SECONDS)) throw new IllegalStateException("not loaded: " + url);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while loading " + url, interrupted);
        }
    }

    /**
     * The value of an expression in the page, as JSON; a promise is waited for.
     *
     * @throws IllegalStateException if it throws
     */
    public JsonNode evaluate(String expression) {
        JsonNode told =
                call("Runtime.evaluate", Map.of("expression", expression, "returnByValue", true, "awaitPromise", true));
        if (told.has("exceptionDetails")) {
            JsonNode thrown = told.get("exceptionDetails");
            throw new IllegalStateException(
                    thrown.path("exception").path("description").asText(thrown.toString()));
        }
        return told.path("result").path("value");
    }

    /** As {@link #evaluate}, again and again until the expression holds. */
    public void await(String expression) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
        while (!evaluate("!!(" + expression + ")").asBoolean()) {
            if (System.nanoTime() > end) throw new IllegalStateException("never held: " + expression);
            try {
                Thread.sleep(10);
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(interrupted);
            }
        }
    }

    /** Size of the window in CSS pixels; a narrow one as a phone has it, with its way of laying out. */
    public void size(int width, int height) {
        call(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
    }

    /** Media features, {@code "prefers-color-scheme", "dark"} for one; those not named are as the browser has them. */
    public void media(Map<String, String> features) {
        List<Map<String, String>> list = new ArrayList<>();
        features.forEach((name, value) -> list.add(Map.of("name", name, "value", value)));
        call("Emulation.setEmulatedMedia", Map.of("features", list));
    }

    /** Whether pages loaded from now on may run scripts of theirs; {@link #evaluate} works either way. */
    public void script(boolean allowed) {
        call("Emulation.setScriptExecutionDisabled", Map.of("value", !allowed));
    }

    /** Whether pages loaded from now on are kept to their security policy; a test's own library may not be let in. */
    public void policy(boolean kept) {
        call("Page.setBypassCSP", Map.of("enabled", !kept));
    }

    /** Presses and lets go of a key, named as in {@code KeyboardEvent.key}: {@code Tab}, {@code Enter}, {@code a}. */
    public void key(String key) {
        Key known = Key.of(key);
        Map<String, Object> down = new HashMap<>(
                Map.of("type", "keyDown", "key", key, "code", known.code(), "windowsVirtualKeyCode", known.number()));
        if (!known.text().isEmpty()) down.put("text", known.text());
        call("Input.dispatchKeyEvent", down);
        call(
                "Input.dispatchKeyEvent",
                Map.of("type", "keyUp", "key", key, "code", known.code(), "windowsVirtualKeyCode", known.number()));
    }

    /** Types text where the keyboard is. */
    public void type(String text) {
        call("Input.insertText", Map.of("text", text));
    }

    /** Moves the pointer, in CSS pixels of the window. */
    public void point(double x, double y) {
        call("Input.dispatchMouseEvent", Map.of("type", "mouseMoved", "x", x, "y", y));
    }

    /** What the page threw, logged as an error, failed to load, or had blocked, since {@link #go}. */
    public List<String> complaints() {
        synchronized (complaints) {
            return List.copyOf(complaints);
        }
    }

    /** The addresses that were asked for since {@link #go}, whether they were let through or not. */
    public List<String> requests() {
        synchronized (complaints) {
            return List.copyOf(requests);
        }
    }

    /** A script that every page loaded from now on runs before anything of its own. */
    public void before(String script) {
        call("Page.addScriptToEvaluateOnNewDocument", Map.of("source", script));
    }

    /** The whole page, as PNG. */
    public byte[] screenshot() {
        return bytes(call("Page.captureScreenshot", Map.of("captureBeyondViewport", true)));
    }

    /** The page as it prints, as PDF. */
    public byte[] pdf() {
        return bytes(call("Page.printToPDF", Map.of("preferCSSPageSize", true)));
    }

    private static byte[] bytes(JsonNode told) {
        return Base64.getDecoder().decode(told.path("data").asText());
    }

    /** Any command of the protocol for this page. */
    public JsonNode call(String method, Map<String, ?> parameters) {
        return tools.call(session, method, parameters);
    }

    private void heard(JsonNode event) {
        JsonNode told = event.path("params");
        switch (event.path("method").asText()) {
            case "Page.loadEventFired" -> loaded.countDown();
            case "Network.requestWillBeSent" -> {
                synchronized (complaints) {
                    requests.add(told.path("request").path("url").asText());
                }
            }
            case "Runtime.exceptionThrown" ->
                complain(told.path("exceptionDetails").toString());
            case "Runtime.consoleAPICalled" -> {
                if (told.path("type").asText().equals("error"))
                    complain(told.path("args").toString());
            }
            case "Log.entryAdded" -> {
                JsonNode entry = told.path("entry");
                if (entry.path("level").asText().equals("error"))
                    complain(entry.path("text").asText() + " "
                            + entry.path("url").asText());
            }
            default -> {}
        }
    }

    private void complain(String what) {
        synchronized (complaints) {
            complaints.add(what);
        }
    }

    @Override
    public void close() {
        tools.forget(session);
        tools.call("", "Target.closeTarget", Map.of("targetId", target));
    }

    /** What Chromium wants to be told of a key besides its name. */
    private record Key(String code, int number, String text) {

        static Key of(String key) {
            return switch (key) {
                case "Tab" -> new Key("Tab", 9, "");
                case "Enter" -> new Key("Enter", 13, "\r");
                case "Escape" -> new Key("Escape", 27, "");
                case " " -> new Key("Space", 32, " ");
                case "PageUp" -> new Key("PageUp", 33, "");
                case "PageDown" -> new Key("PageDown", 34, "");
                case "End" -> new Key("End", 35, "");
                case "Home" -> new Key("Home", 36, "");
                case "ArrowLeft" -> new Key("ArrowLeft", 37, "");
                case "ArrowUp" -> new Key("ArrowUp", 38, "");
                case "ArrowRight" -> new Key("ArrowRight", 39, "");
                case "ArrowDown" -> new Key("ArrowDown", 40, "");
                default -> {
                    if (key.length() != 1) throw new IllegalArgumentException("no such key: " + key);
                    char upper = Character.toUpperCase(key.charAt(0));
                    yield new Key("Key" + upper, upper, key);
                }
            };
        }
    }
}
