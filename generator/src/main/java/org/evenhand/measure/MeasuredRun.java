package org.evenhand.measure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.evenhand.log.ThinSeries;
import org.evenhand.model.Finding;
import org.evenhand.model.Run;
import org.evenhand.words.Phrase;

/**
 * A run with what was made of it.
 *
 * @param run as it was read
 * @param values by the measurands of its method, in the method's order
 * @param log what its log looks like; absent if it has none that can be used
 * @param series by column, thinned for drawing
 * @param means by column, in up to 256 blocks, for checks that look at the course of a run
 * @param settled by measurand that is reduced as settled: how its last window looked; only where the log fills it
 * @param approaches by measurand that is reduced as settled or asymptote: the fitted approach, where there is one
 * @param sha256 of the log's bytes, in hexadecimal; absent if there is no log or it could not be read
 * @param numbersFrom how many bytes of its unpacked log come before the first line, if all lines from there on hold nothing
 *     but plain numbers
 * @param findings what was wrong with the log, or with what the run says of it
 */
public record MeasuredRun(
        Run run,
        Map<String, RunValue> values,
        Optional<LogFacts> log,
        Map<String, ThinSeries> series,
        Map<String, BlockSeries> means,
        Map<String, SettledFacts> settled,
        Map<String, ApproachFacts> approaches,
        Optional<String> sha256,
        OptionalLong numbersFrom,
        List<Finding> findings) {

    public MeasuredRun {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        series = Collections.unmodifiableMap(new TreeMap<>(series));
        means = Collections.unmodifiableMap(new TreeMap<>(means));
        settled = Collections.unmodifiableMap(new TreeMap<>(settled));
        approaches = Collections.unmodifiableMap(new TreeMap<>(approaches));
        findings = List.copyOf(findings);
    }

    /** The value of a measurand; missing if the run's method has no such measurand. */
    public RunValue value(String measurand) {
        RunValue value = values.get(measurand);
        return value != null
                ? value
                : new RunValue.Missing("field-missing", Phrase.of("missing.no-measurand-of-run", measurand));
    }
}
