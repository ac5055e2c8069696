package org.evenhand.command;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.FolderChecker;
import org.evenhand.model.Finding;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads, computes, and prints what it finds. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Reads a results folder, computes its figures, and prints what is wrong with them.",
        footer = {"", "Example: evenhand check sample-results"})
final class CheckCommand implements Callable<Integer> {

    private final Streams streams;

    @Parameters(paramLabel = "FOLDER", description = "the results folder: the one that holds publication.yaml")
    private Path folder;

    @Option(
            names = "--only",
            paramLabel = "RULE",
            description = "prints the findings of this rule alone; may be repeated")
    private List<String> only = List.of();

    CheckCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        CheckedFolder checked = FolderChecker.check(folder);
        List<Finding> shown = checked.findings().stream()
                .filter(f -> only.isEmpty() || only.contains(f.rule()))
                .toList();
        print(streams.out(), shown);
        streams.err().println(Summary.of(checked));
        return status(checked);
    }

    void print(PrintStream out, List<Finding> findings) {
        FindingText text = new FindingText(folder, Terminal.hasColour());
        findings.forEach(f -> out.println(text.write(f)));
        out.flush();
    }

    /** 2 if nothing can be used, 1 if something is kept from being published, else 0. */
    static int status(CheckedFolder checked) {
        if (checked.isUnusable()) {
            return 2;
        }
        return checked.withholds() ? 1 : 0;
    }
}
