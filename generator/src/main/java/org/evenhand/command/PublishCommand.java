package org.evenhand.command;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.CheckedStudy;
import org.evenhand.check.FolderChecker;
import org.evenhand.model.Finding;
import org.evenhand.page.PageSink;
import org.evenhand.page.Pages;
import org.evenhand.page.Templates;
import org.evenhand.read.FormerAnswer;
import org.evenhand.site.Manifest;
import org.evenhand.site.SiteWriter;
import org.evenhand.site.TargetException;
import org.evenhand.site.Trouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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

    @Mixin
    private Work work = new Work();

    @Mixin
    private LimitOption limit = new LimitOption();

    PublishCommand(Streams streams) {
        this.streams = streams;
    }

    /** A withheld answer shows no figures, but those last published stay, so that a silent change is found next time too. */
    static void keepFormerFigures(CheckedFolder checked, Path former, PageSink site) {
        for (CheckedStudy study : checked.studies().values()) {
            String id = study.evidence().study().id();
            Optional<String> from = FormerAnswer.folder(former, id).filter(f -> study.isWithheld());
            for (String file : List.of(FormerAnswer.EVIDENCE, FormerAnswer.TEXT)) {
                from.ifPresent(f -> {
                    try {
                        byte[] bytes = Files.readAllBytes(former.resolve(f).resolve(file));
                        site.put("answers/" + id + "/" + FormerAnswer.KEPT + "/" + file, bytes);
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                });
            }
        }
    }

    @Override
    public Integer call() {
        // Begun before anything is read: what was cut short is mended first, so the figures of the former site are
        // there.
        try (SiteWriter site = SiteWriter.begin(target, folder, work.cache())) {
            return publish(site);
        } catch (TargetException e) {
            throw new UnusableException(e.getMessage());
        } catch (IOException e) {
            throw new UnusableException("the site cannot be written: " + Trouble.of(e));
        } catch (UncheckedIOException e) {
            throw new UnusableException("the site cannot be written: " + Trouble.of(e.getCause()));
        }
    }

    private int publish(SiteWriter site) throws TargetException, IOException {
        Receipt.Question question = Receipt.Question.of(work.cache(), folder, templates, limit.limits(), target);
        Optional<Receipt> before = question.answer();
        if (before.isPresent()) {
            streams.out().println(target.resolve("index.html"));
            streams.err().println(before.get().summary());
            return 0;
        }
        Stages stages = work.stages(streams.err());
        Optional<Path> former = Optional.of(target).filter(t -> Files.isRegularFile(t.resolve(Manifest.FILE)));
        CheckedFolder checked = FolderChecker.check(folder, former, limit.limits(), work.cache(), stages);
        FindingText text = new FindingText(folder, Terminal.hasColour());
        PrintStream err = streams.err();
        checked.findings().stream().filter(Finding::withholds).forEach(f -> err.println(text.write(f)));
        if (checked.isUnusable()) {
            throw new UnusableException("nothing can be published: the publication itself cannot be read");
        }
        Templates used = templates.map(Templates::overriddenBy).orElseGet(Templates::bundled);
        stages.begins("pages");
        Pages.build(checked, folder, used, Version.named(), former, work.cache(), site);
        former.ifPresent(f -> keepFormerFigures(checked, f, site));
        stages.begins("put in place");
        Unchanged.check(checked.folder(), folder);
        site.finish();
        question.keep(checked, Summary.ofPublication(checked));
        work.tidy();
        stages.end();
        streams.out().println(target.resolve("index.html"));
        err.println(Summary.ofPublication(checked));
        return CheckCommand.status(checked);
    }
}
