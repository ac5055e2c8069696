package org.evenhand.check.faults;

import static org.evenhand.check.faults.Sound.CLOCKS;
import static org.evenhand.check.faults.Sound.COUNTS;
import static org.evenhand.check.faults.Sound.ENCODE;
import static org.evenhand.check.faults.Sound.FAN;
import static org.evenhand.check.faults.Sound.SOAK;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.evenhand.check.faults.Faults.Fault;

/** Faults in what somebody writes: files, units, sentences; and in the studies without logs. */
final class WrittenFaults {

    private static final String STUDY = "studies/plate/study.md";
    private static final String RUN = "studies/plate/runs/none-1.json";
    private static final String LOG = "studies/plate/logs/none-1.csv";
    private static final String METHOD = "methods/soak.md";
    private static final String ITEM = "items/quillet-3.yaml";
    private static final String METER = "instruments/dc-meter-1.yaml";

    private static final int TEMPERATURE = 1;

    private WrittenFaults() {}

    static List<Fault> all() {
        List<Fault> faults = new ArrayList<>();
        files(faults);
        units(faults);
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

    private static void words(List<Fault> faults, String name, String rule, String sentence) {
        soak(faults, name, rule, t -> t.edit(STUDY, "The plate was tried against none\\.", sentence));
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
