package org.evenhand.command;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.CheckedStudy;
import org.evenhand.check.FolderChecker;
import org.evenhand.model.Finding;
import org.evenhand.model.Seal;
import org.evenhand.model.Status;
import org.evenhand.model.Study;
import org.evenhand.page.Templates;
import org.evenhand.page.kept.Freezing;
import org.evenhand.read.NearMiss;
import org.evenhand.read.Seals;
import org.evenhand.read.Sha256;
import org.evenhand.site.SealWriter;
import org.evenhand.site.TargetException;
import org.evenhand.site.Trouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Freezes the present version of an answer. */
@Command(
        name = "seal",
        mixinStandardHelpOptions = true,
        description = {
            "Freezes the present version of an answer: page, figures, text, findings, and the digests of all that they were"
                    + " made from. Every publication shows it from then on as it was, at an address of its own.",
            "What is sealed lies in the folder “sealed” of the results folder. It is written once and never altered."
        },
        footer = {
            "",
            "Example: evenhand seal plate --in my-results",
            "Exit status: 0 sealed; 1 findings withhold the answer; 2 the version is sealed already, or cannot be."
        })
final class SealCommand implements Callable<Integer> {

    private final Streams streams;

    @Parameters(paramLabel = "STUDY", description = "the study whose answer is to be sealed")
    private String study;

    @Option(names = "--in", paramLabel = "FOLDER", description = "the results folder [the current one]")
    private Path folder = Path.of(".");

    @Option(
            names = "--templates",
            paramLabel = "DIR",
            description = "templates that replace those of the program, by name")
    private Optional<Path> templates = Optional.empty();

    @Mixin
    private LimitOption limit = new LimitOption();

    SealCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        CheckedFolder checked = FolderChecker.check(folder, Optional.empty(), limit.limits());
        if (checked.isUnusable()) {
            throw new UnusableException("nothing can be sealed: the publication itself cannot be read");
        }
        CheckedStudy of = checked.studies().get(study);
        if (of == null) {
            return unreadable(checked);
        }
        refuseWhatIsNoAnswer(of.evidence().study(), checked);
        if (of.isWithheld()) {
            tellErrors(checked);
            streams.err().println("“" + study + "” is withheld, and what is withheld is not sealed: mend it first");
            return 1;
        }
        try {
            return seal(of, checked);
        } catch (TargetException e) {
            throw new UnusableException(e.getMessage());
        } catch (IOException e) {
            throw new UnusableException("the version cannot be sealed: " + Trouble.of(e));
        } catch (UncheckedIOException e) {
            throw new UnusableException("the version cannot be sealed: " + Trouble.of(e.getCause()));
        }
    }

    private int unreadable(CheckedFolder checked) {
        if (checked.folder().broken().contains(study)) {
            tellErrors(checked);
            streams.err().println("the files of “" + study + "” cannot be read as a whole: mend them first");
            return 1;
        }
        throw new UnusableException("there is no study “" + study + "”; "
                + NearMiss.suggestion(study, checked.studies().keySet()));
    }

    private void refuseWhatIsNoAnswer(Study of, CheckedFolder checked) {
        if (of.status() == Status.WANTED || of.status() == Status.DRAFT) {
            throw new UnusableException(
                    "“" + study + "” is " + of.status().name().toLowerCase(java.util.Locale.ROOT)
                            + ": only an answer is sealed; give it status: final and the date as “answered”");
        }
        boolean isSealed = checked.folder().seals(study).stream().anyMatch(s -> s.version() == of.version());
        if (isSealed) {
            throw new UnusableException("version " + of.version() + " of “" + study
                    + "” is sealed already, and stays as it is; an entry in revisions makes a new version");
        }
    }

    private void tellErrors(CheckedFolder checked) {
        FindingText text = new FindingText(folder, Terminal.hasColour());
        checked.findings().stream()
                .filter(Finding::withholds)
                .filter(f -> f.subject().study().filter(study::equals).isPresent())
                .forEach(f -> streams.err().println(text.write(f)));
    }

    private int seal(CheckedStudy of, CheckedFolder checked) throws TargetException, IOException {
        int version = of.evidence().study().version();
        Templates used = templates.map(Templates::overriddenBy).orElseGet(Templates::bundled);
        SortedMap<String, byte[]> files = Freezing.of(of, checked, folder, used, Version.named());
        Unchanged.check(checked.folder(), folder);
        SealWriter.write(folder, study, version, files);
        Seal named = new Seal(study, version, "", new java.util.TreeMap<>(), java.util.List.of());
        streams.out().println(folder.resolve(Seals.FOLDER).resolve(named.list()));
        PrintStream err = streams.err();
        err.println("version " + version + " of “" + study + "” is sealed: " + files.size() + " files");
        err.println("digest of the list of them, to be noted elsewhere: " + Sha256.of(files.get(named.list())));
        err.println("publish, and it stands at " + named.folder());
        return 0;
    }
}
