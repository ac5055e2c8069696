package org.evenhand.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import org.evenhand.model.Condition;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Place;
import org.evenhand.model.Reduction;
import org.evenhand.model.Reduction.Statistic;
import org.evenhand.model.Threshold;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/** Checks what a method's measurands say of its columns, scales and each other. */
final class MethodLinker {

    private final Faults faults;

    MethodLinker(Faults faults) {
        this.faults = faults;
    }

    /** Takes out the methods that contradict themselves. */
    void link(SortedMap<String, Method> methods, SortedSet<String> broken) {
        for (Method method : List.copyOf(methods.values())) {
            int before = faults.count();
            method.measurands().values().forEach(m -> check(method, m));
            if (faults.count() > before) {
                methods.remove(method.id());
                broken.add("methods/" + method.id());
            }
        }
    }

    private void check(Method method, Measurand measurand) {
        String path = "measurands/" + measurand.id();
        Reduction reduction = measurand.reduction();
        if (reduction instanceof Reduction.OnScale onScale) {
            if (!method.scales().containsKey(onScale.scale())) {
                unresolved(
                        method,
                        path + "/scale",
                        "scale",
                        onScale.scale(),
                        new ArrayList<>(method.scales().keySet()));
            }
        } else if (reduction instanceof Reduction.OfColumn ofColumn) {
            checkColumn(method, path + "/column", ofColumn.column());
            ofColumn.minus().filter(m -> !m.equals("ambient")).ifPresent(m -> checkColumn(method, path + "/minus", m));
            if (ofColumn.statistic() instanceof Statistic.Settled settled
                    && method.records().containsKey(ofColumn.column())) {
                checkConverts(
                        method,
                        path + "/settled-below",
                        settled.settledBelow(),
                        method.records().get(ofColumn.column()).ofDifference());
            }
        } else if (reduction.watched().isPresent()) {
            check(method, path, reduction.watched().get());
        } else if (reduction instanceof Reduction.AmbientLimit limit) {
            checkParts(method, measurand, path + "/rise", limit.parts());
        } else {
            checkParts(method, measurand, path + "/of", reduction.parts());
        }
    }

    private void check(Method method, String path, Condition condition) {
        checkColumn(method, path + "/column", condition.column());
        Unit unit = method.records().get(condition.column());
        if (unit != null && condition.threshold() instanceof Threshold.Fixed fixed) {
            checkConverts(method, path + (condition.below() ? "/below" : "/above"), fixed.quantity(), unit);
        }
    }

    private void checkColumn(Method method, String path, String column) {
        if (!method.records().containsKey(column)) {
            unresolved(
                    method,
                    path,
                    "column",
                    column,
                    new ArrayList<>(method.records().keySet()));
        }
    }

    private void checkConverts(Method method, String path, Quantity quantity, Unit unit) {
        if (!quantity.unit().convertsTo(unit)) {
            faults.doesNotConvert(
                    method.places().of(path),
                    quantity,
                    unit,
                    "“" + quantity + "” cannot be held against values in " + unit.symbol());
        }
    }

    private void checkParts(Method method, Measurand measurand, String path, List<String> parts) {
        for (String part : parts) {
            Measurand found = method.measurands().get(part);
            if (found == null) {
                unresolved(
                        method,
                        path,
                        "measurand",
                        part,
                        new ArrayList<>(method.measurands().keySet()));
            } else if (!found.isNumeric()) {
                faults.add(
                        Rules.UNIT_DIMENSION,
                        method.places().of(path),
                        "“" + part + "” is a judgement, not a number",
                        "derive from numbers only");
            } else if (dependsOn(method, part, measurand.id(), new HashSet<>())) {
                faults.add(
                        Rules.REFERENCE_UNRESOLVED,
                        method.places().of(path),
                        "“" + measurand.id() + "” would be derived from itself",
                        "derive it from measurands that do not depend on it");
            }
        }
    }

    private static boolean dependsOn(Method method, String id, String wanted, Set<String> seen) {
        if (id.equals(wanted)) {
            return true;
        }
        Measurand measurand = method.measurands().get(id);
        return measurand != null
                && seen.add(id)
                && measurand.reduction().parts().stream().anyMatch(part -> dependsOn(method, part, wanted, seen));
    }

    private void unresolved(Method method, String path, String what, String name, List<String> known) {
        Place place = method.places().of(path);
        faults.add(
                Rules.REFERENCE_UNRESOLVED,
                place,
                "the method has no " + what + " “" + name + "”",
                NearMiss.suggestion(name, known));
    }
}
