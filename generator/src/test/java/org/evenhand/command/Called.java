package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * What a call of the program came to.
 *
 * @param status its exit status
 * @param out what it wrote to standard output
 * @param err what it wrote to standard error
 */
record Called(int status, String out, String err) {

    static Called with(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Main.run(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                arguments);
        return new Called(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Asserts the status, and that nobody was shown a stack trace. */
    Called ended(int expected) {
        assertEquals(expected, status, () -> out + err);
        assertFalse((out + err).contains("\tat ") || (out + err).contains("Exception"), () -> out + err);
        return this;
    }

    Called says(String... texts) {
        for (String text : texts) {
            assertTrue((out + err).contains(text), () -> "“" + text + "” in:\n" + out + err);
        }
        return this;
    }
}
