package org.evenhand.measure;

import java.util.Map;
import java.util.Optional;
import org.evenhand.measure.RunValue.Known;
import org.evenhand.measure.RunValue.Missing;
import org.evenhand.model.Condition;
import org.evenhand.model.Item;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.AmbientLimit;
import org.evenhand.model.Run;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.words.Phrase;

/**
 * The ambient temperature at which a stated limit would just be reached: the limit less the rise above ambient.
 *
 * <p>The rise may be carried to another ambient temperature only where nothing answers to temperature, neither the cooling nor
 * the clock; otherwise there is no value. Source of that condition: IEC 60950-1, 1.4.12.3.
 *
 * @param run whose value it is
 * @param method by which it was made
 * @param item that was tested
 * @param values the run's other measurands, as far as they are known already
 */
record HighestAmbient(Run run, Method method, Optional<Item> item, Map<String, RunValue> values) {

    private static final String MISUSED = "rise-misused";
    private static final Unit CELSIUS = Unit.of("°C");
    private static final Unit KELVIN = Unit.of("K");

    /** @param unit wanted, a point on a scale of temperature */
    RunValue of(AmbientLimit reduction, RunValue rise, Unit unit) {
        if (method.cooling().isEmpty() || method.cooling().get() != Method.Cooling.FIXED) {
            return new Missing(MISUSED, Phrase.of("missing.cooling"));
        }
        Optional<String> drop = clockDrop();
        if (drop.isPresent()) {
            return new Missing(MISUSED, Phrase.of("missing.clock-dropped", drop.get()));
        }
        if (!(rise instanceof Known known)) {
            return DerivedValue.lacking(reduction.rise(), rise);
        }
        Quantity limit = item.map(i -> i.limits().get(reduction.limit())).orElse(null);
        if (limit == null) {
            return new Missing("field-missing", Phrase.of("missing.no-limit", reduction.limit()));
        }
        if (!limit.unit().convertsTo(CELSIUS)) {
            return new Missing("unit-dimension", Phrase.of("missing.limit-unit", reduction.limit(), limit.toString()));
        }
        double riseK = known.unit().to(KELVIN).fast().apply(known.value());
        double perRise = known.unit().to(KELVIN).fast().apply(1);
        double perKelvin = KELVIN.differenceTo(unit).fast().apply(1);
        return Values.known(
                CELSIUS.to(unit).fast().apply(limit.in(CELSIUS) - riseK),
                unit,
                known.withinRun() * Math.abs(perRise * perKelvin),
                () -> Contributions.of(
                                "limit “" + reduction.limit() + "” as stated, item " + run.item(),
                                limit.standardUncertaintyIn(KELVIN))
                        .minus(known.contributions().scaled(perRise))
                        .scaled(perKelvin));
    }

    /** The measurand that tells of a clock below the one set, in this run; nothing if none does. */
    private Optional<String> clockDrop() {
        return method.measurands().values().stream()
                .filter(m -> m.reduction().watched().filter(Condition::isDrop).isPresent()
                        && values.get(m.id()) instanceof Known known
                        && (m.reduction() instanceof Reduction.TimeUntil || known.value() > 0))
                .map(Measurand::title)
                .findFirst();
    }
}
