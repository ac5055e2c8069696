package org.evenhand.page;

import static org.evenhand.page.ExampleEvidence.*;
import static org.evenhand.page.ExampleViews.frame;
import static org.evenhand.page.ExampleViews.spreaderRise;

import java.util.List;
import java.util.Optional;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.AnswerPage;
import org.evenhand.page.view.Budget;
import org.evenhand.page.view.BudgetRow;
import org.evenhand.page.view.Caution;
import org.evenhand.page.view.ChartFigure;
import org.evenhand.page.view.Comparability;
import org.evenhand.page.view.ComparisonTable;
import org.evenhand.page.view.Condition;
import org.evenhand.page.view.Entry;
import org.evenhand.page.view.Figure;
import org.evenhand.page.view.FileRow;
import org.evenhand.page.view.Finding;
import org.evenhand.page.view.HeadBlock;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Markup;
import org.evenhand.page.view.Notice;
import org.evenhand.page.view.Picture;
import org.evenhand.page.view.Quotation;
import org.evenhand.page.view.Refusal;
import org.evenhand.page.view.Reproduction;
import org.evenhand.page.view.Revision;
import org.evenhand.page.view.RunTable;
import org.evenhand.page.view.Setting;
import org.evenhand.page.view.Snippet;
import org.evenhand.page.view.TableFiles;

/** The example's answer, and one that is still wanted. */
final class ExampleAnswer {

    private ExampleAnswer() {}

    static AnswerPage answer() {
        String path = Address.answer("heat-spreader");
        return new AnswerPage(
                frame(path, "Does the sealed relay box need a heat spreader?", Link.to("Questions", Address.INDEX)),
                new HeadBlock(
                        "Test report",
                        "heat-spreader",
                        "2",
                        "final",
                        List.of(
                                Entry.of("Tested", "2026-03-02 to 2026-03-11"),
                                Entry.of("Answered", "2026-03-20"),
                                new Entry("Amended", List.of(Link.here("2026-04-02", Address.revision(1))), ""),
                                new Entry(
                                        "Test item",
                                        List.of(Link.to("Quillet 3 encoder", Address.item("quillet-3"))),
                                        "Specimen A1, bought"),
                                new Entry(
                                        "Test method",
                                        List.of(Link.to(
                                                "Thermal soak under full load", Address.method("thermal-soak"))),
                                        "Version 2, 45 min"),
                                new Entry(
                                        "Instruments",
                                        List.of(
                                                Link.to("DC meter 1", Address.instrument("dc-meter-1")),
                                                Link.plain("Die sensor")),
                                        ""),
                                Entry.of("Factor", "cooling: none, spreader, spreader and fan"),
                                Entry.of("Publisher", "Fernhollow Community Radio"))),
                "Does the sealed relay box need a heat spreader?",
                List.of(),
                new Markup("Yes. Without one it throttles within <a href=\"#level.none.time-to-throttle\">11.2 min</a>;"
                        + " with one it is <a href=\"#comparison.spreader-rise\">19.3 K cooler</a> and ran 45 min"
                        + " without throttling. A fan adds less than the study could show."),
                List.of(
                        spreaderRise(ONE_SPECIMEN),
                        new Figure(
                                "Time until the clock first drops, spreader",
                                "> 45" + NB + "min",
                                "no interval: no event was seen",
                                "n = 5 runs, 1 specimen",
                                "",
                                Optional.of(Link.here("evidence", Address.level("spreader", "time-to-throttle"))),
                                List.of(CENSORED))),
                List.of(new ChartFigure(
                        Address.chart("settled-rise"),
                        "Settled temperature rise above ambient, by cooling",
                        ExampleChart.dots(),
                        "A dot is a run; the line across is the mean, its bar the 95" + NB + "% interval.",
                        Optional.of(Link.to("Figures as CSV", "answers/heat-spreader/runs.csv")),
                        List.of(Link.to("SVG", "answers/heat-spreader/charts/settled-rise.svg")),
                        List.of(ONE_SPECIMEN))),
                List.of(riseSummary(), throttleSummary()),
                comparisons(),
                runTable(),
                new Comparability(
                        List.of(
                                new Setting("clock", "1800 MHz", "held"),
                                new Setting("enclosure", "sealed", "held"),
                                new Setting("firmware", "2026-02-11", "held")),
                        List.of(
                                new Setting("cooling", "none; spreader; spreader and fan", "factor"),
                                new Setting("ambient", "20.9 °C to 22.4 °C", "within 2 K, the tool's default")),
                        List.of(new Refusal(
                                Address.comparison("none-absolute"),
                                "Die temperature: spreader and fan against none",
                                "The fan's runs were at 25.1 °C, the others at 21.5 °C: a spread of 3.6 K, more than 2 K. The rise above ambient remains comparable.",
                                Optional.of(Link.here("ambient-spread", Address.finding("ambient-spread", 1)))))),
                List.of(new Budget(
                        Address.budget(Address.comparison("spreader-rise")),
                        "Settled rise: spreader against none",
                        "K",
                        List.of(
                                new BudgetRow("Repeats, none", "A", "Student t", "0.41", "4", "62 %", ""),
                                new BudgetRow("Repeats, spreader", "A", "Student t", "0.32", "4", "37 %", ""),
                                new BudgetRow(
                                        "Die sensor, gain",
                                        "B",
                                        "rectangular",
                                        "0.045",
                                        "∞",
                                        "1 %",
                                        "scales with the difference"),
                                new BudgetRow(
                                        "Die sensor, offset",
                                        "B",
                                        "rectangular",
                                        "0",
                                        "∞",
                                        "0 %",
                                        "common to both sides: cancels")),
                        "0.52",
                        "7.6",
                        "2.33",
                        "1.2")),
                List.of(
                        new Condition("Ambient", "23 ± 5 °C", "20.9 °C to 22.4 °C", "held"),
                        new Condition("Run length", "45 min", "45.0 min to 45.1 min", "held"),
                        new Condition("Orientation", "", "upright", "held"),
                        new Condition("Altitude", "", "not stated", "not recorded")),
                List.of(new Caution(
                        "Hot surface",
                        "The lid reaches 70 °C within ten minutes; let it rest for half an hour before touching it.")),
                List.of(
                        new Entry(
                                "Settled temperature rise above ambient",
                                List.of(
                                        Link.plain(
                                                "Mean over the last 5 min, provided that the fitted drift within it is below 1 K. Difference: Welch, fractional degrees of freedom.")),
                                ""),
                        new Entry(
                                "Time until the clock first drops",
                                List.of(
                                        Link.plain(
                                                "First sample below 0.95 of the set clock for 2 s; right-censored at the end of the run; Kaplan–Meier, interval log-log.")),
                                "")),
                new Markup(
                        "<h3>What we did</h3><p>The relay box was closed and left to rest over night; the load began at"
                                + " the rested temperature. See <a href=\"https://results.example.org/notes\">our notes</a>.</p>"
                                + "<h3>What it means for the hill</h3><p>A spreader is enough. The fan is one more thing that can"
                                + " fail where nobody can reach it.</p>"),
                "E. Marlow, Fernhollow Community Radio",
                List.of(
                        "Ambient temperatures above 23 °C were not tested.",
                        "A second specimen was planned and is still missing."),
                findings(),
                List.of(new Revision(
                        Address.revision(1),
                        "2026-04-02",
                        "Two runs added at each level.",
                        "Only three runs per level before.",
                        "The interval narrowed; the answer stands.")),
                new Reproduction(
                        "evenhand publish . --to site-out",
                        "Evenhand 0.1.0",
                        List.of(
                                new FileRow(
                                        Link.to("runs/none-1.json", "runs/heat-spreader/none-1/none-1.json"),
                                        "Run",
                                        "1.1" + NB + "kB",
                                        "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08"),
                                new FileRow(
                                        Link.to("logs/none-1.csv", "runs/heat-spreader/none-1/none-1.csv"),
                                        "Log, 2700 samples",
                                        "88" + NB + "kB",
                                        "60303ae22b998861bce3b28f33eec1be758a213c86c93c076dbe9f558c11c752")),
                        List.of()),
                List.of(new Snippet(
                        "cite.plain",
                        "Plain citation",
                        "Fernhollow Community Radio (2026). Does the sealed relay box need a heat spreader? Version 2, 2026-04-02. https://results.example.org/relay/answers/heat-spreader/",
                        Optional.empty())),
                List.of(
                        new FileRow(
                                Link.to("evidence.json", "answers/heat-spreader/evidence.json"),
                                "All evidence",
                                "6.2" + NB + "kB",
                                ""),
                        new FileRow(
                                Link.to("runs.csv", "answers/heat-spreader/runs.csv"),
                                "Values of every run",
                                "0.9" + NB + "kB",
                                "")),
                List.of(new Quotation(
                        "quote.spreader-rise",
                        "Settled rise: spreader against none",
                        Optional.of(Link.here("evidence", Address.comparison("spreader-rise"))),
                        List.of(new Snippet(
                                "quote.spreader-rise.text",
                                "Plain text",
                                "Quillet 3 in a sealed box, spreader against none: settled rise −19.3 K (95 % interval −20.5 K to −18.1 K; n = 5 and 5 runs of one specimen).\n"
                                        + "Caveat: speaks for specimen A1 only.\n"
                                        + "https://results.example.org/relay/answers/heat-spreader/#comparison.spreader-rise",
                                Optional.empty())),
                        Optional.of(new Picture(
                                "answers/heat-spreader/quotes/comparison.spreader-rise.png",
                                1248,
                                640,
                                "Settled rise, spreader against none: −19.3 K",
                                "")))),
                List.of(),
                List.of(new TableFiles(
                        "comparisons", List.of(Link.to("CSV", "answers/heat-spreader/tables/comparisons.csv")))));
    }

    static List<Finding> findings() {
        return List.of(
                new Finding(
                        Address.finding("ambient-spread", 1),
                        Link.to("ambient-spread", Address.CAVEATS + "#" + Address.caveatGroup("single-specimen")),
                        "refuse",
                        "found",
                        "studies/heat-spreader/runs/fan-1.json:11:14",
                        "Ambient temperatures of the two sides are 3.6 K apart; the limit is 2 K.",
                        "common practice, no published source; the tool's default",
                        "Compare the rise above ambient, or repeat at one ambient temperature.",
                        ""),
                new Finding(
                        Address.finding("single-specimen", 1),
                        Link.to("single-specimen", Address.CAVEATS + "#" + Address.caveatGroup("single-specimen")),
                        "caveat",
                        "found",
                        "studies/heat-spreader/study.md:1:1",
                        "One specimen speaks for its kind.",
                        "after ISO/IEC 17025:2017, 7.8.2.1 l",
                        "Test another specimen.",
                        ""),
                new Finding(
                        Address.finding("censored", 1),
                        Link.plain("censored"),
                        "caveat",
                        "found",
                        "",
                        "The event did not happen within the run length of 45 min.",
                        "",
                        "",
                        ""),
                new Finding(
                        Address.finding("order-confounded", 1),
                        Link.plain("order-confounded"),
                        "caveat",
                        "waived",
                        "studies/heat-spreader/study.md:24:5",
                        "All runs of one level came before all of the next.",
                        "after Mytkowicz et al. 2009",
                        "",
                        "E. Marlow, 2026-03-19: the spreader is glued on and cannot be taken off again."),
                new Finding(
                        Address.finding("log-gaps", 1),
                        Link.plain("log-gaps"),
                        "note",
                        "not-checkable",
                        "",
                        "The sampling interval is not stated (field \"sampling\").",
                        "",
                        "",
                        ""));
    }

    /** A question still wanted: every list empty, every optional text absent. */
    static AnswerPage bareAnswer() {
        return new AnswerPage(
                frame(
                        Address.answer("raised-clock"),
                        "How much faster is the raised clock?",
                        Link.to("Questions", Address.INDEX)),
                new HeadBlock("Test report", "raised-clock", "", "wanted", List.of()),
                "How much faster is the raised clock?",
                List.of(new Notice("Wanted", "Nobody has run this yet.", List.of())),
                Markup.NONE,
                List.of(),
                List.of(),
                List.of(),
                new ComparisonTable("95 %", "", List.of()),
                new RunTable(List.of(), List.of()),
                new Comparability(List.of(), List.of(), List.of()),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Markup.NONE,
                "",
                List.of(),
                List.of(),
                List.of(),
                new Reproduction("evenhand publish . --to site-out", "Evenhand 0.1.0", List.of(), List.of()),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }
}
