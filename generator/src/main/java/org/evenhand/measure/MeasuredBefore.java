package org.evenhand.measure;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.TreeMap;
import org.evenhand.cache.Cache;
import org.evenhand.log.ThinSeries;
import org.evenhand.model.Finding;
import org.evenhand.model.Instrument;
import org.evenhand.model.Method;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Run;
import org.evenhand.words.Words;

/** Measures runs, but for those that were measured before and have not changed since, nor anything they depend on. */
record MeasuredBefore(Cache cache, ResultsFolder folder, Path root) {

    /** What takes too long is cut short, which may turn out otherwise the next time. */
    private static final String CUT_SHORT = "size-limit";

    /** A measured run without the run. */
    record Kept(
            Map<String, RunValue> values,
            Optional<LogFacts> log,
            Map<String, ThinSeries> series,
            Map<String, BlockSeries> means,
            Map<String, SettledFacts> settled,
            Map<String, ApproachFacts> approaches,
            Optional<String> sha256,
            OptionalLong numbersFrom,
            List<Finding> findings) {

        static Kept of(MeasuredRun run) {
            return new Kept(
                    run.values(),
                    run.log(),
                    run.series(),
                    run.means(),
                    run.settled(),
                    run.approaches(),
                    run.sha256(),
                    run.numbersFrom(),
                    run.findings());
        }

        MeasuredRun with(Run run) {
            return new MeasuredRun(run, values, log, series, means, settled, approaches, sha256, numbersFrom, findings);
        }
    }

    MeasuredRun of(Run run) {
        Optional<String> key = key(run);
        Optional<Kept> known = key.flatMap(k -> cache.get(k, Kept.class));
        if (known.isPresent()) {
            return known.get().with(run);
        }
        MeasuredRun measured =
                Measurements.measure(run, folder.methods(), folder.items(), folder.instruments(), root, words());
        boolean whole =
                measured.findings().stream().noneMatch(finding -> finding.rule().equals(CUT_SHORT));
        // Again, since the log may have been written to meanwhile: the key must be that of what was read.
        key.filter(k -> whole
                        && measured.sha256().flatMap(sha256 -> key(run, sha256)).equals(key))
                .ifPresent(k -> cache.put(k, Kept.of(measured)));
        return measured;
    }

    /** What is wrong with a log is told in the language of the publication. */
    private Words words() {
        return Words.of(folder.publication());
    }

    /** Nothing for a run without a log, which takes no time, and for one whose log cannot be read. */
    private Optional<String> key(Run run) {
        if (cache.keepsNothing() || run.log().isEmpty()) {
            return Optional.empty();
        }
        try {
            return key(run, cache.sha256(root.resolve(run.log().get().file())));
        } catch (IOException | InvalidPathException e) {
            return Optional.empty();
        }
    }

    private Optional<String> key(Run run, String sha256) {
        Method method = folder.methods().get(run.method());
        SortedMap<String, Instrument> instruments = new TreeMap<>();
        run.instruments().values().stream()
                .filter(folder.instruments()::containsKey)
                .forEach(id -> instruments.put(id, folder.instruments().get(id)));
        return Optional.of(cache.key(
                "measured run",
                run,
                Optional.ofNullable(method),
                Optional.ofNullable(folder.items().get(run.item())),
                instruments,
                words().language(),
                sha256));
    }
}
