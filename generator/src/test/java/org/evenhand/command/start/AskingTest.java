package org.evenhand.command.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.evenhand.command.Streams;
import org.evenhand.model.Study;
import org.evenhand.read.FolderReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** At a terminal, whatever no option gives is asked for. */
class AskingTest {

    @TempDir
    private Path place;

    private final List<String> asked = new ArrayList<>();

    private void start(List<String> typed, String... options) {
        Iterator<String> answers = typed.iterator();
        Asker asker = prompt -> {
            asked.add(prompt);
            return answers.hasNext() ? answers.next() : null;
        };
        PrintStream nowhere = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
        StartCommand command = new StartCommand(new Streams(nowhere, nowhere), Optional.of(asker));
        List<String> arguments = new ArrayList<>(List.of(place.resolve("mine").toString()));
        arguments.addAll(List.of(options));
        assertEquals(0, new CommandLine(command).execute(arguments.toArray(String[]::new)));
    }

    private Study study() {
        return FolderReader.read(place.resolve("mine")).studies().get("first-question");
    }

    @Test
    void whatIsTypedIsWritten() {
        start(List.of("Trials", "Ann", "Quillet 3", "Is the fan needed?", "fan", "off, low, high"));
        assertEquals("Is the fan needed?", study().question());
        assertEquals("fan", study().factor());
        assertEquals(List.of("off", "low", "high"), study().levels());
    }

    @Test
    void returnTakesWhatStandsInTheBrackets() {
        start(List.of("", "", "", "", "", ""));
        assertEquals(6, asked.size());
        assertTrue(asked.get(0).contains("[My hardware trials]"), asked.toString());
        assertEquals(List.of("none", "spreader"), study().levels());
    }

    @Test
    void whatAnOptionGivesIsNotAskedAndYesAsksNothing() {
        start(List.of(), "--item", "Quillet 3", "--levels", "a,b");
        assertEquals(4, asked.size(), asked.toString());
    }

    @Test
    void yesAsksNothing() {
        start(List.of(), "--yes");
        assertEquals(List.of(), asked);
    }
}
