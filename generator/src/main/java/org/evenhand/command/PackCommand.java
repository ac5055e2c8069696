package org.evenhand.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.concurrent.Callable;
import org.evenhand.command.audit.Difference;
import org.evenhand.command.audit.Integrity;
import org.evenhand.command.audit.PageLinks;
import org.evenhand.command.pack.BagZip;
import org.evenhand.command.pack.PackException;
import org.evenhand.command.pack.Payload;
import org.evenhand.model.Publication;
import org.evenhand.page.FileRows;
import org.evenhand.quantity.Figures;
import org.evenhand.read.FolderReader;
import org.evenhand.site.Manifest;
import org.evenhand.site.Trouble;
import org.evenhand.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Packs a results folder and its site for an archive. */
@Command(
        name = "pack",
        mixinStandardHelpOptions = true,
        description = {
            "Packs a results folder and the site made of it into one zip for an archive: a BagIt package (RFC 8493) with"
                    + " the digest of each file. First proves that the site is whole and that the folder gives it.",
            "The same folders give the same bytes."
        },
        footer = {
            "",
            "Example: evenhand pack sample-results --site site-out --to relay-trials.zip",
            "Exit status: 0 packed; 1 the folder does not give the site; 2 nothing can be packed as it is."
        })
final class PackCommand implements Callable<Integer> {

    private static final long GIGABYTE = 1_000_000_000;

    private final Streams streams;

    @Parameters(paramLabel = "FOLDER", description = "the results folder: the one that holds publication.yaml")
    private Path folder;

    @Option(names = "--site", paramLabel = "DIR", required = true, description = "the site that was made of it")
    private Path site;

    @Option(
            names = "--to",
            paramLabel = "FILE",
            required = true,
            description = "the file to write, which ends in .zip and is not there yet")
    private Path target;

    @Option(
            names = "--templates",
            paramLabel = "DIR",
            description = "templates that replaced those of the program when the site was published")
    private Optional<Path> templates = Optional.empty();

    @Option(
            names = "--dated",
            paramLabel = "DATE",
            description = "the date of packing, such as 2026-05-04, for the package's Bagging-Date; none if absent")
    private Optional<LocalDate> dated = Optional.empty();

    @Option(
            names = "--as-they-are",
            description = "packs folder and site even if this version of the program makes another site of the folder")
    private boolean asTheyAre;

    @Option(
            names = "--most",
            paramLabel = "GB",
            description = "refuses more than so many gigabytes; ${DEFAULT-VALUE} if absent")
    private int most = 16;

    @Mixin
    private LimitOption limit = new LimitOption();

    PackCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        try {
            return pack();
        } catch (PackException e) {
            throw new UnusableException(e.getMessage());
        } catch (IOException e) {
            throw new UnusableException("this cannot be packed: " + Trouble.of(e));
        } catch (UncheckedIOException e) {
            throw new UnusableException("this cannot be packed: " + Trouble.of(e.getCause()));
        }
    }

    private int pack() throws PackException, IOException {
        checkTarget();
        if (!Files.isRegularFile(site.resolve(Manifest.FILE))) {
            throw new UnusableException(site + " holds no " + Manifest.FILE + ": it is no site of ours");
        }
        Publication publication = FolderReader.read(folder, limit.limits())
                .publication()
                .orElseThrow(() -> new UnusableException(
                        folder + " is no results folder: its publication cannot be read; ask “evenhand check”"));
        Payload payload = new Payload(most * GIGABYTE);
        payload.addResults(folder);
        payload.addSite(site);
        if (!asTheyAre && !isProved()) {
            return 1;
        }
        for (String stranger : Integrity.strangers(site, Manifest.of(site))) {
            streams.err().println(stranger + " is left out: it stands in the site, and the manifest does not name it");
        }
        String sha256 = BagZip.write(target, payload, about(publication, payload));
        streams.out().println(target);
        streams.err().println(payload.pieces().size() + " files packed; SHA-256 of the package: " + sha256);
        return 0;
    }

    private void checkTarget() throws IOException {
        String name = target.getFileName() == null ? "" : target.getFileName().toString();
        if (!name.matches("[\\p{L}\\p{Nd}_][\\p{L}\\p{Nd}_. -]*\\.zip")) {
            throw new UnusableException("“" + name + "” is no name for a package; give a plain one that ends in .zip");
        }
        if (Files.exists(target)) {
            throw new UnusableException(target + " is there already, and nothing is written over; give another name");
        }
        Path parent = target.toAbsolutePath().getParent();
        if (!Files.isDirectory(parent)) {
            throw new UnusableException(parent + " is no folder; make it first");
        }
        for (Path within : new Path[] {folder, site}) {
            if (Files.isDirectory(within) && parent.toRealPath().startsWith(within.toRealPath())) {
                throw new UnusableException("the package cannot stand within " + within + "; give a file elsewhere");
            }
        }
    }

    /** Whether the site leads nowhere out of itself, and the folder gives it; what does not hold is told. */
    private boolean isProved() throws IOException {
        Manifest manifest = Manifest.of(site);
        SortedSet<Difference> wrong = PageLinks.differences(site, manifest);
        wrong.addAll(AuditCommand.made(folder, site, templates, limit.limits()).from(manifest));
        wrong.forEach(streams.err()::println);
        if (!wrong.isEmpty()) {
            streams.err()
                    .println("nothing is packed: the folder does not give this site; publish it again, or give"
                            + " --as-they-are to pack both all the same");
        }
        return wrong.isEmpty();
    }

    private Map<String, String> about(Publication publication, Payload payload) {
        Map<String, String> about = new LinkedHashMap<>();
        about.put("Source-Organization", publication.publisher());
        publication.contact().filter(c -> c.matches("[^\\s@]+@[^\\s@]+")).ifPresent(c -> about.put("Contact-Email", c));
        about.put(
                "External-Description",
                publication.title() + ": test results, and the site made of them"
                        + (publication.invented() ? "; the data are invented" : "")
                        + (asTheyAre ? "; not proved that they belong together" : ""));
        about.put("External-Identifier", publication.baseUrl());
        dated.ifPresent(date -> about.put("Bagging-Date", date.toString()));
        about.put("Bag-Size", FileRows.size(payload.bytes(), Words.english()).replace(Figures.NO_BREAK_SPACE, " "));
        about.put("Bag-Software-Agent", "evenhand " + Version.current());
        return about;
    }
}
