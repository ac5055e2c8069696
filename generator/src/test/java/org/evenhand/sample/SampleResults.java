package org.evenhand.sample;

import java.io.IOException;
import java.nio.file.Path;

/** Writes the run files and logs of the sample into a results folder; the files written by hand are left alone. */
public final class SampleResults {

    private SampleResults() {}

    /** @param arguments the results folder to write into */
    public static void main(String[] arguments) throws IOException {
        write(Path.of(arguments[0]));
    }

    static void write(Path results) throws IOException {
        HeatSpreaderRuns.write(results);
        BatteryRuns.write(results);
        CableRuns.write(results);
        RaisedClockRuns.write(results);
        FanNoiseRuns.write(results);
        YieldRuns.write(results);
        NightRuns.write(results);
        SupplyRuns.write(results);
        TaskRuns.write(results);
    }
}
