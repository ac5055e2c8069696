package org.evenhand.measure;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.evenhand.measure.RunValue.Missing;
import org.evenhand.model.Condition;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.model.Run;
import org.evenhand.model.Threshold;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.words.Phrase;

/** Ties the measurands of a run to the columns of its log, once these are known. */
final class Binder {

    private static final Unit SECOND = Unit.of("s");
    private static final String AMBIENT = "ambient";

    private final Run run;
    private final Method method;
    private final List<String> columns;
    private final boolean[] present;
    private final OptionalDouble maxGapS;
    private final Map<String, Missing> missing = new TreeMap<>();

    /** Says why a measurand cannot be tied. */
    private static final class Untied extends Exception {

        private static final long serialVersionUID = 1L;

        private final transient Missing missing;

        Untied(String rule, Phrase why) {
            super(why.key(), null, false, false);
            this.missing = new Missing(rule, why);
        }
    }

    /** A signal, and what it is made of. */
    private record Source(Signal signal, Optional<String> minus, boolean ambientStated) {}

    Binder(Run run, Method method, List<String> columns, boolean[] present) {
        this.run = run;
        this.method = method;
        this.columns = columns;
        this.present = present;
        this.maxGapS = method.maxGap().isPresent()
                ? OptionalDouble.of(method.maxGap().get().in(SECOND))
                : OptionalDouble.empty();
    }

    /** A binding for each measurand that comes from the log; why there is none stands in {@link #missing}. */
    List<Binding> bindings() {
        return method.measurands().values().stream()
                .filter(measurand -> needsLog(measurand.reduction()))
                .flatMap(measurand -> {
                    try {
                        return Stream.of(bind(measurand));
                    } catch (Untied e) {
                        missing.put(measurand.id(), e.missing);
                        return Stream.empty();
                    }
                })
                .toList();
    }

    /** By measurand. */
    Map<String, Missing> missing() {
        return missing;
    }

    static boolean needsLog(Reduction reduction) {
        return reduction instanceof Reduction.OfColumn || reduction.watched().isPresent();
    }

    private Binding bind(Measurand measurand) throws Untied {
        Unit natural = MethodUnits.natural(method, measurand)
                .orElseThrow(() -> new Untied("unit-dimension", Phrase.of("missing.unit-of-reduction")));
        if (measurand.reduction() instanceof Reduction.TimeUntil until) {
            Condition condition = until.condition();
            double dwellS = condition.dwell().map(dwell -> dwell.in(SECOND)).orElse(0.0);
            return bind(measurand, natural, condition, new Until(criterion(condition), dwellS, maxGapS));
        }
        if (measurand.reduction() instanceof Reduction.Share share) {
            return bind(measurand, natural, share.condition(), new Share(criterion(share.condition())));
        }
        Reduction.OfColumn reduction = (Reduction.OfColumn) measurand.reduction();
        Source source = source(reduction);
        Unit unit = method.records().get(reduction.column());
        Signal signal = source.signal();
        Reducer reducer = reducer(reduction.statistic(), signal, unit, natural);
        boolean approaches = reduction.statistic() instanceof Statistic.Settled;
        Optional<Approach> approach = reducer instanceof Approach itself
                ? Optional.of(itself)
                : approaches ? Optional.of(new Approach(signal, natural)) : Optional.empty();
        return new Binding(
                measurand,
                natural,
                unit,
                reduction.column(),
                source.minus(),
                source.ambientStated(),
                reducer,
                approach);
    }

    private Binding bind(Measurand measurand, Unit natural, Condition condition, Reducer reducer) {
        Unit unit = method.records().get(condition.column());
        return new Binding(
                measurand, natural, unit, condition.column(), Optional.empty(), false, reducer, Optional.empty());
    }

    private Reducer reducer(Statistic statistic, Signal signal, Unit unit, Unit natural) {
        if (statistic instanceof Statistic.Mean) {
            return new Trapezoid(signal, maxGapS, true);
        }
        if (statistic instanceof Statistic.Integral) {
            return new Trapezoid(signal, maxGapS, false);
        }
        if (statistic instanceof Statistic.Maximum) {
            return new Extreme(signal, true);
        }
        if (statistic instanceof Statistic.Minimum) {
            return new Extreme(signal, false);
        }
        if (statistic instanceof Statistic.Median) {
            return OrderStatistic.median(signal);
        }
        if (statistic instanceof Statistic.Percentile percentile) {
            return OrderStatistic.percentile(signal, percentile.share());
        }
        if (statistic instanceof Statistic.Increase increase) {
            return new Increase(
                    signal,
                    increase.wrapsAt().isPresent()
                            ? OptionalDouble.of(increase.wrapsAt().get().in(unit))
                            : OptionalDouble.empty());
        }
        if (statistic instanceof Statistic.LevelMean) {
            return new LevelMean(signal);
        }
        if (statistic instanceof Statistic.Settled settled) {
            double allowed = settled.settledBelow().differenceIn(unit);
            return new Settled(signal, new Settled.Criteria(settled.window().in(SECOND), allowed, natural));
        }
        return new Approach(signal, natural);
    }

    private Source source(Reduction.OfColumn reduction) throws Untied {
        int column = column(reduction.column());
        if (reduction.minus().isEmpty()) {
            return new Source(Signal.of(column), Optional.empty(), false);
        }
        String minus = reduction.minus().get();
        Unit unit = method.records().get(reduction.column());
        int at = columns.indexOf(minus);
        if (at >= 0 && present[at]) {
            Unit unitOfMinus = method.records().get(minus);
            return new Source(Signal.less(column, at, unitOfMinus.to(unit)), reduction.minus(), false);
        }
        if (!minus.equals(AMBIENT)) {
            throw noColumn(minus);
        }
        Quantity ambient = run.ambient()
                .filter(stated -> stated.unit().convertsTo(unit))
                .orElseThrow(() -> new Untied("ambient-missing", Phrase.of("missing.no-ambient")));
        return new Source(Signal.less(column, ambient.in(unit)), Optional.empty(), true);
    }

    private Criterion criterion(Condition condition) throws Untied {
        int column = column(condition.column());
        Unit unit = method.records().get(condition.column());
        return new Criterion(column, condition.below(), threshold(condition.threshold(), unit));
    }

    private double threshold(Threshold threshold, Unit unit) throws Untied {
        if (threshold instanceof Threshold.Fixed fixed) {
            return fixed.quantity().in(unit);
        }
        Threshold.OfSetting ofSetting = (Threshold.OfSetting) threshold;
        String text = run.settings().get(ofSetting.setting());
        if (text == null) {
            throw new Untied("field-missing", Phrase.of("missing.no-setting", ofSetting.setting()));
        }
        try {
            Quantity stated = Quantity.parse(text, unit);
            return new Quantity(stated.value().multiply(ofSetting.times()), Optional.empty(), stated.unit()).in(unit);
        } catch (MisreadException e) {
            String rule = e.fault().name().toLowerCase(Locale.ROOT).replace('_', '-');
            throw new Untied(rule, Phrase.of("missing.setting", ofSetting.setting(), e.getMessage()));
        }
    }

    private int column(String name) throws Untied {
        int at = columns.indexOf(name);
        if (at < 0 || !present[at]) {
            throw noColumn(name);
        }
        return at;
    }

    private static Untied noColumn(String name) {
        return new Untied("field-missing", Phrase.of("missing.no-column", name));
    }
}
