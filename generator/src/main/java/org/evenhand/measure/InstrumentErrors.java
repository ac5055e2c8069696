package org.evenhand.measure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenhand.model.Finding;
import org.evenhand.model.Instrument;
import org.evenhand.model.Run;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.TypeB;

/**
 * What the instruments of a run contribute to the uncertainty of its values.
 *
 * <p>The limits of error that a maker states are taken as rectangular. Their part of the reading is an error of the
 * gain and their fixed part an offset; both belong to the instrument, and so are common to all that was read with it.
 * The resolution belongs to the single reading. Source: JCGM 100:2008, 4.3.7 and F.2.2.1.
 */
final class InstrumentErrors {

    private static final String BACKGROUND = "background";

    private final Run run;
    private final Map<String, Instrument> instruments;
    private final List<Finding> findings;
    private final String runName;

    /** @param findings takes what does not fit, each once */
    InstrumentErrors(Run run, Map<String, Instrument> instruments, List<Finding> findings) {
        this.run = run;
        this.instruments = instruments;
        this.findings = findings;
        this.runName = "run " + run.study() + "/" + run.id();
    }

    /**
     * Of a value that comes from a column or a reading.
     *
     * @param source the column or reading
     * @param unit of the source
     * @param ofSource how much of the value comes from it
     * @param offsetScale how much the value changes for an offset of one unit
     * @param resolutionScale the same for what the resolution hides
     */
    Contributions of(String source, Unit unit, double ofSource, double offsetScale, double resolutionScale) {
        return instrument(source)
                .map(i -> of(i, source, unit, ofSource, offsetScale, resolutionScale))
                .orElse(Contributions.NONE);
    }

    /** Of a background level, read with its own instrument if the run names one, else with that of the level itself. */
    Contributions ofBackground(String level, Unit unit, double backgroundDb) {
        return instrument(BACKGROUND)
                .or(() -> instrument(level))
                .map(i -> of(i, BACKGROUND, unit, backgroundDb, 1, 1))
                .orElse(Contributions.NONE);
    }

    private Contributions of(
            Instrument instrument,
            String source,
            Unit unit,
            double ofSource,
            double offsetScale,
            double resolutionScale) {
        double gain = instrument
                .accuracy()
                .map(accuracy -> TypeB.rectangular(accuracy.ofReading().doubleValue()))
                .orElse(0.0);
        double offset = instrument
                .accuracy()
                .flatMap(accuracy -> accuracy.fixed())
                .map(fixed -> TypeB.rectangular(in(unit, fixed, source, "accuracy", instrument)))
                .orElse(0.0);
        double resolution = instrument
                .resolution()
                .map(step -> TypeB.resolution(in(unit, step, source, "resolution", instrument)))
                .orElse(0.0);
        return Contributions.of(instrument.id() + " gain", gain * ofSource)
                .plus(Contributions.of(instrument.id() + " offset", offset * offsetScale))
                .plus(Contributions.of(
                        instrument.id() + " resolution, " + runName + ", " + source, resolution * resolutionScale));
    }

    /**
     * Of a quantity that was written with its own uncertainty: common to all that name the instrument, else the run's.
     *
     * @param what it is, "ambient" or the reading's name
     * @param uncertainty standard uncertainty of the value made of it, signed
     */
    Contributions asStated(String what, double uncertainty) {
        String owner = instrument(what).map(Instrument::id).orElse(runName);
        return Contributions.of(what + " as stated, " + owner, uncertainty);
    }

    /** Of a cause that is this run's alone. */
    Contributions own(String cause, String measurand, double uncertainty) {
        return Contributions.of(cause + ", " + runName + ", " + measurand, uncertainty);
    }

    private Optional<Instrument> instrument(String source) {
        return Optional.ofNullable(run.instruments().get(source)).map(instruments::get);
    }

    private double in(Unit unit, Quantity quantity, String source, String field, Instrument instrument) {
        if (quantity.unit().dimension().equals(unit.dimension())) {
            return quantity.differenceIn(unit);
        }
        Finding finding = Finding.fault(
                "unit-dimension",
                Severity.WITHHOLD,
                run.places().of("instruments/" + source),
                Subject.run(run.study(), run.id()),
                "the " + field + " of “" + instrument.id() + "” is in "
                        + quantity.unit().symbol() + ", but “" + source + "” is in " + unit.symbol(),
                "name the instrument that “" + source
                        + "” was read with, or write an instrument file for each quantity");
        if (!findings.contains(finding)) {
            findings.add(finding);
        }
        return 0;
    }
}
