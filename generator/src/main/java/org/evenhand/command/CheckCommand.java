package org.evenhand.command;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.FolderChecker;
import org.evenhand.model.Finding;
import org.evenhand.model.Outcome;
import org.evenhand.model.Severity;
import org.evenhand.prose.ProseFault.Correction;
import org.evenhand.site.Manifest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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
            completionCandidates = RuleNames.class,
            description = "prints the findings of this rule alone; may be repeated")
    private List<String> only = List.of();

    @Option(names = "--format", paramLabel = "FORM", description = "${COMPLETION-CANDIDATES}; text if absent")
    private Form form = Form.text;

    @Option(
            names = "--fail-on",
            paramLabel = "SEVERITY",
            description = "ends with 1 for findings of this severity and graver ones: ${COMPLETION-CANDIDATES};"
                    + " withhold if absent")
    private Failing failOn = Failing.withhold;

    @Option(
            names = "--most",
            paramLabel = "N",
            description = "prints at most so many findings and counts the rest; ${DEFAULT-VALUE} if absent")
    private int most = 10_000;

    @Option(
            names = "--against",
            paramLabel = "DIR",
            description = "a former publication: tells which figures moved, and whether the answers say so")
    private Optional<Path> against = Optional.empty();

    @Option(
            names = "--suggest",
            description = "prints a patch with the words that would be right, in place of the findings")
    private boolean suggest;

    @Mixin
    private Work work = new Work();

    @Mixin
    private LimitOption limit = new LimitOption();

    /** How findings are written. */
    enum Form {
        text,
        json,
        sarif
    }

    /** From which severity on the command ends with 1. */
    enum Failing {
        withhold(Severity.WITHHOLD),
        refuse(Severity.REFUSE),
        caveat(Severity.CAVEAT),
        note(Severity.NOTE);

        private final Severity severity;

        Failing(Severity severity) {
            this.severity = severity;
        }
    }

    CheckCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        only.forEach(ExplainCommand::known);
        against.filter(site -> !Files.isRegularFile(site.resolve(Manifest.FILE)))
                .ifPresent(site -> {
                    throw new UnusableException(
                            site + " holds no " + Manifest.FILE + ": it is no site of ours to hold against");
                });
        CheckedFolder checked = checked();
        if (suggest) {
            return suggestions(checked);
        }
        List<Finding> shown = checked.findings().stream()
                .filter(f -> only.isEmpty() || only.contains(f.rule()))
                .toList();
        int leftOut = Math.max(0, shown.size() - Math.max(0, most));
        print(streams.out(), shown.subList(0, shown.size() - leftOut), leftOut);
        if (against.isPresent() && form == Form.text) {
            printMoved(checked);
        }
        streams.err().println(Summary.of(checked));
        boolean fails = shown.stream()
                .anyMatch(f -> f.outcome() == Outcome.FOUND && f.severity().compareTo(failOn.severity) <= 0);
        return fails ? Math.max(1, status(checked)) : status(checked);
    }

    private CheckedFolder checked() {
        Stages stages = work.stages(streams.err());
        CheckedFolder checked = FolderChecker.check(folder, against, limit.limits(), work.cache(), stages);
        stages.begins("tidy");
        work.tidy();
        stages.end();
        return checked;
    }

    private void printMoved(CheckedFolder checked) {
        checked.studies().forEach((id, study) -> {
            study.moved().forEach(m -> streams.out().println(id + ": " + m));
            study.movedSentences().forEach(s -> streams.out().println(s));
        });
        streams.out().flush();
    }

    private int suggestions(CheckedFolder checked) {
        List<Correction> corrections = checked.corrections();
        try {
            streams.out().print(new SuggestedPatch(folder).of(corrections));
            streams.out().flush();
        } catch (IOException e) {
            throw new UnusableException("a file changed while it was read; try again");
        }
        streams.err().println(Summary.number(corrections.size(), "correction", "corrections"));
        return status(checked);
    }

    private void print(PrintStream out, List<Finding> findings, int leftOut) {
        switch (form) {
            case json -> out.print(FindingJson.write(findings, leftOut) + "\n");
            case sarif -> out.print(Sarif.write(findings) + "\n");
            case text -> {
                FindingText text = new FindingText(folder, Terminal.hasColour());
                findings.forEach(f -> out.println(text.write(f)));
                if (leftOut > 0) {
                    out.println("and " + leftOut + " more; --most shows more of them");
                }
            }
        }
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
