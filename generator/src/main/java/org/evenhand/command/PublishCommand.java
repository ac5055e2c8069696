package org.evenhand.command;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.FolderChecker;
import org.evenhand.model.Finding;
import org.evenhand.page.Pages;
import org.evenhand.page.Templates;
import org.evenhand.site.SiteWriter;
import org.evenhand.site.TargetException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks a results folder and makes the whole site of it. */
@Command(
        name = "publish",
        mixinStandardHelpOptions = true,
        description =
                "Checks a results folder and makes the whole site of it. A study with a blocking finding is withheld:"
                        + " its page says why, and the rest is published.",
        footer = {"", "Example: evenhand publish sample-results --to site-out"})
final class PublishCommand implements Callable<Integer> {

    private final Streams streams;

    @Parameters(paramLabel = "FOLDER", description = "the results folder: the one that holds publication.yaml")
    private Path folder;

    @Option(names = "--to", paramLabel = "DIR", required = true, description = "where the site is to stand")
    private Path target;

    @Option(
            names = "--templates",
            paramLabel = "DIR",
            description = "templates that replace those of the program, by name")
    private Optional<Path> templates = Optional.empty();

    PublishCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        CheckedFolder checked = FolderChecker.check(folder);
        FindingText text = new FindingText(folder, Terminal.hasColour());
        PrintStream err = streams.err();
        checked.findings().stream().filter(Finding::withholds).forEach(f -> err.println(text.write(f)));
        if (checked.isUnusable()) {
            throw new UnusableException("nothing can be published: the publication itself cannot be read");
        }
        try (SiteWriter site = SiteWriter.begin(target, folder)) {
            Templates used = templates.map(Templates::overriddenBy).orElseGet(Templates::bundled);
            Pages.build(checked, folder, used, Version.current(), site);
            site.finish();
        } catch (TargetException e) {
            throw new UnusableException(e.getMessage());
        } catch (IOException | UncheckedIOException e) {
            throw new UnusableException("the site cannot be written: " + e.getMessage());
        }
        streams.out().println(target.resolve("index.html"));
        err.println(Summary.ofPublication(checked));
        return CheckCommand.status(checked);
    }
}
