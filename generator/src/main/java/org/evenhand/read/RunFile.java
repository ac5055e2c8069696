package org.evenhand.read;

import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import org.evenhand.model.ColumnMapping;
import org.evenhand.model.Deviation;
import org.evenhand.model.Origin;
import org.evenhand.model.Reading;
import org.evenhand.model.Run;
import org.evenhand.model.RunOutcome;

/** studies/STUDY/runs/ID.json: one execution of a method. */
final class RunFile {

    private static final Shape COLUMN = Shape.of("a column")
            .required("from", Scalars.TEXT, "the header of the foreign column")
            .optional("unit", Scalars.UNIT, "in which it stands there; absent for a flag or a stamp")
            .optional("bit", Scalars.COUNT, "which bit of an integer is meant, from 0");

    static final Shape WAIVER = Shape.of("a waiver")
            .required("rule", Scalars.ID_TEXT, "the rule that is waived")
            .required("why", Scalars.TEXT, "the reason, printed in full on the page")
            .required("by", Scalars.TEXT, "who takes responsibility")
            .required("on", Scalars.DATE, "when");

    private static final Shape DEVIATION = Shape.of("a deviation")
            .required("from", Scalars.TEXT, "a field of the method (run-length) or a setting")
            .required("why", Scalars.TEXT, "the reason");

    /** What may be noted of a run beside its conditions, with the word for each. */
    private static final Map<String, Circumstance> CIRCUMSTANCES = new LinkedHashMap<>();

    /** What a field holds, and what it means. */
    private record Circumstance(FieldType type, String meaning) {}

    static {
        put("probe", Scalars.TEXT, "where the sensor sat");
        put("altitude", Scalars.TEXT, "height above sea level");
        put("orientation", Scalars.TEXT, "how the item lay or stood");
        put("background", Scalars.QUANTITY_ANY, "the level without the item, at the same place: 23.9 dB(A)");
        put("background-read", Scalars.INSTANT, "when the background was read");
        put("distance", Scalars.quantityIn("m"), "from the item to the microphone");
        put("rested", Scalars.TEXT, "time since the last load");
        put(
                "idle-basis",
                Scalars.choice("gross", "net"),
                "whether power and energy are as read, or what the item takes when idle was taken off");
        put("done-by", Scalars.TEXT, "who did the run, where that is somebody else than the study's authors");
        put("notes", Scalars.TEXT, "anything else");
    }

    private static void put(String name, FieldType type, String meaning) {
        CIRCUMSTANCES.put(name, new Circumstance(type, meaning));
    }

    static final Shape SHAPE = shape();

    private RunFile() {}

    private static Shape shape() {
        Shape shape = Shape.of("a run")
                .optional("$schema", Scalars.TEXT, "the address of this schema, for editors")
                .required("run", Scalars.ID_TEXT, "its name within the study; the file is named alike")
                .required("method", Scalars.ID_TEXT, "the method by which it was done")
                .optional("method-version", Scalars.TEXT, "the version then, if it was another")
                .required("item", Scalars.ID_TEXT, "what was tested")
                .optional("specimen", Scalars.SPECIMEN_ID, "which example of it")
                .optional("settings", Shape.mapOf(Scalars.ID_TEXT, Scalars.TEXT), "the conditions under control")
                .optional("started", Scalars.INSTANT, "date and time with offset")
                .optional("length", Scalars.quantityIn("s"), "how long it lasted")
                .optional("ambient", Scalars.quantityIn("°C"), "the surroundings: 21.4 ± 0.5 °C")
                .optional(
                        "instruments",
                        Shape.mapOf(Scalars.ID_TEXT, Scalars.ID_TEXT),
                        "by column or reading: what it was measured with")
                .optional("log", Scalars.PATH, "the time series, relative to this file")
                .optional(
                        "columns",
                        Shape.mapOf(Scalars.ID_TEXT, COLUMN),
                        "where the method's columns are in a foreign log")
                .optional("separator", Scalars.choice(",", ";", "tab"), "between fields; a comma if absent")
                .optional("decimal", Scalars.choice(".", ","), "the decimal marker; a point if absent")
                .optional(
                        "readings",
                        Shape.mapOf(Scalars.ID_TEXT, Scalars.TEXT),
                        "values noted by hand or by the workload")
                .optional(
                        "outcome",
                        Scalars.choice("completed", "stopped", "failed", "excluded"),
                        "how it ended; completed if absent")
                .optional("why", Scalars.TEXT, "why it did not complete or is left out")
                .optional(
                        "origin",
                        Scalars.choice("measured", "stated", "external", "estimated"),
                        "whose figures these are; measured if absent")
                .optional("deviations", Shape.listOf(DEVIATION), "declared differences from the method")
                .optional("waivers", Shape.listOf(WAIVER), "findings that do not matter here, and who says so")
                .optional("pictures", Shape.listOf(ItemFile.PICTURE), "pictures of the set-up")
                .asking("outcome", "stopped", "why")
                .asking("outcome", "failed", "why")
                .asking("outcome", "excluded", "why")
                .asking("decimal", ",", "separator");
        CIRCUMSTANCES.forEach((name, c) -> shape.optional(name, c.type(), c.meaning()));
        return shape;
    }

    /** What must be said about several fields together. */
    static void checkTogether(Fields f, Faults faults) {
        String outcome = f.optionalText("outcome").orElse("completed");
        if (!outcome.equals("completed") && !f.has("why")) {
            faults.add(
                    Rules.FIELD_MISSING,
                    f.node("outcome").place(),
                    "the run is " + outcome + ", but nothing says why",
                    "add the reason as “why”");
        }
        if (f.optionalText("decimal")
                .orElse(".")
                .equals(f.optionalText("separator").orElse(","))) {
            faults.add(
                    Rules.FIELD_MALFORMED,
                    f.node("decimal").place(),
                    "a comma cannot both separate fields and mark decimals",
                    "add separator: \";\" or whatever stands between the fields");
        }
    }

    /**
     * @param study where the run lives
     * @param readings the readings as the method understands them
     * @param log where the log was found; null if there is none
     */
    static Run bind(Fields f, String study, Map<String, Reading> readings, org.evenhand.model.LogSource log) {
        Map<String, String> circumstances = new LinkedHashMap<>();
        CIRCUMSTANCES.keySet().stream().filter(f::has).forEach(name -> circumstances.put(name, f.text(name)));
        return new Run(
                f.text("run"),
                study,
                f.text("method"),
                f.optionalText("method-version"),
                f.text("item"),
                f.optionalText("specimen"),
                f.textByName("settings"),
                f.optional("started", OffsetDateTime::parse),
                f.optionalQuantity("length"),
                f.optionalQuantity("ambient"),
                f.textByName("instruments"),
                java.util.Optional.ofNullable(log),
                readings,
                f.optional("outcome", w -> RunOutcome.valueOf(w.toUpperCase(Locale.ROOT)))
                        .orElse(RunOutcome.COMPLETED),
                f.optionalText("why"),
                f.optional("origin", w -> Origin.valueOf(w.toUpperCase(Locale.ROOT)))
                        .orElse(Origin.MEASURED),
                circumstances,
                deviations(f),
                StudyFile.waivers(f),
                ItemFile.pictures(f),
                f.places());
    }

    static Map<String, ColumnMapping> columns(Fields f) {
        Map<String, ColumnMapping> columns = new LinkedHashMap<>();
        f.named("columns")
                .forEach((name, c) -> columns.put(
                        name,
                        new ColumnMapping(
                                c.text("from"),
                                c.optional("unit", Fields::unit),
                                c.has("bit") ? OptionalInt.of(Integer.parseInt(c.text("bit"))) : OptionalInt.empty())));
        return columns;
    }

    private static List<Deviation> deviations(Fields f) {
        return f.groups("deviations").stream()
                .map(d -> new Deviation(d.text("from"), d.text("why")))
                .toList();
    }
}
