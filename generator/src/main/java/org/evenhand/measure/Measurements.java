package org.evenhand.measure;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.evenhand.cache.Cache;
import org.evenhand.model.Finding;
import org.evenhand.model.Instrument;
import org.evenhand.model.Item;
import org.evenhand.model.Method;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Run;
import org.evenhand.model.Study;
import org.evenhand.model.Subject;
import org.evenhand.words.Words;

/**
 * The values of all runs of a results folder.
 *
 * @param byStudy by study and run
 * @param findings what was wrong with methods, logs and instruments, sorted
 */
public record Measurements(SortedMap<String, SortedMap<String, MeasuredRun>> byStudy, List<Finding> findings) {

    public Measurements {
        SortedMap<String, SortedMap<String, MeasuredRun>> copy = new TreeMap<>();
        byStudy.forEach((study, runs) -> copy.put(study, Collections.unmodifiableSortedMap(new TreeMap<>(runs))));
        byStudy = Collections.unmodifiableSortedMap(copy);
        findings = List.copyOf(findings);
    }

    /**
     * Measures every run, several at a time; what comes out does not depend on how many.
     *
     * @param folder what was read
     * @param root where it lies, to find the logs
     */
    public static Measurements measure(ResultsFolder folder, Path root) {
        return measure(folder, root, Cache.none(), run -> {});
    }

    /**
     * As {@link #measure(ResultsFolder, Path)}, and tells of each run when it is done.
     *
     * @param cache holds what came of runs that were measured before
     * @param done called from several threads at a time, in no particular order
     */
    public static Measurements measure(ResultsFolder folder, Path root, Cache cache, Consumer<MeasuredRun> done) {
        MeasuredBefore before = new MeasuredBefore(cache, folder, root);
        List<Run> runs = Stream.concat(
                        folder.studies().values().stream().flatMap(study -> study.runs().stream()),
                        folder.brokenRuns().stream())
                .toList();
        List<MeasuredRun> measured = runs.parallelStream()
                .map(run -> {
                    MeasuredRun one = before.of(run);
                    done.accept(one);
                    return one;
                })
                .toList();
        SortedMap<String, SortedMap<String, MeasuredRun>> byStudy = new TreeMap<>();
        folder.studies().keySet().forEach(study -> byStudy.put(study, new TreeMap<>()));
        List<Finding> findings = new ArrayList<>(ofMethods(folder));
        for (MeasuredRun one : measured) {
            if (byStudy.containsKey(one.run().study())) {
                byStudy.get(one.run().study()).put(one.run().id(), one);
            }
            findings.addAll(one.findings());
        }
        findings.sort(null);
        return new Measurements(byStudy, findings);
    }

    /**
     * Measures one run: a pure function of what is given and of the bytes of its log.
     *
     * @param run with its method among those given; one without has no values
     * @param root of the results folder
     * @param words in which it is told what is wrong with the log
     */
    public static MeasuredRun measure(
            Run run,
            Map<String, Method> methods,
            Map<String, Item> items,
            Map<String, Instrument> instruments,
            Path root,
            Words words) {
        Method method = methods.get(run.method());
        return method == null
                ? RunMeasurement.without(run)
                : RunMeasurement.of(run, method, Optional.ofNullable(items.get(run.item())), instruments, root, words);
    }

    /** A run with its values. */
    public Optional<MeasuredRun> of(String study, String run) {
        return Optional.ofNullable(byStudy.get(study)).map(runs -> runs.get(run));
    }

    /** The units of each method, for each study that uses it. */
    private static List<Finding> ofMethods(ResultsFolder folder) {
        List<Finding> findings = new ArrayList<>();
        for (Study study : folder.studies().values()) {
            for (String id : new TreeSet<>(study.methods())) {
                Method method = folder.methods().get(id);
                if (method != null) {
                    findings.addAll(MethodUnits.check(method, Subject.study(study.id())));
                }
            }
        }
        return findings;
    }
}
