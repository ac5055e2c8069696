package org.evenhand.log;

import java.util.Set;
import java.util.TreeSet;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;

/** The columns without which a method's measurands cannot be had from a log. */
final class NeededColumns {

    private NeededColumns() {}

    /** By name, sorted. A column "ambient" that is taken off is not among them: the run may state it instead. */
    static Set<String> of(Method method) {
        Set<String> needed = new TreeSet<>();
        for (Measurand measurand : method.measurands().values()) {
            Reduction reduction = measurand.reduction();
            if (reduction instanceof Reduction.OfColumn ofColumn) {
                needed.add(ofColumn.column());
                ofColumn.minus().filter(minus -> !minus.equals("ambient")).ifPresent(needed::add);
            }
            reduction.watched().ifPresent(condition -> needed.add(condition.column()));
        }
        return needed;
    }
}
