package org.evenhand.check.faults;

import static org.evenhand.check.faults.Sound.SOAK;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.evenhand.check.faults.Faults.Fault;

/** Faults in what somebody measures: logs, conditions, records, power, repeats. */
final class MeasuredFaults {

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

    private MeasuredFaults() {}

    static List<Fault> all() {
        List<Fault> faults = new ArrayList<>();
        logs(faults);
        conditions(faults);
        records(faults);
        power(faults);
        repeats(faults);
        return faults;
    }

    private static void soak(List<Fault> faults, String name, String rule, Consumer<TextFolder> plant) {
        faults.add(new Fault(name, rule, SOAK, plant));
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
        soak(f, "throttled for a while", "throttled", MeasuredFaults::throttle);
        soak(f, "a rise that throttling set", "rise-misused", MeasuredFaults::throttle);
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
        soak(f, "a shorter run, undeclared", "deviation-undeclared", MeasuredFaults::shorter);
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
