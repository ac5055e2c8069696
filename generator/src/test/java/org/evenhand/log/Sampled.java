package org.evenhand.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Keeps every sample, for tests. */
final class Sampled implements SampleSink {

    final List<Double> times = new ArrayList<>();
    final List<double[]> rows = new ArrayList<>();
    boolean[] present = {};

    @Override
    public void begin(List<String> columns, boolean[] mask) {
        present = mask.clone();
    }

    @Override
    public void sample(double timeS, double[] row) {
        times.add(timeS);
        rows.add(row.clone());
    }

    /** "0.0 [21.4]; 1.0 [21.5]", with all digits. */
    @Override
    public String toString() {
        List<String> samples = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            samples.add(times.get(i) + " " + Arrays.toString(rows.get(i)));
        }
        return samples.stream().collect(Collectors.joining("; "));
    }
}
