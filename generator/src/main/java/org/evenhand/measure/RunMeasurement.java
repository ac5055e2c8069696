package org.evenhand.measure;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.evenhand.log.LogOutcome;
import org.evenhand.log.LogReader;
import org.evenhand.measure.Reduced.Beyond;
import org.evenhand.measure.Reduced.Figure;
import org.evenhand.measure.Reduced.Refused;
import org.evenhand.measure.RunValue.AtLeast;
import org.evenhand.measure.RunValue.Missing;
import org.evenhand.model.Finding;
import org.evenhand.model.Instrument;
import org.evenhand.model.Item;
import org.evenhand.model.LogSource;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reading;
import org.evenhand.model.Reduction;
import org.evenhand.model.Run;
import org.evenhand.model.Subject;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.words.Phrase;
import org.evenhand.words.Words;

/** The measurement of one run. */
final class RunMeasurement {

    private static final Unit SECOND = Unit.of("s");

    private final Run run;
    private final Method method;
    private final Optional<Item> item;
    private final Words words;
    private final List<Finding> findings = new ArrayList<>();
    private final InstrumentErrors errors;
    private final Background background;
    private final Map<String, RunValue> ofLog = new HashMap<>();
    private final Map<String, RunValue> values = new LinkedHashMap<>();
    private final Map<String, SettledFacts> settled = new TreeMap<>();
    private final Map<String, ApproachFacts> approaches = new TreeMap<>();
    private Optional<Survey> survey = Optional.empty();
    private Optional<String> sha256 = Optional.empty();
    private OptionalLong numbersFrom = OptionalLong.empty();

    private RunMeasurement(
            Run run, Method method, Optional<Item> item, Map<String, Instrument> instruments, Words words) {
        this.run = run;
        this.method = method;
        this.item = item;
        this.words = words;
        this.errors = new InstrumentErrors(run, instruments, findings);
        this.background = new Background(run, method, errors);
    }

    static MeasuredRun of(
            Run run, Method method, Optional<Item> item, Map<String, Instrument> instruments, Path root, Words words) {
        return new RunMeasurement(run, method, item, instruments, words).measured(root);
    }

    /** A run whose method is not known. */
    static MeasuredRun without(Run run) {
        return new MeasuredRun(
                run,
                Map.of(),
                Optional.empty(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Optional.empty(),
                OptionalLong.empty(),
                List.of());
    }

    private MeasuredRun measured(Path root) {
        run.log().ifPresent(source -> readLog(root, source));
        for (Measurand measurand : method.measurands().values()) {
            if (measurand.reduction().parts().isEmpty()) {
                values.put(measurand.id(), direct(measurand));
            }
        }
        Map<String, RunValue> ordered = new LinkedHashMap<>();
        for (Measurand measurand : method.measurands().values()) {
            ordered.put(measurand.id(), value(measurand.id(), 0));
        }
        OptionalDouble maxGapS = method.maxGap().isPresent()
                ? OptionalDouble.of(method.maxGap().get().in(SECOND))
                : OptionalDouble.empty();
        return new MeasuredRun(
                run,
                ordered,
                survey.map(Survey::facts),
                survey.map(s -> s.series(maxGapS)).orElse(Map.of()),
                survey.map(Survey::means).orElse(Map.of()),
                settled,
                approaches,
                sha256,
                numbersFrom,
                findings);
    }

    private void readLog(Path root, LogSource source) {
        Subject subject = Subject.run(run.study(), run.id());
        LogPass pass = new LogPass(run, method);
        LogOutcome outcome = LogReader.read(root, source, method, subject, pass, words);
        findings.addAll(outcome.findings());
        numbersFrom = outcome.numbersFrom();
        sha256 = Optional.of(outcome.sha256()).filter(digest -> !digest.isEmpty());
        if (!outcome.usable()) {
            Missing why = outcome.findings().isEmpty()
                    ? new Missing("file-unreadable", Phrase.of("missing.log-unusable"))
                    : new Missing(
                            outcome.findings().get(0).rule(),
                            Phrase.of("missing.told", outcome.findings().get(0).message()));
            method.measurands().values().stream()
                    .filter(measurand -> Binder.needsLog(measurand.reduction()))
                    .forEach(measurand -> ofLog.put(measurand.id(), why));
            return;
        }
        survey = Optional.of(pass.survey());
        ofLog.putAll(pass.missing());
        List<Binding> bindings = new ArrayList<>();
        List<Reducer> again = new ArrayList<>();
        for (Binding binding : pass.bindings()) {
            Optional<Reducer> second = binding.reducer().again();
            second.ifPresent(again::add);
            bindings.add(second.map(binding::with).orElse(binding));
        }
        if (!again.isEmpty()) {
            LogReader.read(root, source, method, subject, LogPass.again(again), words);
        }
        for (int i = 0; i < bindings.size(); i++) {
            Binding binding = bindings.get(i);
            ofLog.put(binding.measurand().id(), value(binding));
            facts(binding, pass.bindings().get(i).reducer());
        }
    }

    /** What else is known of a reduction; asked after its result. */
    private void facts(Binding binding, Reducer first) {
        String id = binding.measurand().id();
        Unit unit = binding.measurand().unit();
        if (first instanceof Settled window) {
            window.facts().ifPresent(facts -> settled.put(id, facts.in(unit)));
        }
        binding.approach().flatMap(Approach::facts).ifPresent(facts -> approaches.put(id, facts.in(unit)));
    }

    private RunValue value(Binding binding) {
        Reduced reduced = binding.reducer().result();
        Unit unit = binding.measurand().unit();
        if (reduced instanceof Refused refused) {
            return new Missing(refused.rule(), refused.why());
        }
        if (reduced instanceof Beyond beyond) {
            return new AtLeast(binding.natural().to(unit).fast().apply(beyond.bound()), unit);
        }
        Figure figure = (Figure) reduced;
        double f = binding.natural().differenceTo(unit).fast().apply(1);
        return Values.known(
                binding.natural().to(unit).fast().apply(figure.value()),
                unit,
                figure.withinRun() * Math.abs(f),
                () -> contributions(binding, figure).scaled(f));
    }

    private Contributions contributions(Binding binding, Figure figure) {
        Contributions all = errors.of(
                binding.column(), binding.unit(), figure.ofColumn(), figure.offsetScale(), figure.resolutionScale());
        if (binding.minus().isPresent()) {
            all = all.minus(errors.of(
                    binding.minus().get(),
                    binding.unit(),
                    figure.ofMinus(),
                    figure.offsetScale(),
                    figure.resolutionScale()));
        } else if (binding.ambientStated()) {
            all = all.minus(ofAmbient(binding, figure));
        }
        return all.plus(errors.own(figure.cause(), binding.measurand().id(), figure.own()));
    }

    private Contributions ofAmbient(Binding binding, Figure figure) {
        Quantity ambient = run.ambient().orElseThrow();
        return ambient.expandedUncertainty().isPresent()
                ? errors.asStated("ambient", ambient.standardUncertaintyIn(binding.unit()) * figure.offsetScale())
                : errors.of(
                        "ambient", binding.unit(), figure.ofMinus(), figure.offsetScale(), figure.resolutionScale());
    }

    private RunValue direct(Measurand measurand) {
        Reduction reduction = measurand.reduction();
        if (reduction instanceof Reduction.Reading reading) {
            return background.takenOff(reading(reading.reading(), measurand.unit()), reading.reading());
        }
        if (reduction instanceof Reduction.Observation observation) {
            return reading(observation.reading(), measurand.unit());
        }
        if (reduction instanceof Reduction.OnScale onScale) {
            return reading(onScale.reading(), measurand.unit());
        }
        RunValue value = ofLog.get(measurand.id());
        if (value == null) {
            return new Missing("field-missing", Phrase.of("missing.no-log"));
        }
        return reduction instanceof Reduction.OfColumn of && of.minus().isEmpty()
                ? background.takenOff(value, of.column())
                : value;
    }

    private RunValue reading(String name, Unit unit) {
        Reading reading = run.readings().get(name);
        if (reading == null) {
            return new Missing("field-missing", Phrase.of("missing.no-reading", name));
        }
        if (reading instanceof Reading.NotReached bound) {
            Quantity at = bound.censored().bound();
            return at.unit().convertsTo(unit) ? new AtLeast(at.in(unit), unit) : unfit(name, at, unit);
        }
        if (!(reading instanceof Reading.Measured measured)) {
            return new RunValue.Noted(reading);
        }
        Quantity quantity = measured.quantity();
        if (!quantity.unit().convertsTo(unit)) {
            return unfit(name, quantity, unit);
        }
        double value = quantity.in(unit);
        return Values.known(value, unit, 0, () -> {
            boolean stated = quantity.expandedUncertainty().isPresent();
            return stated
                    ? errors.asStated(name, quantity.standardUncertaintyIn(unit))
                    : errors.of(name, unit, value, 1, 1);
        });
    }

    private static Missing unfit(String name, Quantity quantity, Unit unit) {
        return new Missing(
                "unit-dimension", Phrase.of("missing.reading-unit", name, quantity.toString(), unit.symbol()));
    }

    /** The value of a measurand; derived ones are made of others when they are first asked for. */
    private RunValue value(String id, int depth) {
        RunValue known = values.get(id);
        if (known != null) {
            return known;
        }
        Measurand measurand = method.measurands().get(id);
        RunValue made;
        if (measurand == null) {
            return new Missing("reference-unresolved", Phrase.of("missing.no-measurand", id));
        } else if (depth > method.measurands().size()) {
            made = new Missing("reference-unresolved", Phrase.of("missing.of-itself", id));
        } else if (MethodUnits.natural(method, measurand).isEmpty()) {
            made = new Missing("unit-dimension", Phrase.of("missing.unit-of-parts"));
        } else if (measurand.reduction() instanceof Reduction.AmbientLimit limit) {
            RunValue rise = value(limit.rise(), depth + 1);
            made = new HighestAmbient(run, method, item, values).of(limit, rise, measurand.unit());
        } else {
            Reduction.Derived derived = (Reduction.Derived) measurand.reduction();
            RunValue first = value(derived.first(), depth + 1);
            RunValue second = value(derived.second(), depth + 1);
            made = DerivedValue.of(derived, first, second, measurand.unit());
        }
        values.put(id, made);
        return made;
    }
}
