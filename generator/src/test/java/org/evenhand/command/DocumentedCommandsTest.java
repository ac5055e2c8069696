package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The pages on planning and on taking in show what the program prints: their files are written, their commands run in order,
 * and what comes out is what stands there. {@code -Devenhand.renew=true} writes it anew; read the difference.
 */
class DocumentedCommandsTest {

    private static final Path DOCS = Path.of(System.getProperty("evenhand.root", ".."), "docs");
    private static final Pattern BLOCK = Pattern.compile("(?ms)^```(\\w+)(?: (?:file|name)=(\\S+))?\\n(.*?)^```$");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final Pattern OF_A_FOLDER = Pattern.compile("my-results|[\\w-]+\\.(csv|md|html)");

    @TempDir
    private Path place;

    @ParameterizedTest
    @ValueSource(strings = {"planning.md", "taking-in.md"})
    void whatAPageShowsIsWhatComesOut(String page) throws IOException {
        String written = Files.readString(DOCS.resolve(page));
        if (Boolean.getBoolean("evenhand.renew")) {
            written = renewed(written);
            Files.writeString(DOCS.resolve(page), written);
            clear();
        }
        assertEquals(written, renewed(written));
    }

    @Test
    void aPageThatSaysOtherwiseWouldBeFound() throws IOException {
        String wrong = "```console\n$ evenhand plan --at-least \"95 %\"\n58 trials\n```\n";
        String right = renewed(wrong);
        assertFalse(right.contains("58 trials\n"), right);
        assertTrue(right.contains("59 trials, all of which succeed,"), right);
    }

    /** Commands that make a folder want it not to be there yet. */
    private void clear() throws IOException {
        try (Stream<Path> entries = Files.walk(place)) {
            for (Path entry : entries.sorted(Comparator.reverseOrder()).toList()) {
                if (!entry.equals(place)) {
                    Files.delete(entry);
                }
            }
        }
    }

    /** The page with the output of this program in place of whatever stands there. */
    private String renewed(String page) throws IOException {
        StringBuilder text = new StringBuilder();
        Matcher block = BLOCK.matcher(page);
        while (block.find()) {
            String head = block.group().substring(0, block.group().indexOf('\n') + 1);
            String body = block.group(3);
            if (block.group(1).equals("console")) {
                body = console(body);
            } else if (block.group(1).equals("file")) {
                body = Files.readString(place.resolve(block.group(2)));
            } else if (block.group(2) != null) {
                Files.writeString(place.resolve(block.group(2)), body);
            }
            block.appendReplacement(text, Matcher.quoteReplacement(head + body + "```"));
        }
        return block.appendTail(text).toString();
    }

    private String console(String body) {
        StringBuilder text = new StringBuilder();
        for (String line : body.lines().filter(l -> l.startsWith("$ evenhand ")).toList()) {
            Called called = Called.with(words(line.substring("$ evenhand ".length())));
            called.ended(0);
            text.append(line).append('\n');
            text.append((called.out() + called.err()).replace(place + "/", "").replace(System.lineSeparator(), "\n"));
        }
        return text.toString().replaceAll("\n+$", "\n");
    }

    /** The words of a call, with files and folders in the place of this test. */
    private String[] words(String call) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(call);
        while (word.find()) {
            String text = word.group(1) != null ? word.group(1) : word.group(2);
            words.add(OF_A_FOLDER.matcher(text).matches() ? place.resolve(text).toString() : text);
        }
        return words.toArray(String[]::new);
    }
}
