package org.evenhand.check.faults;

import static org.evenhand.check.faults.Sound.CLOCKS;
import static org.evenhand.check.faults.Sound.COUNTS;
import static org.evenhand.check.faults.Sound.ENCODE;
import static org.evenhand.check.faults.Sound.FAN;
import static org.evenhand.check.faults.Sound.SOAK;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** The faults that are planted, one at a time, and the rule that has to find each. */
final class Faults {

    private static final String STUDY = "studies/plate/study.md";
    private static final String RUN = "studies/plate/runs/none-1.json";
    private static final String RUNS = "studies/plate/runs/.*";
    private static final String LOG = "studies/plate/logs/none-1.csv";
    private static final String METHOD = "methods/soak.md";
    private static final String ITEM = "items/quillet-3.yaml";
    private static final String METER = "instruments/dc-meter-1.yaml";

    private static final int TEMPERATURE = 1;
    private static final int CLOCK = 2;
    private static final int POWER = 3;
    private static final int AMBIENT = 4;

    private Faults() {}

    /**
     * One fault.
     *
     * @param name what somebody did
     * @param rule that has to find it
     * @param kind of study it is planted in
     * @param plant does it
     */
    record Fault(String name, String rule, Sound kind, Consumer<TextFolder> plant) {
        @Override
        public String toString() {
            return name + " → " + rule;
        }
    }

    static List<Fault> all() {
        List<Fault> faults = new ArrayList<>();
        files(faults);
        units(faults);
        logs(faults);
        conditions(faults);
        records(faults);
        power(faults);
        repeats(faults);
        words(faults);
        others(faults);
        return faults;
    }

    private static void soak(List<Fault> faults, String name, String rule, Consumer<TextFolder> plant) {
        faults.add(new Fault(name, rule, SOAK, plant));
    }

    private static void files(List<Fault> f) {
        soak(
                f,
                "a run cut off in the middle of its file",
                "file-unreadable",
                t -> t.put(RUN, t.get(RUN).substring(0, 90)));
        soak(f, "a field misspelt", "field-unknown", t -> t.edit(ITEM, "obtained", "obtaned"));
        soak(f, "a field left out", "field-missing", t -> t.edit(ITEM, "^kind: .*\\n", ""));
        soak(f, "a field written twice", "field-duplicate", t -> t.edit(ITEM, "^kind: .*$", "$0\nkind: computer"));
        soak(f, "a date in words", "field-malformed", t -> t.edit(METER, "2026-01-15", "15 January"));
        soak(f, "an item renamed", "reference-unresolved", t -> t.edit(RUN, "\"quillet-3\"", "\"quillet-2\""));
        soak(
                f,
                "an instrument that nobody described",
                "reference-unresolved",
                t -> t.edit(RUN, "dc-meter-1", "dc-meter-9"));
        soak(
                f,
                "a level that the study does not have",
                "reference-unresolved",
                t -> t.edit(RUN, "\"none\"", "\"nothing\""));
        soak(
                f,
                "an item described twice",
                "id-collision",
                t -> t.put("items/quillet-3.json", "{\"item\": \"quillet-3\", \"name\": \"x\", \"kind\": \"y\"}"));
        soak(
                f,
                "a log outside the folder",
                "path-outside",
                t -> t.edit(RUN, "\\.\\./logs/none-1", "../../../../none-1"));
        soak(
                f,
                "script in the answer",
                "content-active",
                t -> t.edit(STUDY, "The plate was", "<script>alert(1)</script> The plate was"));
        soak(
                f,
                "a home folder in a note",
                "personal-data",
                t -> t.edit(RUN, "\"specimen\"", "\"notes\": \"copied from /home/jane/logs\", \"specimen\""));
        soak(
                f,
                "a sign that turns the text round",
                "text-deceptive",
                t -> t.edit(ITEM, "Quillet 3 encoder", "Quillet \u202e3 encoder"));
        soak(
                f,
                "lists sixty deep",
                "size-limit",
                t -> t.edit(ITEM, "^obtained.*$", "notes: " + "[".repeat(60) + "]".repeat(60)));
    }

    private static void units(List<Fault> f) {
        soak(f, "a bare number", "unit-missing", t -> t.edit(RUN, "45 min", "45"));
        soak(f, "a unit swapped", "unit-dimension", t -> t.edit(LOG, "power \\[W\\]", "power [V]"));
        soak(f, "capitals lost", "unit-unknown", t -> t.edit(METER, "1 mW", "1 mw"));
        soak(
                f,
                "a thousands separator",
                "number-ambiguous",
                t -> t.edit(METER, "resolution: 1 mW", "resolution: 1,000 µW"));
        soak(
                f,
                "a difference in °F",
                "difference-as-point",
                t -> t.edit(METHOD, "settled-below: 1 K", "settled-below: 2 °F"));
        soak(f, "a unit left off a column", "unit-missing", t -> t.edit(LOG, "power \\[W\\]", "power"));
        soak(
                f,
                "milli lost from a temperature",
                "implausible",
                t -> t.rows(LOG, r -> with(r, TEMPERATURE, number(r, TEMPERATURE) * 1000)));
    }

    private static void logs(List<Fault> f) {
        soak(
                f,
                "a column left out",
                "field-missing",
                t -> t.edit(LOG, ",clock \\[MHz\\]", "").rows(LOG, r -> new String[] {r[0], r[1], r[3], r[4]}));
        soak(
                f,
                "a log that stops half-way",
                "length-short-of-log",
                t -> t.rows(LOG, r -> number(r, 0) > 1400 ? null : r));
        soak(
                f,
                "a gap of eight minutes",
                "log-gaps",
                t -> t.rows(LOG, r -> number(r, 0) > 900 && number(r, 0) < 1380 ? null : r));
        soak(f, "a repeated stamp", "log-time-broken", t -> t.edit(LOG, "^600,", "540,"));
        soak(f, "a stamp that runs backwards", "log-time-broken", t -> t.edit(LOG, "^600,", "60,"));
        soak(
                f,
                "a word among the numbers",
                "number-ambiguous",
                t -> t.rows(LOG, r -> number(r, 0) == 600 ? with(r, POWER, "n/a") : r));
        soak(
                f,
                "not a number",
                "number-ambiguous",
                t -> t.rows(LOG, r -> number(r, 0) == 600 ? with(r, POWER, "NaN") : r));
        soak(
                f,
                "a log of a header alone",
                "file-unreadable",
                t -> t.put(LOG, t.get(LOG).lines().findFirst().orElseThrow() + "\n"));
        soak(
                f,
                "the same log under two runs",
                "data-duplicated",
                t -> t.put(LOG, t.get("studies/plate/logs/none-2.csv")));
        soak(
                f,
                "a sensor that stands still while the load changes",
                "sensor-stuck",
                t -> t.rows(
                        LOG,
                        r -> number(r, 0) > 1200
                                ? with(with(r, TEMPERATURE, "60.0"), POWER, number(r, 0) > 1950 ? "9.000" : "3.000")
                                : r));
        soak(f, "throttling too early for the steps of the log", "log-too-coarse", t -> {
            t.edit(STUDY, "mean-power\\]", "mean-power, time-to-throttle]");
            t.rows(LOG, r -> number(r, 0) >= 120 ? with(r, CLOCK, 1200) : r);
        });
    }

    private static void conditions(List<Fault> f) {
        soak(f, "no ambient temperature", "ambient-missing", t -> {
            t.edit(RUN, " *\"ambient\": \"2.*\\n", "").edit(RUN, "\"ambient\": \"ambient-probe\", ", "");
            t.edit(METHOD, ", ambient: °C", "")
                    .edit(METHOD, " *minus: ambient\\n", "")
                    .edit(METHOD, "unit: K", "unit: °C");
            t.edit(STUDY, "plate-rise", "plate-temperature");
            t.matching("studies/plate/logs/.*")
                    .forEach(l ->
                            t.edit(l, ",ambient \\[°C\\]", "").rows(l, r -> new String[] {r[0], r[1], r[2], r[3]}));
        });
        soak(f, "the room five degrees warmer for one run", "ambient-spread", t -> warmer(t, LOG, 5));
        soak(
                f,
                "all runs in a hot room",
                "ambient-range",
                t -> t.matching("studies/plate/logs/.*").forEach(l -> warmer(t, l, 12)));
        soak(
                f,
                "a room that warms during the run",
                "ambient-drift",
                t -> t.rows(LOG, r -> with(r, AMBIENT, number(r, AMBIENT) + number(r, 0) / 2700 * 4)));
        soak(
                f,
                "started hot",
                "warm-start",
                t -> t.rows(
                        LOG, r -> with(r, TEMPERATURE, number(r, TEMPERATURE) + 35 * Math.exp(-number(r, 0) / 380))));
        soak(
                f,
                "cold starts against a warm one",
                "start-spread",
                t -> t.rows(
                        LOG, r -> with(r, TEMPERATURE, number(r, TEMPERATURE) + 35 * Math.exp(-number(r, 0) / 380))));
        soak(
                f,
                "still heating at the end",
                "not-settled",
                t -> t.rows(LOG, r -> with(r, TEMPERATURE, 22 + number(r, 0) * 0.02)));
        soak(f, "throttled for a while", "throttled", Faults::throttle);
        soak(f, "a rise that throttling set", "rise-misused", Faults::throttle);
        soak(
                f,
                "a rise where a fan answers to the heat",
                "rise-misused",
                t -> t.edit(METHOD, "cooling: fixed", "cooling: controlled"));
        soak(f, "another firmware for one run", "several-things-changed", t -> t.edit(RUN, "2026-02-11", "2026-03-30"));
        soak(
                f,
                "a setting told for some runs only",
                "several-things-changed",
                t -> t.editAll(
                        "studies/plate/runs/plate-.*", "\"firmware\": \"[^\"]*\"", "\"firmware\": \"2026-04-01\""));
        soak(
                f,
                "colder than the room under load",
                "implausible",
                t -> t.rows(LOG, r -> with(r, TEMPERATURE, number(r, AMBIENT) - 8)));
        soak(f, "negative power", "implausible", t -> t.rows(LOG, r -> with(r, POWER, -number(r, POWER))));
    }

    private static void records(List<Fault> f) {
        soak(f, "no specimen named", "item-unidentified", t -> t.edit(RUN, " *\"specimen\".*\\n", ""));
        soak(
                f,
                "one run under an older method",
                "method-changed",
                t -> t.edit(RUN, "\"method\": \"soak\"", "\"method\": \"soak\", \"method-version\": \"0\""));
        soak(f, "answered before it was tested", "dates-out-of-order", t -> t.edit(STUDY, "2026-03-20", "2026-03-01"));
        soak(f, "calibrated after the run", "dates-out-of-order", t -> t.edit(METER, "2026-01-15", "2026-06-15"));
        soak(f, "a shorter run, undeclared", "deviation-undeclared", Faults::shorter);
        soak(f, "a shorter run, declared", "length-spread", t -> {
            shorter(t);
            t.edit(RUN, "\"log\"", "\"deviations\": [{\"from\": \"run-length\", \"why\": \"A fuse blew.\"}], \"log\"");
        });
        soak(f, "a run lost", "planned-missing", t -> t.remove(RUN));
        soak(
                f,
                "two of three runs left out",
                "run-excluded",
                t -> List.of("1", "2")
                        .forEach(i -> t.edit(
                                "studies/plate/runs/none-" + i + ".json",
                                "\"log\"",
                                "\"outcome\": \"excluded\", \"why\": \"It looked odd.\", \"log\"")));
        soak(
                f,
                "a run left out without a reason",
                "field-missing",
                t -> t.edit(RUN, "\"log\"", "\"outcome\": \"excluded\", \"log\""));
        soak(
                f,
                "a mean that does not recompute",
                "summary-without-runs",
                t -> t.edit(
                        STUDY, "^answered", "stated: [{ level: none, measurand: mean-power, mean: 7.4 W }]\nanswered"));
        soak(f, "nobody says how the item was come by", "interest-undeclared", t -> t.edit(ITEM, "^obtained.*\\n", ""));
        soak(f, "one specimen for all", "single-specimen", t -> t.editAll(RUNS, "\"A\\d\"", "\"A1\""));
        soak(f, "a calibration that has lapsed", "calibration-overdue", t -> t.edit(METER, "2026-01-15", "2024-01-15"));
        soak(f, "no hazard where parts get hot", "hazard-undeclared", t -> t.edit(METHOD, "^hazards.*\\n", ""));
    }

    private static void power(List<Fault> f) {
        soak(f, "mains against DC input", "boundary-mixed", t -> {
            t.put(
                    "instruments/mains-meter.yaml",
                    t.get(METER).replace("dc-meter-1", "mains-meter").replace("dc-input", "mains"));
            t.editAll("studies/plate/runs/plate-.*", "dc-meter-1", "mains-meter");
            t.edit(METHOD, "hazards: \\[", "hazards: [mains, ");
            t.edit(
                    STUDY,
                    "^  plate-rise.*$",
                    "$0\n  plate-power: { as: ratio, measurand: mean-power, level: plate, against: none }");
        });
        soak(f, "a coarse meter", "meter-uncertain", t -> t.edit(METER, "0.5 %", "8 %"));
        soak(
                f,
                "a supply that is too small",
                "supply-exceeded",
                t -> t.edit(ITEM, "supply-current: 3 A", "supply-current: 0.3 A"));
        soak(
                f,
                "a load that drifts away",
                "power-unsteady",
                t -> t.rows(LOG, r -> with(r, POWER, 4 + number(r, 0) / 2700 * 4)));
        soak(f, "a clock below the one asked for", "setting-not-reached", t -> t.rows(LOG, r -> with(r, CLOCK, 1730)));
        soak(
                f,
                "a raised clock that nobody mentions",
                "raised-clock-unlabelled",
                t -> t.rows(LOG, r -> with(r, CLOCK, 2000)));
    }

    private static void repeats(List<Fault> f) {
        soak(f, "all of one, then all of the other", "order-confounded", t -> {
            for (int i = 1; i <= 3; i++) {
                t.edit("studies/plate/runs/none-" + i + ".json", "2026-03-\\d\\dT\\d\\d", "2026-03-02T1" + i);
                t.edit("studies/plate/runs/plate-" + i + ".json", "2026-03-\\d\\dT\\d\\d", "2026-03-03T1" + i);
            }
        });
        soak(f, "a single run on one side", "single-run", t -> {
            t.remove("studies/plate/runs/none-2.json");
            t.remove("studies/plate/runs/none-3.json");
        });
        soak(
                f,
                "an event that was never reached",
                "censored",
                t -> t.edit(STUDY, "mean-power\\]", "mean-power, time-to-throttle]"));
    }

    private static void words(List<Fault> f) {
        words(f, "a number altered", "number-mismatch", "It runs [99 K cooler](evidence:plate-rise).");
        words(f, "a unit altered", "number-mismatch", "It draws [6.3 kW](evidence:level/none/mean-power).");
        words(
                f,
                "a direction turned round",
                "difference-not-shown",
                "With the plate it runs [hotter](evidence:plate-rise).");
        words(f, "sameness claimed", "sameness-not-shown", "There is [no difference](evidence:plate-rise).");
        words(f, "a number with nothing behind it", "number-unlinked", "It reached 68 °C in the end.");
        words(f, "a percentage of nothing", "percent-without-base", "The plate is 18 % better.");
        words(f, "certainty without a bound", "stability-overclaimed", "With the plate it is stable.");
        words(f, "all of them", "scope-overclaimed", "All specimens of this encoder need the plate.");
        words(f, "a link that leads nowhere", "reference-unresolved", "It runs [](evidence:plate-ryse).");
        words(f, "another climate", "ambient-extrapolated", "In an attic at 40 °C outside air it does as well.");
    }

    private static void words(List<Fault> faults, String name, String rule, String sentence) {
        soak(faults, name, rule, t -> t.edit(STUDY, "The plate was tried against none\\.", sentence));
    }

    private static void others(List<Fault> f) {
        String fan = "studies/fan/runs/full-1.json";
        f.add(new Fault(
                "no background reading", "background-missing", FAN, t -> t.edit(fan, " *\"background\": .*\\n", "")));
        f.add(new Fault(
                "a background too near",
                "background-near",
                FAN,
                t -> t.edit(fan, "\"background\": \"\\d+\\.\\d", "\"background\": \"41.5")));
        f.add(new Fault(
                "two distances",
                "level-kind-mixed",
                FAN,
                t -> t.editAll("studies/fan/runs/full-.*", "1\\.00 m", "0.30 m")));
        f.add(new Fault(
                "a judgement by ear",
                "heard-not-measured",
                FAN,
                t -> t.edit("studies/fan/study.md", "\\[level\\]", "[level, heard]")));
        f.add(new Fault(
                "a clock never tried",
                "extrapolated",
                CLOCKS,
                t -> t.edit(
                        "studies/clock/study.md",
                        "Three clocks were tried in turn\\.",
                        "At 2.4 GHz it is faster still.")));
        f.add(new Fault("three of three as certainty", "rate-without-interval", COUNTS, t -> {
            t.editAll("studies/watch/runs/.*", "\"holds\": \"(yes|no)\"", "\"holds\" : \"yes\"");
            t.edit(
                    "studies/watch/study.md",
                    "Three were watched for a night each\\.",
                    "It was held by [100 % of those tested](evidence:share).");
        }));
        f.add(new Fault(
                "repeats of one specimen",
                "repeats-at-lowest-level",
                ENCODE,
                t -> t.editAll("studies/firmware/runs/.*", "\"A\\d\"", "\"A1\"")));
        f.add(new Fault(
                "a margin in the wrong unit",
                "unit-dimension",
                ENCODE,
                t -> t.edit("studies/firmware/study.md", "against: old \\}", "against: old, same-within: 2 s }")));
        f.add(new Fault(
                "a firmware without runs",
                "planned-missing",
                ENCODE,
                t -> t.edit("studies/firmware/study.md", "\\[old, new\\]", "[old, new, newest]")));
    }

    private static void throttle(TextFolder t) {
        t.rows(LOG, r -> number(r, 0) > 1200 && number(r, 0) < 2000 ? with(r, CLOCK, 1200) : r);
    }

    private static void shorter(TextFolder t) {
        t.edit(RUN, "45 min", "30 min").rows(LOG, r -> number(r, 0) > 1800 ? null : r);
    }

    private static void warmer(TextFolder t, String log, double byK) {
        t.rows(log, r -> with(with(r, TEMPERATURE, number(r, TEMPERATURE) + byK), AMBIENT, number(r, AMBIENT) + byK));
    }

    private static double number(String[] row, int column) {
        return Double.parseDouble(row[column]);
    }

    private static String[] with(String[] row, int column, double value) {
        return with(row, column, Sound.text(value, 3));
    }

    private static String[] with(String[] row, int column, String value) {
        String[] changed = row.clone();
        changed[column] = value;
        return changed;
    }
}
