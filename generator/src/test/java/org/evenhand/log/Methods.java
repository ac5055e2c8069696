package org.evenhand.log;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenhand.model.Better;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Place;
import org.evenhand.model.Places;
import org.evenhand.model.Reduction;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/** Small methods for tests. */
public final class Methods {

    public static final Places NOWHERE = new Places(Place.of("methods/soak.md"), Map.of());

    private Methods() {}

    /** @param records names and units, one after the other */
    public static Method recording(String... records) {
        return with(Optional.empty(), List.of(), records);
    }

    public static Method with(Optional<Quantity> maxGap, List<Measurand> measurands, String... records) {
        return with(maxGap, false, measurands, records);
    }

    /** @param needsBackground whether a background reading belongs to each run */
    public static Method with(
            Optional<Quantity> maxGap, boolean needsBackground, List<Measurand> measurands, String... records) {
        return with(maxGap, needsBackground, Optional.empty(), measurands, records);
    }

    /** @param cooling whether the cooling is fixed, where the method says so */
    public static Method with(
            Optional<Quantity> maxGap,
            boolean needsBackground,
            Optional<Method.Cooling> cooling,
            List<Measurand> measurands,
            String... records) {
        Map<String, Unit> columns = new LinkedHashMap<>();
        for (int i = 0; i < records.length; i += 2) {
            columns.put(records[i], Unit.of(records[i + 1]));
        }
        Map<String, Measurand> byId = new LinkedHashMap<>();
        measurands.forEach(measurand -> byId.put(measurand.id(), measurand));
        return new Method(
                "soak",
                "1",
                "Soak",
                Optional.empty(),
                List.of(),
                Map.of(),
                columns,
                byId,
                Map.of(),
                Map.of(),
                true,
                Optional.empty(),
                cooling,
                maxGap,
                needsBackground,
                "",
                1,
                NOWHERE);
    }

    public static Measurand measurand(String id, Reduction reduction, String unit) {
        return new Measurand(id, id, reduction, Unit.of(unit), Better.NEITHER, false);
    }

    public static Measurand mean(String column, String unit) {
        return measurand(
                "mean-" + column,
                new Reduction.OfColumn(new Reduction.Statistic.Mean(), column, Optional.empty()),
                unit);
    }
}
