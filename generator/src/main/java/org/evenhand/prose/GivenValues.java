package org.evenhand.prose;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.evenhand.model.Better;
import org.evenhand.model.Comparison;
import org.evenhand.model.Item;
import org.evenhand.model.Method;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Study;
import org.evenhand.prose.Evidence.Kind;
import org.evenhand.prose.EvidenceResolver.Found;
import org.evenhand.prose.EvidenceResolver.Missing;
import org.evenhand.prose.EvidenceResolver.Resolution;
import org.evenhand.quantity.Quantity;
import org.evenhand.read.NearMiss;

/** Finds values that were not measured here: limits that makers state, and what methods and comparisons fix. */
final class GivenValues {

    private final ResultsFolder folder;
    private final Optional<Study> study;
    private final FigureText text;

    GivenValues(ResultsFolder folder, Optional<Study> study) {
        this.folder = folder;
        this.study = study;
        this.text = FigureText.in(StudyResolver.language(folder));
    }

    Resolution resolve(List<String> names) {
        String owner = names.get(0);
        String field = String.join("/", names.subList(1, names.size()));
        Item item = folder.items().get(owner);
        if (item != null) {
            Map<String, Quantity> limits = new TreeMap<>();
            item.limits().forEach((name, quantity) -> limits.put("limits/" + name, quantity));
            String limit = field.startsWith("limits/") ? field.substring("limits/".length()) : field;
            return found(new Target.OfItem(owner, limit), item.name(), limits, field);
        }
        Method method = folder.methods().get(owner);
        if (method != null) {
            return found(new Target.OfMethod(owner, field), method.title(), fields(method), field);
        }
        Optional<Comparison> comparison = study.flatMap(
                s -> s.comparisons().stream().filter(c -> c.id().equals(owner)).findFirst());
        if (comparison.isPresent()) {
            Map<String, Quantity> fields = new TreeMap<>();
            comparison.get().sameWithin().ifPresent(q -> fields.put("same-within", q));
            comparison.get().duration().ifPresent(q -> fields.put("for", q));
            return found(new Target.OfComparison(study.orElseThrow().id(), owner), owner, fields, field);
        }
        List<String> known = new java.util.ArrayList<>(folder.items().keySet());
        known.addAll(folder.methods().keySet());
        study.ifPresent(s -> s.comparisons().forEach(c -> known.add(c.id())));
        return new Missing("there is no item, method or comparison “" + owner + "”", NearMiss.suggestion(owner, known));
    }

    private static Map<String, Quantity> fields(Method method) {
        Map<String, Quantity> fields = new TreeMap<>();
        method.runLength().ifPresent(q -> fields.put("run-length", q));
        method.maxGap().ifPresent(q -> fields.put("max-gap", q));
        method.ambientRange().ifPresent(r -> {
            fields.put("ambient-range/low", r.lowest());
            fields.put("ambient-range/high", r.highest());
        });
        method.tolerances().forEach((name, quantity) -> fields.put("tolerances/" + name, quantity));
        return fields;
    }

    private Resolution found(Target target, String owner, Map<String, Quantity> values, String field) {
        Quantity quantity = values.get(field);
        if (quantity == null) {
            return new Missing(
                    "“" + owner + "” states no “" + field + "”", NearMiss.suggestion(field, values.keySet()));
        }
        double spread = quantity.standardUncertaintyIn(quantity.unit().ofDifference()) * 2;
        double value = quantity.value().doubleValue();
        Figure figure = new Figure(
                OptionalDouble.of(value),
                spread > 0 ? OptionalDouble.of(value - spread) : OptionalDouble.empty(),
                spread > 0 ? OptionalDouble.of(value + spread) : OptionalDouble.empty(),
                quantity.unit());
        return new Found(new Evidence(
                target,
                Kind.GIVEN,
                Kind.GIVEN,
                owner,
                field.substring(field.lastIndexOf('/') + 1).replace('-', ' '),
                Better.NEITHER,
                quantity.unit(),
                figure,
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                text.words().say("sentence.stated"),
                text.written(quantity),
                Evidence.Count.NONE));
    }
}
