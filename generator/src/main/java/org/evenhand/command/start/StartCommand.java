package org.evenhand.command.start;

import java.io.Console;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.evenhand.command.Streams;
import org.evenhand.command.UnusableException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a first results folder. */
@Command(
        name = "start",
        mixinStandardHelpOptions = true,
        description = {
            "Writes a small results folder of your own: one method, one study, made-up example runs that say so.",
            "On a terminal it asks for what no option gives; elsewhere it takes what stands in the brackets."
        },
        footer = {
            "",
            "Example: evenhand start my-results --item \"Quillet 3\" --levels \"none, spreader\"",
            "Exit status: 0 written; 2 the folder is not empty, or the call cannot be used."
        })
public final class StartCommand implements Callable<Integer> {

    private final Streams streams;
    private final Optional<Asker> terminal;

    @Parameters(paramLabel = "DIR", description = "the folder to write; it must be empty or not be there yet")
    private Path folder;

    @Option(names = "--title", paramLabel = "TEXT", description = "the title of the site [My hardware trials]")
    private String title;

    @Option(names = "--publisher", paramLabel = "TEXT", description = "who publishes it [A hobby laboratory]")
    private String publisher;

    @Option(names = "--item", paramLabel = "TEXT", description = "the name of what is tested [Small computer]")
    private String item;

    @Option(
            names = "--question",
            paramLabel = "TEXT",
            description = "the question of the study [Does a heat spreader keep it cooler?]")
    private String question;

    @Option(names = "--factor", paramLabel = "NAME", description = "the one setting that you vary [cooling]")
    private String factor;

    @Option(
            names = "--levels",
            paramLabel = "A,B",
            split = ",",
            description = "its values, two to six, the base first [none, spreader]")
    private List<String> levels;

    @Option(names = "--yes", description = "does not ask, even on a terminal")
    private boolean yes;

    public StartCommand(Streams streams) {
        this(streams, terminal(streams));
    }

    StartCommand(Streams streams, Optional<Asker> terminal) {
        this.streams = streams;
        this.terminal = terminal;
    }

    private static Optional<Asker> terminal(Streams streams) {
        Console console = System.console();
        return console == null
                ? Optional.empty()
                : Optional.of(prompt -> {
                    streams.err().print(prompt);
                    streams.err().flush();
                    return console.readLine();
                });
    }

    @Override
    public Integer call() {
        refuseOccupied();
        Answers answers = answers();
        int files = new StarterFolder(answers).write(folder);
        streams.out().println("Wrote " + files + " files to " + folder + ".");
        streams.out().println("All of its runs are made up, and every page will say so until you replace them.");
        streams.out().println();
        streams.out().println("Next:");
        streams.out().println("  evenhand check " + shell(folder));
        streams.out().println("  evenhand publish " + shell(folder) + " --to " + shell(Path.of(folder + "-site")));
        streams.out().println("Then read README.md in the folder: it says what to change, and in which order.");
        streams.out().flush();
        return 0;
    }

    private void refuseOccupied() {
        if (!Files.exists(folder)) {
            return;
        }
        if (!Files.isDirectory(folder)) {
            throw new UnusableException(folder + " is a file; name a folder that is empty or not there yet");
        }
        try (Stream<Path> entries = Files.list(folder)) {
            if (entries.findAny().isPresent()) {
                throw new UnusableException(
                        folder + " is not empty, and nothing in it is touched; name a folder that is not there yet");
            }
        } catch (java.io.IOException e) {
            throw new UnusableException(folder + " cannot be listed; check that you may read it");
        }
    }

    private Answers answers() {
        String theTitle = answer(title, "Title of the site", "My hardware trials");
        String thePublisher = answer(publisher, "Who publishes it", "A hobby laboratory");
        String theItem = answer(item, "What is tested", "Small computer");
        String theQuestion = answer(question, "The question", "Does a heat spreader keep it cooler?");
        String theFactor = answer(factor, "The one setting that you vary", "cooling");
        String given = levels == null ? null : String.join(",", levels);
        List<String> theLevels = Arrays.stream(
                        answer(given, "Its values, with commas between them, the base first", "none, spreader")
                                .split(","))
                .map(String::strip)
                .filter(level -> !level.isEmpty())
                .toList();
        if (theLevels.size() < 2 || theLevels.size() > Answers.MOST_LEVELS) {
            throw new UnusableException("two to " + Answers.MOST_LEVELS + " levels are wanted, not " + theLevels.size()
                    + "; write them as --levels \"none, spreader\"");
        }
        if (theLevels.stream().distinct().count() < theLevels.size()) {
            throw new UnusableException("two of the levels are the same: " + String.join(", ", theLevels));
        }
        return new Answers(theTitle, thePublisher, theItem, theQuestion, factorId(theFactor), theLevels);
    }

    private static String factorId(String written) {
        String id = Answers.id(written, "setting");
        if (id.equals("item") || id.equals("specimen")) {
            throw new UnusableException(
                    "“" + id + "” as the factor needs several items; start with a setting, such as --factor cooling");
        }
        return id;
    }

    private String answer(String given, String prompt, String otherwise) {
        String answer = given;
        if (answer == null && terminal.isPresent() && !yes) {
            answer = terminal.get().ask(prompt + " [" + otherwise + "]: ");
        }
        String text = answer == null || answer.isBlank() ? otherwise : answer.strip();
        if (text.chars().anyMatch(Character::isISOControl)) {
            throw new UnusableException("“" + prompt.toLowerCase(java.util.Locale.ROOT) + "” must be one line of text");
        }
        return text;
    }

    private static String shell(Path path) {
        String text = path.toString();
        return text.matches("[\\w./:\\\\-]+") ? text : "\"" + text + "\"";
    }
}
