package org.evenhand.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.evenhand.log.SampleSink;
import org.evenhand.log.Samples;
import org.evenhand.measure.RunValue.Missing;
import org.evenhand.model.Method;
import org.evenhand.model.Run;

/** Hands the samples of a log to all that wait for them. */
final class LogPass implements SampleSink {

    private final Run run;
    private final Method method;
    private List<Binding> bindings = List.of();
    private Map<String, Missing> missing = Map.of();
    private Reducer[] reducers = {};
    private Survey survey;

    LogPass(Run run, Method method) {
        this.run = run;
        this.method = method;
    }

    @Override
    public void begin(List<String> columns, boolean[] present) {
        Binder binder = new Binder(run, method, columns, present);
        bindings = binder.bindings();
        missing = binder.missing();
        survey = new Survey(columns, present);
        List<Reducer> all = new ArrayList<>();
        for (Binding binding : bindings) {
            all.add(binding.reducer());
            binding.approach().filter(approach -> approach != binding.reducer()).ifPresent(all::add);
        }
        reducers = all.toArray(new Reducer[0]);
    }

    @Override
    public void samples(Samples some) {
        survey.samples(some);
        for (Reducer reducer : reducers) {
            reducer.samples(some);
        }
    }

    /** Those that were tied to the log; empty before it was begun. */
    List<Binding> bindings() {
        return bindings;
    }

    /** Why others were not, by measurand. */
    Map<String, Missing> missing() {
        return missing;
    }

    /** What the log looks like; null before it was begun. */
    Survey survey() {
        return survey;
    }

    /** The second pass, for those that need one. */
    static SampleSink again(List<Reducer> reducers) {
        return new SampleSink() {
            @Override
            public void begin(List<String> columns, boolean[] present) {
                // All is known from the first pass.
            }

            @Override
            public void samples(Samples some) {
                for (Reducer reducer : reducers) {
                    reducer.samples(some);
                }
            }
        };
    }
}
