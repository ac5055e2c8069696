package org.evenhand.page;

import java.util.List;
import java.util.stream.IntStream;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Caveat;
import org.evenhand.page.view.ComparisonRow;
import org.evenhand.page.view.ComparisonTable;
import org.evenhand.page.view.Entry;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.RunColumn;
import org.evenhand.page.view.RunRow;
import org.evenhand.page.view.RunTable;
import org.evenhand.page.view.RunValue;
import org.evenhand.page.view.SummaryRow;
import org.evenhand.page.view.SummaryTable;

/** Tables of the example's answer, with the awkward cases: a censored time, an absent value, a failed run. */
final class ExampleEvidence {
    static final String MINUS = "\u2212";
    static final String NB = "\u00a0";

    private ExampleEvidence() {}

    static final Caveat ONE_SPECIMEN = Caveat.of(
            "single-specimen",
            "Five runs of one specimen, A1: the figure speaks for A1, not for every Quillet" + NB + "3.",
            Link.here("single-specimen", Address.finding("single-specimen", 1)));
    static final Caveat CENSORED = Caveat.of(
            "censored",
            "No throttling within 45" + NB + "min in any run: a lower bound, not a time.",
            Link.here("censored", Address.finding("censored", 1)));

    static List<Link> runsOf(String level) {
        return IntStream.rangeClosed(1, 5)
                .mapToObj(i -> Link.to(level + "-" + i, Address.run("heat-spreader", level + "-" + i)))
                .toList();
    }

    static SummaryTable riseSummary() {
        return new SummaryTable(
                "summary.settled-rise",
                "Settled temperature rise above ambient",
                "K",
                "Mean of the runs; expanded uncertainty of repeats and instruments, Student t.",
                "95" + NB + "%",
                List.of(
                        rise("none", "51.4", "1.2", "50.2", "52.6", "0.41", "0.12", ONE_SPECIMEN),
                        rise("spreader", "32.1", "0.9", "31.2", "33.0", "0.32", "0.12", ONE_SPECIMEN),
                        rise("spreader and fan", "30.85", "0.75", "30.10", "31.60", "0.24", "0.12")));
    }

    static SummaryRow rise(
            String level,
            String mean,
            String expanded,
            String low,
            String high,
            String typeA,
            String typeB,
            Caveat... caveats) {
        return new SummaryRow(
                Address.level(level, "settled-rise"),
                level,
                "5",
                "runs",
                mean,
                expanded,
                low,
                high,
                typeA,
                typeB,
                "",
                runsOf(Address.slug(level)),
                List.of(caveats));
    }

    static SummaryTable throttleSummary() {
        return new SummaryTable(
                "summary.time-to-throttle",
                "Time until the clock first drops",
                "min",
                "Median, Kaplan–Meier; no expanded uncertainty is given for a censored time.",
                "95" + NB + "%",
                List.of(
                        new SummaryRow(
                                Address.level("none", "time-to-throttle"),
                                "none",
                                "5",
                                "runs",
                                "11.2",
                                "",
                                "10.4",
                                "12.9",
                                "",
                                "",
                                "",
                                runsOf("none"),
                                List.of()),
                        new SummaryRow(
                                Address.level("spreader", "time-to-throttle"),
                                "spreader",
                                "5",
                                "runs",
                                "> 45",
                                "",
                                "",
                                "",
                                "",
                                "",
                                "stated",
                                runsOf("spreader"),
                                List.of(CENSORED))));
    }

    static ComparisonTable comparisons() {
        return new ComparisonTable(
                "95" + NB + "%",
                "“Differs” if the interval excludes no effect, after Holm over the study’s comparisons; “same” only on two one-sided tests within the stated margin.",
                List.of(
                        new ComparisonRow(
                                Address.comparison("spreader-rise"),
                                "Settled rise: spreader against none",
                                MINUS + "19.3",
                                "K",
                                MINUS + "20.5",
                                MINUS + "18.1",
                                "differs",
                                "Cooler with the spreader.",
                                "",
                                List.of(
                                        Entry.of("Degrees of freedom", "7.6"),
                                        Entry.of("p, after Holm", "< 0.0001"),
                                        Entry.of(
                                                "Budget",
                                                Link.here(
                                                        "uncertainty",
                                                        Address.budget(Address.comparison("spreader-rise"))))),
                                runsOf("none"),
                                List.of(ONE_SPECIMEN)),
                        new ComparisonRow(
                                Address.comparison("fan-rise"),
                                "Settled rise: spreader and fan against spreader",
                                MINUS + "1.25",
                                "K",
                                MINUS + "2.60",
                                "0.10",
                                "not-shown",
                                "The study could have shown 1.4 K.",
                                "",
                                List.of(),
                                runsOf("spreader"),
                                List.of()),
                        new ComparisonRow(
                                Address.comparison("spreader-energy"),
                                "Energy: spreader against none",
                                MINUS + "0.4",
                                "%",
                                MINUS + "1.1",
                                "0.3",
                                "same-within-margin",
                                "The same within 3 %.",
                                "energy without a spreader",
                                List.of(Entry.of("Margin", "3 %"), Entry.of("90 % interval", MINUS + "1.0 % to 0.2 %")),
                                runsOf("none"),
                                List.of()),
                        new ComparisonRow(
                                Address.comparison("fan-energy"),
                                "Energy: spreader and fan against none",
                                "",
                                "",
                                "",
                                "",
                                "not-comparable",
                                "Mains with DC input: two measurands.",
                                "",
                                List.of(),
                                List.of(),
                                List.of(Caveat.note("The fan had a supply of its own <b>not metered</b>.")))));
    }

    static RunTable runTable() {
        return new RunTable(
                List.of(new RunColumn("Settled rise", "K"), new RunColumn("Time to throttle", "min")),
                List.of(
                        runRow("none-1", "none", "completed", "51.9", "0.2", "11.2", ""),
                        runRow("none-2", "none", "completed", "50.25", "0.2", "10.4", ""),
                        runRow("spreader-1", "spreader", "completed", "32.4", "0.2", "> 45", "censored"),
                        runRow("spreader-2", "spreader", "failed", "", "", "", "")));
    }

    static RunRow runRow(String run, String level, String outcome, String rise, String u, String time, String mark) {
        return new RunRow(
                Address.run(run),
                Link.to(run, Address.run("heat-spreader", run)),
                level,
                "A1",
                "2026-03-02 09:14",
                outcome,
                List.of(
                        new RunValue(Address.value(run, "settled-rise"), rise, u, ""),
                        new RunValue(Address.value(run, "time-to-throttle"), time, "", mark)),
                outcome.equals("failed") ? List.of(Caveat.note("The supply tripped after 3 min.")) : List.of());
    }
}
