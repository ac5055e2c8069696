package org.evenhand.command.takein;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.evenhand.command.LimitOption;
import org.evenhand.command.Streams;
import org.evenhand.command.UnusableException;
import org.evenhand.log.LogOutcome;
import org.evenhand.model.Finding;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes runs of foreign logs. */
@Command(
        name = "take-in",
        mixinStandardHelpOptions = true,
        description = {
            "Looks at foreign logs, shows how they would be read, and writes a run file for each.",
            "The original is kept untouched; where it cannot be read as it is, a clean log is written beside it.",
            "Without --to it only looks."
        },
        footer = {
            "",
            "Example: evenhand take-in plate-A1.csv --to my-results --study plate --ambient \"21.4 ± 0.5 °C\" --yes",
            "Exit status: 0 written, or only looked; 1 a log lacks something that the method needs; 2 the call cannot"
                    + " be used."
        })
public final class TakeInCommand implements Callable<Integer> {

    private final Streams streams;

    @Parameters(paramLabel = "LOG", arity = "1..*", description = "the logs, plain or .gz; each becomes one run")
    private List<Path> logs;

    @Option(names = "--to", paramLabel = "FOLDER", description = "the results folder")
    private Path to;

    @Option(names = "--study", paramLabel = "ID", description = "whose runs they are; not needed if there is one study")
    private String study;

    @Option(names = "--method", paramLabel = "ID", description = "by which they were done, if the study has several")
    private String method;

    @Option(
            names = "--run",
            paramLabel = "ID",
            description = "the name of the run, for one log; else the log's own name")
    private String run;

    @Option(names = "--item", paramLabel = "ID", description = "what was tested")
    private String item;

    @Option(names = "--specimen", paramLabel = "ID", description = "which example; else looked for in the log's name")
    private String specimen;

    @Option(
            names = "--setting",
            paramLabel = "NAME=VALUE",
            description = "a condition; may be repeated. The factor's level is also looked for in the log's name")
    private Map<String, String> settings = new LinkedHashMap<>();

    @Option(names = "--ambient", paramLabel = "QUANTITY", description = "the surroundings, as in \"21.4 ± 0.5 °C\"")
    private String ambient;

    @Option(names = "--instrument", paramLabel = "COLUMN=ID", description = "what measured a column; may be repeated")
    private Map<String, String> instruments = new LinkedHashMap<>();

    @Option(names = "--like", paramLabel = "RUN", description = "takes item, settings and instruments from this run")
    private String like;

    @Option(names = "--started", paramLabel = "TIME", description = "when it began, as in 2026-03-02T09:14:00Z")
    private String started;

    @Option(
            names = "--map",
            paramLabel = "COLUMN=HEADER",
            description = "which column of the log is meant, perhaps with its unit or bit: temperature=\"t_soc [m°C]\","
                    + " throttled=status:2; may be repeated")
    private Map<String, String> columns = new LinkedHashMap<>();

    @Option(names = "--separator", paramLabel = "CHAR", description = "between fields: , ; tab space or |")
    private String separator;

    @Option(names = "--decimal", paramLabel = "CHAR", description = "the decimal marker: . or ,")
    private String decimal;

    @Option(names = "--zone", paramLabel = "ZONE", description = "where its clock was, as in Europe/Paris or +01:00")
    private String zone;

    @Option(names = "--date", paramLabel = "DATE", description = "the first day, for times of day without a date")
    private String date;

    @Option(names = "--month-first", description = "reads 03/02/2026 as the second of March")
    private boolean monthFirst;

    @Option(names = "--step", paramLabel = "TIME", description = "the time between samples, if the log has no times")
    private String step;

    @Option(names = "--yes", description = "writes without asking")
    private boolean yes;

    @Mixin
    private LimitOption limit = new LimitOption();

    public TakeInCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        checkCall();
        if (to == null) {
            for (Path log : logs) {
                streams.out().print(ProposalText.of(Proposal.of(RawLog.read(log), Optional.empty(), said())));
            }
            streams.out()
                    .println("Nothing is written. Name the results folder with --to to see what would be made of it.");
            streams.out().flush();
            return 0;
        }
        Destination destination = Destination.of(to, study, method, limit.limits());
        List<RunDraft> drafts = new ArrayList<>();
        boolean usable = true;
        for (Path log : logs) {
            RunDraft draft = draft(log, destination);
            drafts.add(draft);
            streams.out().print(ProposalText.of(draft.proposal()));
            usable &= rehearsed(draft);
            show(draft);
        }
        streams.out().flush();
        if (!usable) {
            streams.err()
                    .println(
                            "evenhand: nothing is written; say with --map COLUMN=HEADER where the columns are, or, if it is a log of something"
                                    + " else, change “records” and “measurands” of the method");
            return 1;
        }
        refuseOverwriting(drafts);
        if (!yes && !isAgreed(drafts.size())) {
            return 0;
        }
        drafts.forEach(RunDraft::write);
        for (RunDraft draft : drafts) {
            draft.files()
                    .keySet()
                    .forEach(f -> streams.out().println("wrote " + f.toString().replace('\\', '/')));
        }
        streams.out().println("Next: evenhand check " + to);
        streams.out().flush();
        return 0;
    }

    private void checkCall() {
        if (run != null && logs.size() > 1) {
            throw new UnusableException("--run names one run, but there are " + logs.size() + " logs; leave it out");
        }
        if (started != null && logs.size() > 1) {
            throw new UnusableException("--started is the start of one run, but there are " + logs.size()
                    + " logs; take them in one by one");
        }
        if (run != null && !run.matches("[a-z0-9][a-z0-9.-]{0,63}")) {
            throw new UnusableException(
                    "“" + run + "” cannot be the name of a run; write small letters, digits, hyphens");
        }
        if (separator != null && !List.of(",", ";", "tab", "space", "|").contains(separator)) {
            throw new UnusableException("--separator is one of: , ; tab space |");
        }
        if (decimal != null && !decimal.equals(".") && !decimal.equals(",")) {
            throw new UnusableException("--decimal is . or ,");
        }
        if (ambient != null) {
            quantity("--ambient", ambient, "°C");
        }
    }

    private static Quantity quantity(String option, String text, String unit) {
        try {
            return Quantity.parse(text, Unit.of(unit));
        } catch (MisreadException e) {
            throw new UnusableException(option + ": " + e.getMessage() + "; " + e.remedy());
        }
    }

    private Proposal.Said said() {
        Character between = separator == null
                ? null
                : switch (separator) {
                    case "tab" -> '\t';
                    case "space" -> ' ';
                    default -> separator.charAt(0);
                };
        try {
            Optional<BigDecimal> stepS = Optional.ofNullable(step)
                    .map(s -> quantity("--step", s, "s"))
                    .map(q -> BigDecimal.valueOf(q.in(Unit.of("s"))));
            if (stepS.isPresent() && stepS.get().signum() <= 0) {
                throw new UnusableException("--step must be longer than nothing");
            }
            TimeColumn.Said time = new TimeColumn.Said(
                    Optional.ofNullable(zone).map(ZoneId::of),
                    Optional.ofNullable(date).map(LocalDate::parse),
                    monthFirst ? Boolean.TRUE : null,
                    stepS);
            return new Proposal.Said(between, decimal == null ? null : decimal.charAt(0), time, columns);
        } catch (DateTimeException e) {
            throw new UnusableException("--zone is written as Europe/Paris or +01:00, --date as 2026-03-02; “"
                    + (zone == null ? date : zone) + "” cannot be read");
        }
    }

    private RunDraft draft(Path log, Destination destination) {
        Proposal proposal = Proposal.of(RawLog.read(log), Optional.of(destination.method()), said());
        String name = log.getFileName().toString();
        Conditions.Said said = new Conditions.Said(item, specimen, settings, ambient, instruments, like);
        Optional<OffsetDateTime> at = Optional.ofNullable(started)
                .map(TakeInCommand::time)
                .or(() -> proposal.time().started());
        return new RunDraft(
                run == null ? runId(name) : run,
                log,
                proposal,
                Conditions.of(said, destination, name),
                at,
                destination);
    }

    private static OffsetDateTime time(String text) {
        try {
            return OffsetDateTime.parse(text);
        } catch (DateTimeException e) {
            throw new UnusableException(
                    "--started is written with its offset from UTC, as in 2026-03-02T09:14:00Z; “" + text + "” is not");
        }
    }

    private static String runId(String fileName) {
        int dot = fileName.indexOf('.');
        String id = (dot > 0 ? fileName.substring(0, dot) : fileName)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        if (id.isEmpty()) {
            throw new UnusableException("the name " + fileName + " makes no name of a run; give one with --run");
        }
        return id.length() > 64 ? id.substring(0, 64) : id;
    }

    /** Whether the log reader can make something of it; says what it finds. */
    private boolean rehearsed(RunDraft draft) {
        LogOutcome outcome = draft.rehearse();
        for (Finding finding : outcome.findings()) {
            String where =
                    finding.place().line() > 0 ? ", line " + finding.place().line() : "";
            streams.out()
                    .println("  " + (outcome.usable() ? "will be found by check" : "stands in the way") + where + ": ["
                            + finding.rule() + "] " + finding.message() + "; " + finding.remedy());
        }
        return outcome.usable();
    }

    private void show(RunDraft draft) {
        Conditions conditions = draft.conditions();
        if (!conditions.guessed().isEmpty()) {
            streams.out().println("  read out of the file's name: " + String.join(", ", conditions.guessed()));
        }
        List<String> unknown = conditions.unknown(draft.to(), draft.started().isPresent());
        if (!unknown.isEmpty()) {
            streams.out().println("  the log cannot tell:");
            unknown.forEach(u -> streams.out().println("    - " + u));
        }
        streams.out().println();
    }

    private void refuseOverwriting(List<RunDraft> drafts) {
        Set<Path> taken = new LinkedHashSet<>();
        for (RunDraft draft : drafts) {
            for (Path file : draft.files().keySet()) {
                if (Files.exists(file) || !taken.add(file)) {
                    throw new UnusableException(
                            (Files.exists(file) ? file + " is there already" : file + " would be written twice")
                                    + ", and nothing is written over; name the run with --run");
                }
            }
            for (String ending : List.of(".yaml", ".yml")) {
                if (Files.exists(draft.to().of("runs/" + draft.id() + ending))) {
                    throw new UnusableException(
                            "there is a run “" + draft.id() + "” already; name this one with --run");
                }
            }
        }
    }

    private boolean isAgreed(int runs) {
        String what = runs == 1 ? "this run" : "these " + runs + " runs";
        if (System.console() == null) {
            throw new UnusableException("nothing is written; --yes writes " + what + " as shown");
        }
        streams.err().print("Write " + what + "? [y/N] ");
        streams.err().flush();
        String answer = System.console().readLine();
        boolean agreed =
                answer != null && answer.strip().toLowerCase(Locale.ROOT).startsWith("y");
        if (!agreed) {
            streams.err().println("Nothing is written.");
        }
        return agreed;
    }
}
