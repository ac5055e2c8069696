package org.evenhand.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/** The messages of a room in a language, from a file of properties in UTF-8. */
final class Bundle {

    private Bundle() {}

    /**
     * @param language one of {@link Words#LANGUAGES}
     * @param room first part of the keys; a room without a file has no messages
     * @throws IllegalArgumentException if a message is malformed; the text names its key
     */
    static Map<String, Message> read(String language, String room) {
        Properties properties = new Properties();
        try (InputStream file = Bundle.class.getResourceAsStream(language + "/" + room + ".properties")) {
            if (file == null) return Map.of();
            properties.load(new InputStreamReader(file, StandardCharsets.UTF_8));
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
        Map<String, Message> messages = new TreeMap<>();
        for (String key : properties.stringPropertyNames()) {
            try {
                messages.put(key, new Message(properties.getProperty(key)));
            } catch (IllegalArgumentException cause) {
                throw new IllegalArgumentException(language + ", " + key + ": " + cause.getMessage(), cause);
            }
        }
        return Map.copyOf(messages);
    }
}
