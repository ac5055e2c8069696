package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The command as a user meets it. Exit statuses of a process that a signal ended: POSIX.1-2017, 2.8.2. */
class PreviewCommandTest {

    @TempDir
    private Path root;

    @Test
    void aPortThatIsTakenIsSaidToBe() throws IOException {
        Given given = Given.soundFolderIn(root.resolve("results"));
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            String port = Integer.toString(taken.getLocalPort());
            Called.with("preview", given.root().toString(), "--port", port)
                    .ended(2)
                    .says("port " + port + " is not to be had", "--port 0");
        }
    }

    @Test
    void aPortThatCannotBeAndAFolderThatIsNoneAreSaidToBe() {
        Given given = Given.soundFolderIn(root.resolve("results"));
        Called.with("preview", given.root().toString(), "--port", "70000")
                .ended(2)
                .says("there is no port 70000");
        Called.with("preview", root.resolve("nowhere").toString()).ended(2).says("is no folder");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void theProcessTellsItsAddressAndEachErrorOnceAndASignalEndsItAndFreesThePort() throws Exception {
        Given given = Given.soundFolderIn(root.resolve("results"));
        Path err = root.resolve("err");
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "preview",
                given.root().toString(),
                "--port",
                "0");
        Process process =
                new ProcessBuilder(command).redirectError(err.toFile()).start();
        try (BufferedReader out = process.inputReader()) {
            Browsing browser = new Browsing(out.readLine());
            browser.until("/", "Does the plate keep it cooler?");
            given.replacing("studies/plate/runs/none-1.json", "\"run\": \"none-1\"", "\"run\": \"none-9\"");
            browser.until("/", "1 error keeps something");
            given.replacing("publication.yaml", "title: Trials", "title: More trials");
            browser.until("/", "More trials");
            process.toHandle().destroy(); // leaves the streams open
            assertTrue(process.waitFor(20, TimeUnit.SECONDS), "it did not end");
            assertEquals(128 + 15, process.exitValue());
            assertFalse(isOpen(browser.port()));
            List<String> rest = new ArrayList<>(out.lines().toList());
            assertEquals(List.of(), rest, "standard output holds the address alone");
        } finally {
            process.destroyForcibly();
        }
        String said = Files.readString(err);
        assertEquals(2, said.split("runs/none-1.json:", -1).length, said);
        assertTrue(said.contains("1 study, 6 runs, 0 errors"), said);
        assertFalse(said.contains("Exception"), said);
    }

    private static boolean isOpen(int port) {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            return socket.isConnected();
        } catch (IOException e) {
            return false;
        }
    }
}
