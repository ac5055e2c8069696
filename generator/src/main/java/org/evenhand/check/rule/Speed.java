package org.evenhand.check.rule;

import org.evenhand.model.Measurand;
import org.evenhand.model.Reduction;
import org.evenhand.quantity.Dimension;
import org.evenhand.quantity.Unit;

/** Tells measurands of speed from others: rates, clocks, and what a workload counted or timed. */
final class Speed {

    private static final Dimension PER_TIME = Unit.of("1/s").dimension();
    private static final Dimension DATA_RATE = Unit.of("B/s").dimension();
    private static final Dimension TIME = Unit.of("s").dimension();

    private Speed() {}

    static boolean isOne(Measurand measurand) {
        Dimension dimension = measurand.unit().dimension();
        boolean worked = measurand.reduction() instanceof Reduction.Reading
                && (dimension.equals(TIME) || dimension.equals(Dimension.ONE));
        return worked || dimension.equals(PER_TIME) || dimension.equals(DATA_RATE);
    }
}
