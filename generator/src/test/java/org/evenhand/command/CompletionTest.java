package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The shells themselves, where they are on this machine, complete what a user has begun. */
class CompletionTest {

    @TempDir
    private Path place;

    private String script(String shell) {
        return Called.with("completion", shell).ended(0).out();
    }

    @ParameterizedTest
    @CsvSource({
        "'evenhand pu', 1, publish",
        "'evenhand check --for', 2, --format",
        "'evenhand check --format js', 3, json",
        "'evenhand explain ambient-sp', 2, ambient-spread",
        "'evenhand completion z', 2, zsh"
    })
    void bashCompletes(String begun, int at, String completed) throws Exception {
        String call = "COMP_WORDS=(" + begun + "); COMP_CWORD=" + at + "; COMP_LINE='" + begun + "'; COMP_POINT="
                + begun.length() + "; _complete_evenhand; printf '%s\\n' \"${COMPREPLY[@]}\"";
        assertTrue(run("bash", script("bash") + "\n" + call)
                .strip()
                .lines()
                .anyMatch(l -> l.strip().equals(completed)));
    }

    @Test
    void zshTakesTheScript() throws Exception {
        String said = run("zsh", script("zsh") + "\nprint -r -- \"${_comps[evenhand]}\"\n");
        assertTrue(said.contains("_bash_complete"), said);
    }

    @ParameterizedTest
    @CsvSource({
        "'evenhand pu', publish",
        "'evenhand check --for', --format",
        "'evenhand check --format js', json",
        "'evenhand explain ambient-sp', ambient-spread",
        "'evenhand completion z', zsh"
    })
    void fishCompletes(String begun, String completed) throws Exception {
        String said = run("fish", script("fish") + "\ncomplete -C '" + begun + "'\n");
        assertEquals(
                List.of(completed),
                said.lines()
                        .map(l -> l.split("\t")[0])
                        .filter(l -> !l.isEmpty())
                        .toList());
    }

    @Test
    void aShellThatIsNotKnownIsRefused() {
        Called.with("completion", "tcsh").ended(2).says("bash, zsh, fish");
    }

    private String run(String shell, String script) throws IOException, InterruptedException {
        boolean isThere = Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, shell)));
        assumeTrue(isThere, shell + " is not on this machine");
        Path file = Files.writeString(place.resolve("script"), script);
        Path out = place.resolve("out");
        ProcessBuilder builder = new ProcessBuilder(shell, file.toString())
                .redirectErrorStream(true)
                .redirectOutput(out.toFile());
        builder.environment().put("HOME", place.toString());
        builder.environment().put("LC_ALL", "C.UTF-8");
        int status = builder.start().waitFor();
        String said = Files.readString(out, StandardCharsets.UTF_8);
        assertEquals(0, status, said);
        return said;
    }
}
