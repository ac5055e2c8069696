package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The tours are walked to the letter: their files are written, their commands run in order in one folder, and what they show is
 * what comes out, but for digests and numbers of files. {@code -Devenhand.renew=true} writes it anew; read the difference.
 *
 * <p>What a block is, its info string says: {@code NAME file=PATH} is a file to be written; {@code console} holds commands, each
 * behind "$ ", and what they print, and ends as {@code status=N} says; {@code text from=PAGE id=ID} is what stands at a place of
 * a page.
 */
@DisabledOnOs(OS.WINDOWS)
class ToursTest {

    private static final Path ROOT = Path.of(System.getProperty("evenhand.root", ".."));
    private static final Pattern BLOCK = Pattern.compile("(?ms)^(?<fence>`{3,})(\\w+)([^\\n]*)\\n(.*?)^\\k<fence>$");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");
    private static final String OURS = "generator/evenhand ";

    @TempDir
    private Path place;

    private int commands;

    @ParameterizedTest
    @ValueSource(strings = {"first-log.md", "tour-reviewer.md", "tour-forum-helper.md", "tour-laboratory.md"})
    void whatATourShowsIsWhatComesOut(String page) throws Exception {
        Path file = ROOT.resolve("docs").resolve(page);
        String written = Files.readString(file);
        String found = walked(written);
        if (Boolean.getBoolean("evenhand.renew") && !lasting(written).equals(lasting(found))) {
            Files.writeString(file, found);
            written = found;
        }
        assertEquals(lasting(written), lasting(found));
        assertTrue(commands >= 4, () -> commands + " commands");
    }

    @Test
    void aTourThatShowsSomethingElseWouldBeFound() throws Exception {
        String wrong = "```console\n$ generator/evenhand --version\nevenhand 0.0.0\n```\n";
        assertTrue(!walked(wrong).equals(wrong));
    }

    /** Without what any change of a page or a style sheet alters: digests, and how many files a site has. */
    private static String lasting(String text) {
        return text.replaceAll("\\b[0-9a-f]{64}\\b", "DIGEST").replaceAll("\\b\\d+ files\\b", "FILES");
    }

    /** The tour with what comes out in place of whatever it shows. */
    private String walked(String page) throws Exception {
        StringBuilder text = new StringBuilder();
        Matcher block = BLOCK.matcher(page);
        while (block.find()) {
            String info = block.group(3);
            String body = block.group(4);
            if (!given(info, "file").isEmpty()) {
                Path file = place.resolve(given(info, "file"));
                Files.createDirectories(file.getParent());
                Files.writeString(file, body);
            } else if (!given(info, "from").isEmpty()) {
                body = onPage(given(info, "from"), given(info, "id"));
            } else if (block.group(2).equals("console")) {
                body = console(body, given(info, "status"));
            }
            block.appendReplacement(
                    text,
                    Matcher.quoteReplacement(
                            block.group("fence") + block.group(2) + info + "\n" + body + block.group("fence")));
        }
        return block.appendTail(text).toString();
    }

    private static String given(String info, String name) {
        return Stream.of(info.strip().split(" "))
                .filter(word -> word.startsWith(name + "="))
                .map(word -> word.substring(name.length() + 1))
                .findFirst()
                .orElse("");
    }

    private String onPage(String page, String id) throws IOException {
        Element at = Jsoup.parse(Files.readString(place.resolve(page))).getElementById(id);
        assertNotNull(at, page + "#" + id);
        Element quoted = at.selectFirst("pre");
        return (quoted == null ? at.text() : quoted.wholeText()).strip() + "\n";
    }

    private String console(String body, String status) throws Exception {
        StringBuilder text = new StringBuilder();
        List<String> lines = body.lines().filter(l -> l.startsWith("$ ")).toList();
        for (String line : lines) {
            commands++;
            boolean last = line.equals(lines.get(lines.size() - 1));
            int expected = status.isEmpty() || !last ? 0 : Integer.parseInt(status);
            String command = line.substring(2);
            String printed = command.startsWith(OURS)
                    ? ours(command.substring(OURS.length()), expected)
                    : shell(command, expected);
            text.append(line).append('\n').append(printed);
        }
        return text.toString().replaceAll("\n+$", "\n");
    }

    private String ours(String call, int expected) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(call);
        while (word.find()) {
            words.add(inPlace(Stream.of(word.group(1), word.group(2), word.group(3))
                    .filter(w -> w != null)
                    .findFirst()
                    .orElseThrow()));
        }
        Called called = Called.with(words.toArray(String[]::new)).ended(expected);
        // Only a jar knows its version.
        return (called.out() + called.err())
                .replace(place + "/", "")
                .replace(System.lineSeparator(), "\n")
                .replace("unpacked", version());
    }

    /** Files and folders that a tour makes lie in the place of this test; the sample lies where it is. */
    private String inPlace(String word) {
        if (word.equals("sample-results")) {
            return ROOT.resolve(word).toString();
        }
        boolean isPath = word.matches("(my|our|former)-[a-z-]+(/.*)?") || word.matches("[\\w-]+\\.(csv|txt|md|html)");
        return isPath ? place.resolve(word).toString() : word;
    }

    private String shell(String command, int expected) throws Exception {
        Path printed = Files.createTempFile("printed", ".txt");
        Process process = new ProcessBuilder("bash", "-c", command)
                .directory(place.toFile())
                .redirectErrorStream(true)
                .redirectOutput(printed.toFile())
                .start();
        assertTrue(process.waitFor(1, TimeUnit.MINUTES), command);
        String text = Files.readString(printed);
        Files.delete(printed);
        assertEquals(expected, process.exitValue(), () -> command + "\n" + text);
        return text;
    }

    private static String version() {
        String pom;
        try {
            pom = Files.readString(ROOT.resolve("pom.xml"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        int start = pom.indexOf("<version>") + "<version>".length();
        return pom.substring(start, pom.indexOf("</version>", start));
    }
}
