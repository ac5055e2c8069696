package org.evenhand.page;

import static org.evenhand.page.ExampleEvidence.MINUS;
import static org.evenhand.page.ExampleEvidence.NB;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Caution;
import org.evenhand.page.view.Caveat;
import org.evenhand.page.view.CaveatGroup;
import org.evenhand.page.view.CaveatsPage;
import org.evenhand.page.view.Change;
import org.evenhand.page.view.ChangesPage;
import org.evenhand.page.view.ChartFigure;
import org.evenhand.page.view.ComparePage;
import org.evenhand.page.view.ComparedLevel;
import org.evenhand.page.view.ComparedMeasurand;
import org.evenhand.page.view.ComparedPair;
import org.evenhand.page.view.Entry;
import org.evenhand.page.view.ExplanationPart;
import org.evenhand.page.view.Figure;
import org.evenhand.page.view.FileRow;
import org.evenhand.page.view.Finding;
import org.evenhand.page.view.Frame;
import org.evenhand.page.view.HeadBlock;
import org.evenhand.page.view.IndexPage;
import org.evenhand.page.view.InstrumentPage;
import org.evenhand.page.view.ItemPage;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Listed;
import org.evenhand.page.view.LogColumn;
import org.evenhand.page.view.Markup;
import org.evenhand.page.view.Measurand;
import org.evenhand.page.view.MethodPage;
import org.evenhand.page.view.Notice;
import org.evenhand.page.view.Picture;
import org.evenhand.page.view.Question;
import org.evenhand.page.view.Reading;
import org.evenhand.page.view.RunColumn;
import org.evenhand.page.view.RunPage;
import org.evenhand.page.view.RunSource;
import org.evenhand.page.view.RunValue;
import org.evenhand.page.view.Unfolding;
import org.evenhand.page.view.WithheldPage;

/** Hand-written views of an invented publication: one of every page, with the awkward cases that pages must bear. */
final class ExampleViews {

    private ExampleViews() {}

    static Map<String, Sheet> all() {
        Map<String, Sheet> sheets = new LinkedHashMap<>();
        sheets.put(Address.INDEX, new Sheet("index", index()));
        sheets.put(Address.answer("heat-spreader"), new Sheet("answer", ExampleAnswer.answer()));
        sheets.put(Address.answer("raised-clock"), new Sheet("answer", ExampleAnswer.bareAnswer()));
        sheets.put(Address.answer("fan-noise"), new Sheet("withheld", withheld()));
        sheets.put(Address.item("quillet-3"), new Sheet("item", item()));
        sheets.put(Address.method("thermal-soak"), new Sheet("method", method()));
        sheets.put(Address.instrument("dc-meter-1"), new Sheet("instrument", instrument()));
        sheets.put(Address.run("heat-spreader", "none-1"), new Sheet("run", run()));
        sheets.put(Address.COMPARE, new Sheet("compare", compare()));
        sheets.put(Address.CAVEATS, new Sheet("caveats", caveats()));
        sheets.put(Address.CHANGES, new Sheet("changes", changes()));
        return sheets;
    }

    record Sheet(String template, Record view) {}

    static Frame frame(String path, String title, Link... trail) {
        return new Frame(
                Address.rootFrom(path),
                "en",
                title,
                "An invented report.",
                "Hilltop relay trials",
                "Fernhollow Community Radio",
                Link.outside("CC-BY-4.0", "https://creativecommons.org/licenses/by/4.0/"),
                "https://results.example.org/relay/" + path.replace("index.html", ""),
                true,
                "Evenhand 0.1.0",
                List.of(trail),
                Unfolding.plain("An invented report."),
                Markup.NONE,
                "");
    }

    static Figure spreaderRise(Caveat... caveats) {
        return new Figure(
                "Settled temperature rise, spreader against none",
                MINUS + "19.3" + NB + "K",
                "95" + NB + "% interval " + MINUS + "20.5" + NB + "K to " + MINUS + "18.1" + NB + "K",
                "n = 5 and 5 runs, 1 specimen",
                "",
                Optional.of(Link.to(
                        "evidence", Address.answer("heat-spreader") + "#" + Address.comparison("spreader-rise"))),
                List.of(caveats));
    }

    static IndexPage index() {
        Link quillet3 = Link.to("Quillet 3 encoder", Address.item("quillet-3"));
        Link soak = Link.to("Thermal soak under full load", Address.method("thermal-soak"));
        return new IndexPage(
                frame(Address.INDEX, "Hilltop relay trials"),
                new Markup(
                        "<p>Which small encoder computer belongs in the sealed relay box on the hill, and what must be"
                                + " done to keep it running there on a battery. Each answer shows every run behind it.</p>"),
                List.of(
                        Entry.of("Questions", "4"),
                        Entry.of("Runs", "58"),
                        Entry.of("Specimens", "6"),
                        Entry.of("Caveats", Link.to("9", Address.CAVEATS))),
                List.of(
                        new Question(
                                "heat-spreader",
                                Link.to(
                                        "Does the sealed relay box need a heat spreader?",
                                        Address.answer("heat-spreader")),
                                "final",
                                new Markup(
                                        "Yes. Without one it throttles within <a href=\"answers/heat-spreader/index.html#"
                                                + "level.none.time-to-throttle\">11.2 min</a>; with one it ran 45 min without."),
                                Optional.of(spreaderRise(Caveat.of(
                                        "single-specimen",
                                        "Speaks for specimen A1 only.",
                                        Link.to(
                                                "single-specimen",
                                                Address.CAVEATS + "#" + Address.caveatGroup("single-specimen"))))),
                                List.of(quillet3),
                                List.of(soak),
                                "2026-03-20"),
                        new Question(
                                "raised-clock",
                                Link.to(
                                        "How much faster is the raised clock, and does speed follow the clock?",
                                        Address.answer("raised-clock")),
                                "wanted",
                                Markup.NONE,
                                Optional.empty(),
                                List.of(quillet3),
                                List.of(),
                                ""),
                        new Question(
                                "fan-noise",
                                Link.to(
                                        "Can the fan be heard in the studio? <script>alert(1)</script> ${7*7}",
                                        Address.answer("fan-noise")),
                                "withheld",
                                Markup.text("Withheld: no background level was taken on the day."),
                                Optional.empty(),
                                List.of(quillet3, Link.to("Quillet 2 encoder", Address.item("quillet-3"))),
                                List.of(soak),
                                "2026-03-28")),
                List.of(new Listed(quillet3, "", "", "Small computer, two specimens")),
                List.of(new Listed(soak, "", "", "Version 2")),
                List.of(new Listed(
                        Link.to("DC meter 1", Address.instrument("dc-meter-1")), "", "", "Power at the DC input")));
    }

    static WithheldPage withheld() {
        return new WithheldPage(
                frame(
                        Address.answer("fan-noise"),
                        "Can the fan be heard in the studio?",
                        Link.to("Questions", Address.INDEX)),
                new HeadBlock("Test report", "fan-noise", "1", "withheld", List.of(Entry.of("Answered", "2026-03-28"))),
                "Can the fan be heard in the studio?",
                "No background level was taken on the day, so nothing can be said of the fan alone.",
                List.of(new Finding(
                        Address.finding("background-missing", 1),
                        Link.plain("background-missing"),
                        "withhold",
                        "found",
                        "studies/fan-noise/runs/on-1.json:1:1",
                        "No background reading within 1 h at the same place. <script>alert(1)</script> ${7*7}",
                        "common practice, no published source",
                        "Take one with the fan off.",
                        "")),
                List.of(new Listed(
                        Link.to("none-1", Address.run("heat-spreader", "none-1")), "2026-03-27", "completed", "")),
                List.of());
    }

    static ItemPage item() {
        return new ItemPage(
                frame(Address.item("quillet-3"), "Quillet 3 encoder", Link.to("Questions", Address.INDEX)),
                new HeadBlock(
                        "Test item",
                        "quillet-3",
                        "",
                        "",
                        List.of(Entry.of("Kind", "small computer"), Entry.of("Obtained", "bought"))),
                "Quillet 3 encoder",
                Markup.NONE,
                List.of(
                        Entry.of("Temperature", "85 °C"),
                        Entry.of("Supply voltage", "12.6 V"),
                        Entry.of("Clock", "1800 MHz")),
                List.of(Entry.of("A1", "in 20 runs"), Entry.of("A2", "in 3 runs")),
                List.of(new Listed(
                        Link.to("Does the sealed relay box need a heat spreader?", Address.answer("heat-spreader")),
                        "2026-03-20",
                        "final",
                        "Yes. Without one it throttles within 11.2 min.")),
                List.of(new Entry(
                        "Does the sealed relay box need a heat spreader?",
                        List.of(Link.to("none-1", Address.run("heat-spreader", "none-1"))),
                        "1 run")),
                List.of(new Picture(
                        "assets/evenhand.css", 640, 120, "The encoder in its box, lid off", "E. Marlow, CC-BY-4.0")),
                files());
    }

    static MethodPage method() {
        return new MethodPage(
                frame(
                        Address.method("thermal-soak"),
                        "Thermal soak under full load",
                        Link.to("Questions", Address.INDEX)),
                new HeadBlock("Test method", "thermal-soak", "2", "", List.of(Entry.of("Run length", "45 min"))),
                "Thermal soak under full load",
                List.of(new Caution("Hot surface", "The lid reaches 70 °C.")),
                new Markup(
                        "<p>Close the box, rest it over night, then load all cores.</p><h3>Window</h3><p>The last five"
                                + " minutes count.</p>"),
                List.of(Entry.of("temperature", "°C"), Entry.of("clock", "MHz")),
                List.of(
                        new Measurand(
                                Address.measurand("settled-rise"),
                                "Settled temperature rise above ambient",
                                "K",
                                "mean of temperature less ambient over the last 5 min, if settled within 1 K",
                                "lower"),
                        new Measurand(Address.measurand("holds"), "Holds the clock", "", "reading, yes or no", "")),
                List.of(new Listed(
                        Link.to("Does the sealed relay box need a heat spreader?", Address.answer("heat-spreader")),
                        "",
                        "final",
                        "")),
                List.of());
    }

    static InstrumentPage instrument() {
        return new InstrumentPage(
                frame(Address.instrument("dc-meter-1"), "DC meter 1", Link.to("Questions", Address.INDEX)),
                new HeadBlock(
                        "Instrument",
                        "dc-meter-1",
                        "",
                        "",
                        List.of(Entry.of("Calibrated", "2026-01-15"), Entry.of("Valid until", "2027-01-15"))),
                "DC meter 1",
                Markup.NONE,
                List.of(
                        Entry.of("Reads", "power"),
                        Entry.of("Boundary", "DC input"),
                        Entry.of("Accuracy", "0.5 % of reading + 10 mW")),
                List.of(),
                List.of(),
                files());
    }

    static RunPage run() {
        return new RunPage(
                frame(
                        Address.run("heat-spreader", "none-1"),
                        "Run none-1",
                        Link.to("Questions", Address.INDEX),
                        Link.to("heat-spreader", Address.answer("heat-spreader"))),
                new HeadBlock(
                        "Run record",
                        "none-1",
                        "",
                        "stopped",
                        List.of(
                                new Entry(
                                        "Test item",
                                        List.of(Link.to("Quillet 3 encoder", Address.item("quillet-3"))),
                                        "Specimen A1"),
                                Entry.of("Started", "2026-03-02 09:14 UTC"),
                                Entry.of("Length", "45 min"))),
                "Run none-1: cooling none",
                List.of(new Notice("Stopped", "The lid sensor came off at 44 min.", List.of())),
                List.of(
                        Entry.of("cooling", "none"),
                        Entry.of("clock", "1800 MHz"),
                        Entry.of("enclosure", "sealed"),
                        Entry.of("ambient", "21.4 ± 0.5 °C")),
                List.of(new ChartFigure(
                        Address.chart("log"),
                        "Log of run none-1: temperature",
                        ExampleChart.dots(),
                        "",
                        Optional.of(Link.to("Log as CSV", "runs/heat-spreader/none-1/none-1.csv")),
                        List.of(),
                        List.of())),
                List.of(
                        new LogColumn(
                                "Temperature",
                                "°C",
                                Link.to("DC meter 1", Address.instrument("dc-meter-1")),
                                "541",
                                "23.0",
                                "23.0",
                                "71.4",
                                "85.3",
                                "84.1"),
                        new LogColumn("Throttled", "", Link.plain(""), "541", "0", "0", "0.2", "1", "1")),
                List.of(
                        new Reading("frames", "5140", "", Link.to("DC meter 1", Address.instrument("dc-meter-1"))),
                        new Reading("heard", "faint", "estimated", Link.plain(""))),
                List.of(new RunColumn("Settled rise", "K"), new RunColumn("Holds", "")),
                List.of(
                        new RunValue(Address.value("none-1", "settled-rise"), "51.9", "0.2", ""),
                        new RunValue(Address.value("none-1", "holds"), "no", "", "stated")),
                List.of(
                        new RunSource("Settled rise", "K", "Resolution: Die sensor", "0.18", "81.0" + NB + "%"),
                        new RunSource("Settled rise", "K", "Scatter within the run", "0.09", "19.0" + NB + "%")),
                List.of(ExampleAnswer.findings().get(2)),
                files(),
                List.of(new Listed(
                        Link.to("Does the sealed relay box need a heat spreader?", Address.answer("heat-spreader")),
                        "",
                        "final",
                        "")),
                List.of());
    }

    static List<FileRow> files() {
        return List.of(new FileRow(
                Link.to("none-1.csv", "runs/heat-spreader/none-1/none-1.csv"),
                "Log",
                "88" + NB + "kB",
                "60303ae22b998861bce3b28f33eec1be758a213c86c93c076dbe9f558c11c752"));
    }

    static ComparePage compare() {
        Link answer = Link.to("Does the sealed relay box need a heat spreader?", Address.answer("heat-spreader"));
        Caveat reason = Caveat.of(
                "length-spread",
                "The run none-1 lasted 45 min, the run long-1 12 h.",
                Link.to("length-spread", Address.CAVEATS));
        ComparedLevel none = new ComparedLevel(
                "heat-spreader/none", answer, answer, "n = 1 run", "> 45", "", "", "", List.of(reason));
        return new ComparePage(
                frame(Address.COMPARE, "Compare"),
                List.of(new ComparedMeasurand(
                        "measurand.thermal-soak-rise",
                        "Rise <b>above</b> ambient",
                        "K",
                        Link.to("Thermal soak", Address.method("thermal-soak")),
                        List.of(none, none),
                        "3",
                        List.of(new ComparedPair(
                                "heat-spreader/none",
                                "heat-spreader/spreader",
                                "none against spreader",
                                "not-comparable",
                                "",
                                List.of(reason),
                                List.of(),
                                Optional.of(answer))))));
    }

    static CaveatsPage caveats() {
        return new CaveatsPage(
                frame(Address.CAVEATS, "Caveats", Link.to("Questions", Address.INDEX)),
                List.of(new CaveatGroup(
                        Address.caveatGroup("single-specimen"),
                        "Single specimen",
                        "single-specimen",
                        "caveat",
                        "One specimen speaks for its kind: another may behave otherwise.",
                        List.of(new ExplanationPart("Why it matters", new Markup("<p>Specimens differ.</p>"))),
                        "after ISO/IEC 17025:2017, 7.8.2.1 l",
                        List.of(new Listed(
                                Link.to(
                                        "Settled rise: spreader against none",
                                        Address.answer("heat-spreader") + "#" + Address.comparison("spreader-rise")),
                                "",
                                "final",
                                "Five runs of one specimen, A1.")))));
    }

    static ChangesPage changes() {
        return new ChangesPage(
                frame(Address.CHANGES, "Changes", Link.to("Questions", Address.INDEX)),
                Link.to("feed", "feed.xml"),
                List.of(
                        new Change(
                                "2026-04-02",
                                Link.to(
                                        "Does the sealed relay box need a heat spreader?",
                                        Address.answer("heat-spreader") + "#" + Address.revision(1)),
                                "Two runs added at each level.",
                                "Only three runs per level before.",
                                "The interval narrowed; the answer stands."),
                        new Change(
                                "2026-03-20",
                                Link.to(
                                        "Does the sealed relay box need a heat spreader?",
                                        Address.answer("heat-spreader")),
                                "First published.",
                                "",
                                "")));
    }
}
