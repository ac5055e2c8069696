package org.evenhand.command;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.evenhand.check.CheckedFolder;
import org.evenhand.command.preview.Preview;
import org.evenhand.command.preview.Renewal;
import org.evenhand.model.Finding;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Serves the site of a results folder on this machine, and renews it while the folder is edited. */
@Command(
        name = "preview",
        mixinStandardHelpOptions = true,
        description = {
            "Serves the site to browsers on this machine alone, and renews it when a file of the folder changes: pages"
                    + " that are open follow, and stay where they were scrolled to. Errors stand on the pages and here.",
            "Nothing is written to the folder. Ctrl-C ends it."
        },
        footer = {"", "Example: evenhand preview sample-results --port 0"})
final class PreviewCommand implements Callable<Integer> {

    private final Streams streams;
    private final Set<Finding> known = new HashSet<>();

    @Parameters(paramLabel = "FOLDER", description = "the results folder: the one that holds publication.yaml")
    private Path folder;

    @Option(
            names = "--port",
            paramLabel = "N",
            description = "the port to listen on, 0 for any that is free; ${DEFAULT-VALUE} if absent")
    private int port = 8710;

    @Option(
            names = "--templates",
            paramLabel = "DIR",
            description = "templates that replace those of the program, by name; they are watched too")
    private Optional<Path> templates = Optional.empty();

    @Mixin
    private final Kept kept = new Kept();

    @Mixin
    private LimitOption limit = new LimitOption();

    PreviewCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        if (!Files.isDirectory(folder)) {
            throw new UnusableException(folder + " is no folder; give the one that holds publication.yaml");
        }
        if (port < 0 || port > 65_535) {
            throw new UnusableException("there is no port " + port + "; give one from 1024 to 65535, or 0 for any");
        }
        try (Preview preview =
                new Preview(folder, templates, limit.limits(), Version.named(), port, kept.cache(), this::tell)) {
            Thread atTheEnd = new Thread(preview::close, "evenhand-end");
            Runtime.getRuntime().addShutdownHook(atTheEnd);
            streams.out().println(preview.address());
            streams.out().flush();
            preview.begin();
            kept.tidy();
            new CountDownLatch(1).await();
            return 0;
        } catch (InterruptedException e) {
            return 0;
        } catch (IOException e) {
            throw new UnusableException("port " + port + " is not to be had, perhaps another preview has it ("
                    + e.getMessage() + "); give another with --port, or --port 0 for any that is free");
        }
    }

    private void tell(Renewal renewal) {
        PrintStream err = streams.err();
        renewal.fault().ifPresent(fault -> err.println("evenhand: a fault of this program: " + fault));
        renewal.checked().ifPresent(checked -> tell(checked, renewal.ms(), err));
    }

    private void tell(CheckedFolder checked, long ms, PrintStream err) {
        List<Finding> errors =
                checked.findings().stream().filter(Finding::withholds).toList();
        FindingText text = new FindingText(folder, Terminal.hasColour());
        errors.stream().filter(f -> !known.contains(f)).forEach(f -> err.println(text.write(f)));
        known.clear();
        known.addAll(errors);
        if (checked.isUnusable()) {
            err.println("nothing can be published: the publication itself cannot be read");
        }
        String time = LocalTime.now().truncatedTo(ChronoUnit.SECONDS).toString();
        err.println(time + " read in " + ms + " ms: " + Summary.of(checked));
    }
}
