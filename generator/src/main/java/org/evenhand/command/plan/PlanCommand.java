package org.evenhand.command.plan;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.evenhand.command.LimitOption;
import org.evenhand.command.Streams;
import org.evenhand.command.UnusableException;
import org.evenhand.model.Run;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans a study before its first run. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = {
            "Says how many repeats a wanted resolution takes, or what a number of repeats can show.",
            "Writes a run sheet to print, and run files to fill in."
        },
        footer = {
            "",
            "Example: evenhand plan --difference \"1 K\" --spread \"0.6 K\" --levels \"none,plate\" --sheet sheet.html",
            "Example: evenhand plan --from my-results --study plate --runs 5",
            "Exit status: 0 planned; 2 the call cannot be used."
        })
public final class PlanCommand implements Callable<Integer> {

    private final Streams streams;

    @Mixin
    private Rare rare = new Rare();

    @Option(
            names = "--difference",
            paramLabel = "SIZE",
            description = "the difference to be found: \"1 K\" or \"5 %%\"")
    private String difference;

    @Option(names = "--margin", paramLabel = "SIZE", description = "the margin within which levels count as the same")
    private String margin;

    @Option(
            names = "--spread",
            paramLabel = "SIZE",
            description = "the standard deviation of repeats at a level; with --pairs, of differences within pairs")
    private String spread;

    @Option(names = "--mean", paramLabel = "QUANTITY", description = "a typical value, to turn percent into a size")
    private String mean;

    @Option(names = "--pairs", description = "plans pairs: each specimen once at either level")
    private boolean pairs;

    @Option(names = "--runs", paramLabel = "N", description = "says what N repeats can show; with --sheet, plans N")
    private Integer runs;

    @Option(names = "--power", paramLabel = "SHARE", description = "the chance of showing what is there [80 %%]")
    private String power;

    @Option(names = "--confidence", paramLabel = "SHARE", description = "of the intervals [95 %%]")
    private String confidence;

    @Option(names = "--from", paramLabel = "FOLDER", description = "takes spread, levels and method from this folder")
    private Path from;

    @Option(names = "--study", paramLabel = "ID", description = "whose runs they are; not needed if there is one study")
    private String study;

    @Option(names = "--measurand", paramLabel = "ID", description = "whose spread it is [the first of the study]")
    private String measurand;

    @Option(names = "--sheet", paramLabel = "FILE", description = "writes a run sheet: .md or .html; may be repeated")
    private List<Path> sheets = List.of();

    @Option(names = "--prepare", description = "writes run files to fill in, under planned/ of the study")
    private boolean prepare;

    @Option(
            names = "--levels",
            paramLabel = "A,B",
            split = ",",
            description = "of the factor, for the sheet [the study's]")
    private List<String> levels;

    @Option(names = "--specimens", paramLabel = "A,B", split = ",", description = "that take turns [the item's]")
    private List<String> specimens;

    @Option(names = "--item", paramLabel = "ID", description = "what is tested, for --prepare [the only one]")
    private String item;

    @Option(names = "--order", paramLabel = "KIND", description = "random within blocks, or interleaved [random]")
    private String order = "random";

    @Option(names = "--seed", paramLabel = "N", description = "of the random order; the same gives the same order [1]")
    private long seed = 1;

    @Mixin
    private LimitOption limit = new LimitOption();

    public PlanCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        if (runs != null && (runs < 2 || runs > 10_000)) {
            throw new UnusableException("--runs is a number of repeats from 2 to 10000, not " + runs);
        }
        if (!order.equals("random") && !order.equals("interleaved")) {
            throw new UnusableException("--order is random or interleaved, not “" + order + "”");
        }
        Optional<Earlier> earlier = Optional.ofNullable(from).map(f -> Earlier.of(f, study, limit.limits()));
        double sure = share("--confidence", confidence, 0.95);
        boolean comparing = difference != null || margin != null || (runs != null && (spread != null || from != null));
        int largest = comparing ? compared(earlier, sure) : 0;
        largest = Math.max(largest, rare.plan(streams.out(), sure, runs, comparing));
        if (largest == 0 && runs == null) {
            throw new UnusableException("say what is wanted: --difference, --margin, --at-least, --share-within or"
                    + " --rate-below; or with --runs what N repeats can show");
        }
        int repeats = runs == null ? largest : runs;
        if (!sheets.isEmpty() || prepare) {
            write(earlier, repeats);
        }
        streams.out().flush();
        return 0;
    }

    static double share(String option, String text, double otherwise) {
        if (text == null) {
            return otherwise;
        }
        Quantity quantity = Amount.quantity(option, text);
        if (!quantity.unit().convertsTo(Unit.ONE)) {
            throw new UnusableException(option + " is a share such as \"80 %\", not " + text);
        }
        double share = quantity.in(Unit.ONE);
        if (share > 0 && share < 1) {
            return share;
        }
        throw new UnusableException(option + " lies between 0 % and 100 %, not at " + text);
    }

    /** Plans for a comparison of two levels; returns the largest number of repeats, 0 if only N was asked about. */
    private int compared(Optional<Earlier> earlier, double sure) {
        if (spread == null && earlier.isEmpty()) {
            throw new UnusableException(
                    "give the standard deviation of repeats with --spread, or earlier runs with --from FOLDER");
        }
        Spread scatter = spread != null
                ? new Spread(Amount.parse("--spread", spread), OptionalInt.empty(), "as stated")
                : earlier.map(e -> pairs ? e.spreadOfPairs(e.measurand(measurand)) : e.spread(e.measurand(measurand)))
                        .orElseThrow();
        Optional<Quantity> typical = Optional.ofNullable(mean)
                .map(m -> Amount.quantity("--mean", m))
                .or(() -> earlier.flatMap(e -> e.mean(e.measurand(measurand))));
        List<Amount> wanted = new ArrayList<>();
        if (difference != null) {
            wanted.add(Amount.parse("--difference", difference));
        }
        if (margin != null) {
            wanted.add(Amount.parse("--margin", margin));
        }
        // Percent are planned in percent: then the margin of a ratio is that which the site will hold it against.
        Spread used = wanted.isEmpty() ? scatter : asWanted(scatter, wanted.get(0), typical);
        Repeats repeats = new Repeats(used, pairs, sure, share("--power", power, 0.8));
        streams.out()
                .println("Spread: " + used.deviation().text() + ", the standard deviation of "
                        + (pairs ? "differences within pairs" : "repeats at a level") + ", " + used.origin() + ".");
        int largest = 0;
        if (difference != null) {
            largest =
                    say(repeats.forDifference(wanted.get(0).like(used.deviation(), "--difference", typical)), largest);
        }
        if (margin != null) {
            Amount limit = wanted.get(wanted.size() - 1).like(used.deviation(), "--margin", typical);
            largest = say(repeats.forMargin(limit), largest);
        }
        if (runs != null) {
            streams.out().println(runs + (pairs ? " pairs:" : " repeats at each level:"));
            repeats.shownBy(runs).forEach(line -> streams.out().println("  " + line));
        }
        int comparisons = earlier.map(e -> e.study().comparisons().size()).orElse(1);
        if (comparisons > 1) {
            streams.out()
                    .println("The study makes " + comparisons + " comparisons, and Holm's correction asks more of each:"
                            + " to be on the safe side, plan with --confidence \""
                            + Repeats.percent(1 - (1 - sure) / comparisons) + "\".");
        }
        streams.out().println("Repeats on one specimen speak for that specimen; for the kind, count specimens.");
        return largest;
    }

    private static Spread asWanted(Spread spread, Amount wanted, Optional<Quantity> typical) {
        if (spread.deviation().relative() == wanted.relative()) {
            return spread;
        }
        return new Spread(
                spread.deviation().like(wanted, "--spread", typical), spread.degreesOfFreedom(), spread.origin());
    }

    private int say(Repeats.Answer answer, int largest) {
        streams.out().println(answer.text());
        return Math.max(largest, answer.repeats().orElse(0));
    }

    private void write(Optional<Earlier> earlier, int repeats) {
        if (repeats == 0) {
            throw new UnusableException("no number of repeats is enough; a sheet needs --runs");
        }
        List<String> theLevels = levels != null
                ? levels.stream().map(String::strip).toList()
                : earlier.map(e -> e.study().levels())
                        .orElseThrow(() -> new UnusableException("a sheet needs --levels, or --from FOLDER"));
        if ((long) repeats * theLevels.size() > 5000) {
            throw new UnusableException(
                    repeats + " repeats of " + theLevels.size() + " levels are too many for a sheet; give --runs");
        }
        Optional<String> theItem = Optional.ofNullable(item).or(() -> earlier.flatMap(Earlier::item));
        List<String> theSpecimens = specimens != null
                ? specimens.stream().map(String::strip).toList()
                : earlier.flatMap(e -> theItem.map(i -> e.folder().items().get(i)))
                        .map(i -> i.specimens())
                        .filter(s -> !s.isEmpty())
                        .orElse(List.of(""));
        List<Order.Slot> slots = Order.of(theLevels, repeats, theSpecimens, seed, order.equals("random"));
        Set<String> taken = earlier.map(
                        e -> e.study().runs().stream().map(Run::id).collect(Collectors.toSet()))
                .orElse(Set.of());
        RunSheet sheet = new RunSheet(
                earlier.map(e -> e.study().question()).orElse(String.join(", ", theLevels)),
                earlier.map(Earlier::method),
                earlier.map(e -> e.study().factor()).orElse("level"),
                RunSheet.named(slots, taken),
                orderInWords(theSpecimens),
                earlier.map(Earlier::timeConstantS).orElse(java.util.OptionalDouble.empty()),
                earlier.map(Earlier::commonSettings).orElse(Map.of()));
        Map<Path, String> files = new LinkedHashMap<>();
        for (Path path : sheets) {
            files.put(path, text(path, sheet));
        }
        if (prepare) {
            Earlier known = earlier.orElseThrow(() -> new UnusableException("--prepare needs --from FOLDER"));
            files.putAll(PreparedRuns.files(sheet, known, item(theItem, known)));
        }
        save(files);
        if (prepare) {
            streams.out()
                    .println("The run files are blank where you have to write, and nothing reads them where they are."
                            + " Fill one in after its run, and move it from planned/ to runs/.");
        }
    }

    private static String item(Optional<String> item, Earlier known) {
        String id = item.orElseThrow(() -> new UnusableException("say what is tested with --item, one of: "
                + String.join(", ", known.folder().items().keySet())));
        if (!known.folder().items().containsKey(id)) {
            throw new UnusableException("there is no item “" + id + "”; "
                    + org.evenhand.read.NearMiss.suggestion(
                            id, known.folder().items().keySet()));
        }
        return id;
    }

    private String orderInWords(List<String> theSpecimens) {
        String blocks = "Blocks: each has every level once"
                + (theSpecimens.size() > 1 ? ", on one specimen; specimens take turns. " : ". ");
        return blocks
                + (order.equals("random")
                        ? "Within a block the order is random, from the seed " + seed
                                + ": the same seed gives the same order."
                        : "Every other block runs backwards.")
                + " Keep to the order, also when a run has to be repeated: repeat it at the end.";
    }

    private static String text(Path path, RunSheet sheet) {
        String name = path.toString();
        if (name.endsWith(".md")) {
            return SheetText.markdown(sheet);
        }
        if (name.endsWith(".html")) {
            return SheetText.html(sheet);
        }
        throw new UnusableException("--sheet writes .md or .html, not " + path);
    }

    private void save(Map<Path, String> files) {
        for (Path path : files.keySet()) {
            if (Files.exists(path)) {
                throw new UnusableException(path + " is there already, and nothing is written over");
            }
        }
        try {
            for (Map.Entry<Path, String> file : files.entrySet()) {
                Path parent = file.getKey().toAbsolutePath().getParent();
                Files.createDirectories(parent);
                Files.write(file.getKey(), file.getValue().getBytes(StandardCharsets.UTF_8));
                streams.out().println("wrote " + file.getKey().toString().replace('\\', '/'));
            }
        } catch (IOException e) {
            throw new UnusableException(
                    "cannot write; check that the folder may be written to, and that there is room");
        }
    }
}
