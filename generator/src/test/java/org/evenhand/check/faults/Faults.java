package org.evenhand.check.faults;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** The faults that are planted, one at a time, and the rule that has to find each. */
final class Faults {

    private Faults() {}

    /**
     * One fault.
     *
     * @param name what somebody did
     * @param rule that has to find it
     * @param kind of study it is planted in
     * @param plant does it
     */
    record Fault(String name, String rule, Sound kind, Consumer<TextFolder> plant) {
        @Override
        public String toString() {
            return name + " → " + rule;
        }
    }

    static List<Fault> all() {
        return Stream.concat(WrittenFaults.all().stream(), MeasuredFaults.all().stream())
                .toList();
    }
}
