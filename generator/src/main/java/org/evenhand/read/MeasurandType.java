package org.evenhand.read;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.evenhand.model.Better;
import org.evenhand.model.Condition;
import org.evenhand.model.Measurand;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.model.Threshold;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/** One entry of a method's measurands; which fields it has depends on its reduction. */
final class MeasurandType implements FieldType {

    private static final FieldType THRESHOLD = Shape.either(
            Scalars.QUANTITY_OR_COUNT,
            Shape.of("a threshold")
                    .required(
                            "of",
                            new ScalarType(
                                    "a setting such as settings/clock",
                                    t -> t.startsWith("settings/") ? null : "write settings/ and the setting's name",
                                    s -> s.put("type", "string").put("pattern", "^settings/")),
                            "the setting of the run: settings/clock")
                    .required("times", Scalars.NUMBER_TEXT, "the factor: 0.95"));

    private static final FieldType SHARE = new ScalarType(
            "a percentage above 0 and below 100",
            text -> {
                double share = Quantity.parse(text, Unit.ONE).in(Unit.ONE);
                return share > 0 && share < 1 ? null : "write it as 95 %";
            },
            s -> s.put("type", "string"));

    private static final Map<String, Supplier<Shape>> SHAPES = new LinkedHashMap<>();

    static {
        SHAPES.put(
                "reading",
                () -> common("a measurand that is read off")
                        .optional("reading", Scalars.ID_TEXT, "the name among the run's readings, if it is another")
                        .optional("scale", Scalars.ID_TEXT, "the method's scale on which it is a place")
                        .optional("kind", Scalars.choice("yes-no"), "yes-no for an observation"));
        for (String statistic :
                List.of("mean", "median", "maximum", "minimum", "asymptote", "integral", "level-mean")) {
            SHAPES.put(statistic, MeasurandType::ofColumn);
        }
        SHAPES.put(
                "percentile",
                () -> ofColumn().required("percentile", SHARE, "the share of samples that do not exceed it: 95 %"));
        SHAPES.put(
                "settled",
                () -> ofColumn()
                        .required("window", Scalars.quantityIn("s"), "the time at the end over which the mean is taken")
                        .required(
                                "settled-below",
                                Scalars.QUANTITY_OR_COUNT,
                                "the drift within the window that is allowed"));
        SHAPES.put(
                "increase",
                () -> ofColumn()
                        .optional(
                                "wraps-at",
                                Scalars.QUANTITY_OR_COUNT,
                                "the value at which the counter starts again from zero"));
        SHAPES.put("time-until", MeasurandType::ofCondition);
        SHAPES.put("share", MeasurandType::ofCondition);
        SHAPES.put(
                "ambient-limit",
                () -> common("a highest ambient temperature")
                        .required("limit", Scalars.ID_TEXT, "the name of a temperature among the item's limits")
                        .required(
                                "rise",
                                Scalars.ID_TEXT,
                                "the measurand of this method that is the rise above ambient"));
        for (String operation : List.of("quotient", "product", "difference")) {
            SHAPES.put(
                    operation,
                    () -> common("a derived measurand")
                            .required(
                                    "of", Shape.listOf(Scalars.ID_TEXT, 2), "two measurands of this method, in order"));
        }
    }

    @Override
    public void check(Node node, Faults faults) {
        if (!(node instanceof Node.Mapping mapping)) {
            common("a measurand").check(node, faults);
            return;
        }
        Node.Entry reduce = mapping.entries().get("reduce");
        if (reduce == null || !(reduce.value() instanceof Node.Text word) || !SHAPES.containsKey(word.value())) {
            if (reduce == null) {
                faults.add(
                        Rules.FIELD_MISSING,
                        mapping.place(),
                        "a measurand lacks the field “reduce”",
                        "add how a run yields it: " + String.join(", ", SHAPES.keySet()));
            } else {
                Scalars.choice(SHAPES.keySet().toArray(String[]::new)).check(reduce.value(), faults);
            }
            return;
        }
        int before = faults.count();
        SHAPES.get(word.value()).get().check(node, faults);
        if (faults.count() == before) {
            checkTogether(new Fields(mapping), word, faults);
        }
    }

    private static void checkTogether(Fields f, Node.Text reduce, Faults faults) {
        if ((reduce.value().equals("time-until") || reduce.value().equals("share"))
                && f.has("below") == f.has("above")) {
            faults.add(
                    Rules.FIELD_MALFORMED,
                    reduce.place(),
                    "“" + reduce.value() + "” needs one of “below” and “above”",
                    "say on which side of the threshold the condition holds");
        }
        if (f.has("of") && f.texts("of").size() != 2) {
            faults.add(
                    Rules.FIELD_MALFORMED,
                    f.node("of").place(),
                    "a " + reduce.value() + " is of two measurands, not of "
                            + f.texts("of").size(),
                    "write of: [first, second]");
        }
    }

    @Override
    public ObjectNode schema() {
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        ArrayNode any = schema.putArray("oneOf");
        SHAPES.forEach((word, shape) -> {
            ObjectNode one = shape.get().schema();
            ObjectNode reduce = (ObjectNode) one.get("properties").get("reduce");
            reduce.remove("enum");
            reduce.put("const", word);
            any.add(one);
        });
        return schema;
    }

    static Measurand bind(String id, Fields f) {
        Better better = f.optional("better", w -> Better.valueOf(w.toUpperCase(Locale.ROOT)))
                .orElse(Better.NEITHER);
        return new Measurand(
                id,
                f.text("title"),
                reduction(id, f),
                f.optional("unit", Fields::unit).orElse(Unit.ONE),
                better,
                f.has("also"));
    }

    private static Reduction reduction(String id, Fields f) {
        String word = f.text("reduce");
        return switch (word) {
            case "reading" -> reading(id, f);
            case "time-until" -> new Reduction.TimeUntil(condition(f));
            case "share" -> new Reduction.Share(condition(f));
            case "quotient", "product", "difference" ->
                new Reduction.Derived(
                        Reduction.Operation.valueOf(word.toUpperCase(Locale.ROOT)),
                        f.texts("of").get(0),
                        f.texts("of").get(1));
            case "ambient-limit" -> new Reduction.AmbientLimit(f.text("limit"), f.text("rise"));
            default -> new Reduction.OfColumn(statistic(word, f), f.text("column"), f.optionalText("minus"));
        };
    }

    private static Reduction reading(String id, Fields f) {
        String name = f.optionalText("reading").orElse(id);
        if (f.has("scale")) {
            return new Reduction.OnScale(name, f.text("scale"));
        }
        return f.has("kind") ? new Reduction.Observation(name) : new Reduction.Reading(name);
    }

    private static Statistic statistic(String word, Fields f) {
        return switch (word) {
            case "mean" -> new Statistic.Mean();
            case "median" -> new Statistic.Median();
            case "maximum" -> new Statistic.Maximum();
            case "minimum" -> new Statistic.Minimum();
            case "percentile" ->
                new Statistic.Percentile(Fields.quantity(f.text("percentile")).in(Unit.ONE));
            case "settled" ->
                new Statistic.Settled(Fields.quantity(f.text("window")), Fields.quantity(f.text("settled-below")));
            case "asymptote" -> new Statistic.Asymptote();
            case "integral" -> new Statistic.Integral();
            case "increase" -> new Statistic.Increase(f.optionalQuantity("wraps-at"));
            case "level-mean" -> new Statistic.LevelMean();
            default -> throw new IllegalStateException(word);
        };
    }

    private static Condition condition(Fields f) {
        boolean below = f.has("below");
        Node limit = f.node(below ? "below" : "above");
        Threshold threshold;
        if (limit instanceof Node.Mapping mapping) {
            Fields of = new Fields(mapping);
            threshold = new Threshold.OfSetting(
                    of.text("of").substring("settings/".length()), new BigDecimal(of.text("times")));
        } else {
            threshold = new Threshold.Fixed(Fields.quantity(Fields.value(limit)));
        }
        Optional<Quantity> dwell = f.optionalQuantity("for");
        return new Condition(f.text("column"), below, threshold, dwell);
    }

    private static Shape common(String what) {
        return Shape.of(what)
                .required("title", Scalars.TEXT, "its name as readers see it")
                .required("reduce", Scalars.choice(SHAPES.keySet().toArray(String[]::new)), "how a run yields it")
                .optional("unit", Scalars.UNIT, "in which it is given; a plain number if absent")
                .optional("better", Scalars.choice("lower", "higher", "neither"), "which way is better")
                .optional("also", Scalars.choice("median"), "median: levels are summarised by it too, beside the mean");
    }

    private static Shape ofColumn() {
        return common("a measurand of a column")
                .required("column", Scalars.ID_TEXT, "the column of the log")
                .optional("minus", Scalars.ID_TEXT, "another column, or ambient, taken off each sample");
    }

    private static Shape ofCondition() {
        return common("a measurand of a condition")
                .required("column", Scalars.ID_TEXT, "the column of the log")
                .optional("below", THRESHOLD, "the threshold, if the condition is to be below it")
                .optional("above", THRESHOLD, "the threshold, if the condition is to be above it")
                .optional("for", Scalars.quantityIn("s"), "for how long it must hold")
                .either("below", "above");
    }
}
