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
    public void samples(Samples some) {
        for (int i = 0; i < some.size(); i++) {
            times.add(some.timesS()[i]);
            double[] row = new double[present.length];
            for (int column = 0; column < row.length; column++) {
                row[column] = some.column(column)[i];
            }
            rows.add(row);
        }
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
