package org.evenhand.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.evenhand.model.Hazard;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Unit;

/** methods/ID.md: how a test is done; the body describes the procedure. */
final class MethodFile {

    static final Shape SHAPE = Shape.of("a method")
            .optional("$schema", Scalars.TEXT, "the address of this schema, for editors")
            .required("method", Scalars.ID_TEXT, "its name in files and addresses; the file is named alike")
            .required("version", Scalars.TEXT, "raised whenever figures under it are no longer comparable")
            .required("title", Scalars.TEXT, "its name as readers know it")
            .optional("run-length", Scalars.quantityIn("s"), "how long a run lasts")
            .optional(
                    "hazards",
                    Shape.listOf(Scalars.choice(
                            "hot-surface", "mains", "battery", "raised-voltage", "rotating-fan", "loud-sound")),
                    "what can hurt somebody; each brings its caution onto the pages")
            .optional(
                    "settings",
                    Shape.mapOf(Scalars.ID_TEXT, Scalars.TEXT),
                    "what the method holds fixed: settings that every run has")
            .optional("records", Shape.mapOf(Scalars.ID_TEXT, Scalars.UNIT), "the columns of a log and their units")
            .required("measurands", Shape.mapOf(Scalars.ID_TEXT, new MeasurandType()), "what a run yields")
            .optional(
                    "scales",
                    Shape.mapOf(Scalars.ID_TEXT, Shape.listOf(Scalars.TEXT)),
                    "ordered words for judgements, from the least to the most")
            .optional(
                    "tolerances",
                    Shape.mapOf(Scalars.ID_TEXT, Scalars.QUANTITY_OR_COUNT),
                    "limits that replace the publication's and the rules', by the rule's name")
            .optional(
                    "ambient",
                    Scalars.choice("required", "not-needed"),
                    "whether what it measures depends on the surroundings; required if absent")
            .optional("ambient-range", Ranges.in("°C"), "the surroundings in which it may be done")
            .optional("cooling", Scalars.choice("fixed", "controlled"), "whether cooling answers to temperature")
            .optional("max-gap", Scalars.quantityIn("s"), "the longest gap between samples that an integral bridges")
            .optional("background", Scalars.choice("required"), "whether a background reading belongs to each run");

    private MethodFile() {}

    static Method bind(Fields f, String body, int bodyLine) {
        Map<String, Unit> records = f.map("records", node -> Fields.unit(Fields.value(node)));
        Map<String, Measurand> measurands = new LinkedHashMap<>();
        f.named("measurands").forEach((id, fields) -> measurands.put(id, MeasurandType.bind(id, fields)));
        Map<String, List<String>> scales = f.map(
                "scales",
                node -> ((Node.Sequence) node)
                        .elements().stream().map(Fields::value).toList());
        return new Method(
                f.text("method"),
                f.text("version"),
                f.text("title"),
                f.optionalQuantity("run-length"),
                f.texts("hazards").stream().map(MethodFile::hazard).toList(),
                f.textByName("settings"),
                records,
                measurands,
                scales,
                f.quantityByName("tolerances"),
                !f.optionalText("ambient").equals(Optional.of("not-needed")),
                f.optional("ambient-range", MethodFile::range),
                f.optional("cooling", word -> Method.Cooling.valueOf(word.toUpperCase(Locale.ROOT))),
                f.optionalQuantity("max-gap"),
                f.has("background"),
                body,
                bodyLine,
                f.places());
    }

    private static Hazard hazard(String word) {
        return Hazard.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private static Method.AmbientRange range(String text) {
        try {
            return new Method.AmbientRange(Ranges.lowest(text), Ranges.highest(text));
        } catch (MisreadException e) {
            throw new IllegalStateException(e);
        }
    }
}
