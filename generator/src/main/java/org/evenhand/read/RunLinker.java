package org.evenhand.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.evenhand.model.Item;
import org.evenhand.model.Limits;
import org.evenhand.model.LogSource;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Place;
import org.evenhand.model.Reading;
import org.evenhand.model.Reduction;
import org.evenhand.model.Run;
import org.evenhand.model.Study;
import org.evenhand.quantity.Censored;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;

/** Binds the runs of a study, once items, methods and instruments are known. */
final class RunLinker {

    private final Named known;
    private final FolderPaths paths;
    private final Limits limits;
    private final Faults faults;

    RunLinker(Named known, FolderPaths paths, Limits limits, Faults faults) {
        this.known = known;
        this.paths = paths;
        this.limits = limits;
        this.faults = faults;
    }

    Study bind(Document study, List<Document> documents) {
        Fields f = study.fields();
        String id = f.text("study");
        List<Run> runs = new ArrayList<>();
        for (Document document : documents) {
            runs.add(bind(document, id, f));
        }
        return StudyFile.bind(f, study.body(), study.bodyLine(), runs);
    }

    private Run bind(Document document, String study, Fields studyFields) {
        Fields f = document.fields();
        checkMethod(f, studyFields);
        checkItem(f);
        checkLevel(f, studyFields);
        f.textByName("instruments")
                .forEach((name, instrument) ->
                        known.isKnown("instruments", instrument, f.places().of("instruments/" + name), faults));
        Method method = known.methods().get(f.text("method"));
        Map<String, Reading> readings = method == null ? Map.of() : readings(f, method);
        return RunFile.bind(f, study, readings, log(document));
    }

    private void checkMethod(Fields f, Fields study) {
        Place place = f.places().of("method");
        String method = f.text("method");
        if (known.isKnown("methods", method, place, faults)) {
            List<String> methods = study.has("method") ? List.of(study.text("method")) : study.texts("methods");
            if (!methods.contains(method)) {
                faults.add(
                        Rules.REFERENCE_UNRESOLVED,
                        place,
                        "the study is done by " + String.join(", ", methods) + ", but this run by “" + method + "”",
                        "name the method in study.md, or move the run to its own study");
            }
        }
    }

    private void checkItem(Fields f) {
        if (!known.isKnown("items", f.text("item"), f.places().of("item"), faults)) {
            return;
        }
        Item item = known.items().get(f.text("item"));
        Optional<String> specimen = f.optionalText("specimen");
        if (specimen.isPresent() && !item.specimens().contains(specimen.get())) {
            faults.add(
                    Rules.REFERENCE_UNRESOLVED,
                    f.places().of("specimen"),
                    "“" + item.name() + "” has no specimen “" + specimen.get() + "”",
                    NearMiss.suggestion(specimen.get(), item.specimens()));
        }
    }

    private void checkLevel(Fields f, Fields study) {
        String factor = study.text("factor");
        List<String> levels = study.texts("levels");
        boolean isSetting = !factor.equals("item") && !factor.equals("specimen");
        String path = isSetting ? "settings/" + factor : factor;
        Map<String, String> settings = f.textByName("settings");
        String level = isSetting ? settings.get(factor) : f.optionalText(factor).orElse(null);
        if (level == null) {
            faults.add(
                    Rules.FIELD_MISSING,
                    f.places().of(isSetting ? "settings" : factor),
                    "the run does not say its " + factor + ", which is what the study varies",
                    "add it; the levels are: " + String.join(", ", levels));
        } else if (!levels.contains(level)) {
            faults.add(
                    Rules.REFERENCE_UNRESOLVED,
                    f.places().of(path),
                    "“" + level + "” is not one of the study's levels of " + factor,
                    NearMiss.suggestion(level, levels));
        }
    }

    private LogSource log(Document document) {
        Fields f = document.fields();
        if (!f.has("log")) {
            return null;
        }
        Optional<String> file = paths.resolve(document.file(), (Node.Text) f.node("log"), faults);
        if (file.isEmpty()) {
            return null;
        }
        if (!paths.isFile(file.get())) {
            faults.add(
                    Rules.REFERENCE_UNRESOLVED,
                    f.places().of("log"),
                    "there is no log “" + file.get() + "”",
                    "check the name, capitals included; the path is relative to this file");
            return null;
        }
        String separator = f.optionalText("separator").orElse(",");
        return new LogSource(
                file.get(),
                RunFile.columns(f),
                separator.equals("tab") ? '\t' : separator.charAt(0),
                f.optionalText("decimal").orElse(".").charAt(0),
                limits);
    }

    private Map<String, Reading> readings(Fields f, Method method) {
        Map<String, Reading> result = new LinkedHashMap<>();
        if (!f.has("readings")) {
            return result;
        }
        Map<String, Measurand> byReading = new LinkedHashMap<>();
        for (Measurand measurand : method.measurands().values()) {
            readingOf(measurand).ifPresent(name -> byReading.putIfAbsent(name, measurand));
        }
        ((Node.Mapping) f.node("readings")).entries().forEach((name, entry) -> {
            Measurand measurand = byReading.get(name);
            Set<String> names = new LinkedHashSet<>(byReading.keySet());
            if (measurand == null) {
                faults.add(
                        Rules.REFERENCE_UNRESOLVED,
                        entry.key(),
                        "the method “" + method.id() + "” has no measurand that is read as “" + name + "”",
                        NearMiss.suggestion(name, names));
                return;
            }
            reading((Node.Text) entry.value(), measurand, method).ifPresent(r -> result.put(name, r));
        });
        return result;
    }

    private static Optional<String> readingOf(Measurand measurand) {
        Reduction reduction = measurand.reduction();
        if (reduction instanceof Reduction.Reading r) {
            return Optional.of(r.reading());
        }
        if (reduction instanceof Reduction.Observation o) {
            return Optional.of(o.reading());
        }
        return reduction instanceof Reduction.OnScale s ? Optional.of(s.reading()) : Optional.empty();
    }

    private Optional<Reading> reading(Node.Text text, Measurand measurand, Method method) {
        if (measurand.reduction() instanceof Reduction.Observation) {
            return word(text, List.of("yes", "no", "partly"))
                    .map(w -> Reading.Observed.valueOf(w.toUpperCase(Locale.ROOT)));
        }
        if (measurand.reduction() instanceof Reduction.OnScale onScale) {
            List<String> scale = method.scales().get(onScale.scale());
            return word(text, scale).map(w -> new Reading.OnScale(w, scale.indexOf(w)));
        }
        try {
            return Optional.of(
                    Censored.isWritten(text.value())
                            ? new Reading.NotReached(Censored.parse(text.value(), measurand.unit()))
                            : new Reading.Measured(Quantity.parse(text.value(), measurand.unit())));
        } catch (MisreadException e) {
            faults.add(text, e);
            return Optional.empty();
        }
    }

    private Optional<String> word(Node.Text text, List<String> words) {
        if (words.contains(text.value())) {
            return Optional.of(text.value());
        }
        faults.add(
                Rules.FIELD_MALFORMED,
                text.place(),
                "“" + text.value() + "” is none of: " + String.join(", ", words),
                NearMiss.suggestion(text.value(), words));
        return Optional.empty();
    }
}
