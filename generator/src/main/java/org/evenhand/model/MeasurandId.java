package org.evenhand.model;

import java.util.Comparator;

/**
 * A measurand of a method.
 *
 * @param method the method's id
 * @param measurand the measurand's id within it
 */
public record MeasurandId(String method, String measurand) implements Comparable<MeasurandId> {

    private static final Comparator<MeasurandId> ORDER =
            Comparator.comparing(MeasurandId::method).thenComparing(MeasurandId::measurand);

    @Override
    public int compareTo(MeasurandId other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return method + "/" + measurand;
    }
}
