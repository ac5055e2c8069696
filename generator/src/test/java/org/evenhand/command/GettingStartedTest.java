package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.evenhand.docs.Guide;
import org.evenhand.docs.Guide.Block;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first guide is followed to the letter: its files are written, its commands run, and they print what it shows. */
class GettingStartedTest {

    private static final Guide GUIDE = Guide.read("docs/getting-started.md");
    private static final String FOLDER = "my-results";

    @TempDir
    private Path temporary;

    @Test
    void everyStepWorksAsWritten() {
        int commands = 0;
        for (Block block : GUIDE.blocks()) {
            if (block.isFile()) {
                block.writeInto(temporary.resolve(FOLDER));
            } else if (block.language().equals("console")) {
                run(block);
                commands++;
            }
        }
        assertEquals(4, commands);
    }

    /** Runs the command of the first line; what stands below it is what it prints. */
    private void run(Block block) {
        String start = "$ generator/evenhand ";
        String command = block.content().lines().findFirst().orElseThrow();
        assertTrue(command.startsWith(start), command);
        String[] arguments = List.of(command.substring(start.length()).split(" ")).stream()
                .map(a -> a.equals(FOLDER) ? temporary.resolve(FOLDER).toString() : a)
                .toArray(String[]::new);
        List<String> status = block.all("status");
        Called called = Called.with(arguments).ended(status.isEmpty() ? 0 : Integer.parseInt(status.get(0)));
        String shown = block.content().substring(command.length() + 1);
        // Only a jar knows its version; the parent's is the one that it will have.
        String printed = (called.out() + called.err()).replace("evenhand unpacked", "evenhand " + version());
        assertEquals(shown.strip(), printed.strip(), () -> GUIDE.file() + ":" + block.line());
    }

    private static String version() {
        String pom = Guide.read("pom.xml").text();
        int start = pom.indexOf("<version>") + "<version>".length();
        return pom.substring(start, pom.indexOf("</version>", start));
    }

    @Test
    void theNameOfEachFileStandsInTheTextAboveIt() {
        for (Block block : GUIDE.blocks()) {
            if (block.isFile() && !isOneOfFiveAlike(block)) {
                String file = block.all("file").get(0).replaceFirst(".*/", "");
                List<String> lines = GUIDE.text().lines().toList();
                String above = String.join("\n", lines.subList(block.line() - 4, block.line() - 1));
                assertTrue(above.contains(file + "`"), file);
            }
        }
    }

    private static boolean isOneOfFiveAlike(Block block) {
        return block.all("file").get(0).matches(".*/(flat-[23]|upright-[123])\\.(yaml|csv)");
    }
}
