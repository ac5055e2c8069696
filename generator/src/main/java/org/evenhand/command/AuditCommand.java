package org.evenhand.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedSet;
import java.util.concurrent.Callable;
import org.evenhand.cache.Cache;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.FolderChecker;
import org.evenhand.command.audit.Difference;
import org.evenhand.command.audit.Digests;
import org.evenhand.command.audit.FigureChanges;
import org.evenhand.command.audit.Integrity;
import org.evenhand.command.audit.PageLinks;
import org.evenhand.command.audit.SealAudit;
import org.evenhand.model.Limits;
import org.evenhand.page.Pages;
import org.evenhand.page.Templates;
import org.evenhand.site.Manifest;
import org.evenhand.site.Trouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Proves a site complete and unaltered. */
@Command(
        name = "audit",
        mixinStandardHelpOptions = true,
        description =
                "Proves a site complete and unaltered: every file against the manifest, no stranger among them, every link"
                        + " within it, every sealed version against its seal. Ends with 1 if anything differs.",
        footer = {"", "Example: evenhand audit site-out --from sample-results"})
final class AuditCommand implements Callable<Integer> {

    private final Streams streams;

    @Parameters(paramLabel = "DIR", description = "the site")
    private Path site;

    @Option(names = "--from", paramLabel = "FOLDER", description = "the results folder that must give the same site")
    private Optional<Path> folder = Optional.empty();

    @Option(
            names = "--templates",
            paramLabel = "DIR",
            description = "templates that replaced those of the program when the site was published")
    private Optional<Path> templates = Optional.empty();

    @Option(
            names = "--against",
            paramLabel = "DIR2",
            description = "a former site; tells which figures are others now, and counts that as nothing wrong")
    private Optional<Path> former = Optional.empty();

    @Mixin
    private LimitOption limit = new LimitOption();

    AuditCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        try {
            return audit();
        } catch (IOException e) {
            throw new UnusableException("the site cannot be audited: " + Trouble.of(e));
        } catch (UncheckedIOException e) {
            throw new UnusableException("the site cannot be audited: " + Trouble.of(e.getCause()));
        }
    }

    private int audit() throws IOException {
        Manifest manifest = manifest(site);
        SortedSet<Difference> wrong = Integrity.differences(site, manifest);
        wrong.addAll(PageLinks.differences(site, manifest));
        wrong.addAll(SealAudit.differences(site));
        wrong.forEach(streams.out()::println);
        int count = wrong.size();
        streams.err()
                .println(manifest.digests().size() + " files in the manifest, "
                        + counted(count, "thing differs", "things differ"));
        int seals = SealAudit.count(site);
        if (seals > 0) {
            streams.err().println(counted(seals, "sealed version", "sealed versions") + " held against the seals");
        }
        if (folder.isPresent()) {
            SortedSet<Difference> made =
                    made(folder.get(), site, templates, limit.limits()).from(manifest);
            made.forEach(streams.out()::println);
            count += made.size();
            streams.err()
                    .println(
                            made.isEmpty()
                                    ? "the folder gives the same site"
                                    : "the folder does not give this site: "
                                            + counted(made.size(), "file differs", "files differ")
                                            + "; this is " + Version.current());
        }
        if (former.isPresent()) {
            manifest(former.get());
            SortedSet<Difference> changes = FigureChanges.between(site, former.get());
            changes.forEach(streams.out()::println);
            streams.err()
                    .println("against the former site " + counted(changes.size(), "entry is", "entries are")
                            + " not the same");
            SortedSet<Difference> lost = SealAudit.lost(site, former.get());
            lost.forEach(streams.out()::println);
            count += lost.size();
        }
        return count == 0 ? 0 : 1;
    }

    private static Manifest manifest(Path site) throws IOException {
        if (!Files.isRegularFile(site.resolve(Manifest.FILE))) {
            throw new UnusableException(site + " holds no " + Manifest.FILE + ": it is no site of ours");
        }
        return Manifest.of(site);
    }

    /** The site that a folder gives, held against a former one as publishing does. */
    static Digests made(Path folder, Path site, Optional<Path> templates, Limits limits) {
        CheckedFolder checked = FolderChecker.check(folder, Optional.of(site), limits);
        if (checked.isUnusable()) {
            throw new UnusableException("the folder gives no site: its publication cannot be read");
        }
        Digests digests = new Digests();
        Templates used = templates.map(Templates::overriddenBy).orElseGet(Templates::bundled);
        Pages.build(checked, folder, used, Version.named(), Optional.of(site), Cache.none(), digests);
        PublishCommand.keepFormerFigures(checked, site, digests);
        return digests;
    }

    private static String counted(int n, String one, String several) {
        return n + " " + (n == 1 ? one : several);
    }
}
