package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * docs/commands.md and the page of the manual say what the program says; {@code -Devenhand.renew=true} writes them anew. The
 * manual is judged by the formatters of this machine, where there are any.
 */
class CommandsPageTest {

    private static final Path DOCS = Path.of(System.getProperty("evenhand.root", ".."), "docs");

    @ParameterizedTest
    @ValueSource(strings = {"commands.md", "evenhand.1"})
    void thePageSaysWhatTheProgramSays(String name) throws IOException {
        String made = name.endsWith(".md") ? CommandTexts.markdown() : CommandTexts.manual();
        if (Boolean.getBoolean("evenhand.renew")) {
            Files.writeString(DOCS.resolve(name), made);
        }
        assertEquals(Files.readString(DOCS.resolve(name)), made);
    }

    @Test
    void everyCommandAndOptionHasItsWordsAndAnExample() {
        String page = CommandTexts.markdown();
        for (CommandSpec command : CommandTexts.commands()) {
            assertTrue(page.contains("\n## " + command.qualifiedName() + "\n"), command.qualifiedName());
            assertFalse(CommandTexts.examples(command).isEmpty(), command.qualifiedName() + " has an example");
            for (OptionSpec option : command.options()) {
                String means = String.join(" ", option.description());
                assertTrue(means.length() > 8, command.qualifiedName() + " " + option.longestName() + ": " + means);
            }
        }
        assertFalse(page.contains("${"), "a variable was not filled in");
    }

    @ParameterizedTest
    @ValueSource(strings = {"mandoc -T lint -W warning", "man --warnings=w -E UTF-8 -l -Tutf8 -Z", "groff -man -ww -z"})
    void theManualIsFormattedWithoutAWarning(String formatter) throws Exception {
        List<String> call = new java.util.ArrayList<>(List.of(formatter.split(" ")));
        assumeTrue(isThere(call.get(0)), call.get(0) + " is not on this machine");
        call.add(DOCS.resolve("evenhand.1").toAbsolutePath().normalize().toString());
        Path out = Files.createTempFile("manual", ".txt");
        Process process = new ProcessBuilder(call)
                .redirectError(out.toFile())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        int status = process.waitFor();
        String said = Files.readString(out, StandardCharsets.UTF_8);
        Files.delete(out);
        assertEquals("", said.replaceAll("(?m)^.*missing date.*$", "").strip());
        assertTrue(status == 0 || formatter.startsWith("mandoc"), formatter + " ended with " + status);
    }

    private static boolean isThere(String tool) {
        return List.of(System.getenv("PATH").split(java.io.File.pathSeparator)).stream()
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, tool)));
    }
}
