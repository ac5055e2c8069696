package org.evenhand.command.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.evenhand.model.Hazard;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.quantity.Figures;

/**
 * What lies beside the bench while the runs are made.
 *
 * @param title the question, or what is planned
 * @param method by which they are made, where a folder says so
 * @param factor that is varied
 * @param runs in their order, with the ids that they will have
 * @param order how the order came about, in words
 * @param timeConstantS of the earlier runs' approach, where known
 * @param common settings that stay as they are
 */
record RunSheet(
        String title,
        Optional<Method> method,
        String factor,
        List<PlannedRun> runs,
        String order,
        OptionalDouble timeConstantS,
        Map<String, String> common) {

    /** After so many time constants less than one hundredth of a rise is left: e^−5 = 0.0067. */
    private static final double RESTS = 5;

    /** A run of the sheet and the id that it will have. */
    record PlannedRun(String id, Order.Slot slot) {}

    RunSheet {
        runs = List.copyOf(runs);
        common = java.util.Collections.unmodifiableMap(new java.util.TreeMap<>(common));
    }

    /** Gives the slots ids that no run of the study has. */
    static List<PlannedRun> named(List<Order.Slot> slots, Set<String> taken) {
        Set<String> used = new HashSet<>(taken);
        List<PlannedRun> runs = new ArrayList<>();
        for (Order.Slot slot : slots) {
            String base = slot.level()
                    .toLowerCase(Locale.ROOT)
                    .replaceAll("[^a-z0-9]+", "-")
                    .replaceAll("^-|-$", "");
            String cut = base.isEmpty() ? "run" : base.substring(0, Math.min(40, base.length()));
            int number = 1;
            while (!used.add(cut + "-" + number)) {
                number++;
            }
            runs.add(new PlannedRun(cut + "-" + number, slot));
        }
        return runs;
    }

    /** What to do between two runs. */
    String rest() {
        if (timeConstantS.isEmpty()) {
            return "Let the item rest between two runs until it is within 1 K of the room: its time constant is not known yet.";
        }
        double tauS = timeConstantS.getAsDouble();
        long restMin = Math.max(1, (long) Math.ceil(RESTS * tauS / 60));
        return "Rest at least " + restMin + " min between two runs: five time constants of "
                + Figures.at(tauS / 60, Figures.decimals(tauS / 60))
                + " min, as fitted to earlier runs. It may cool more slowly than it warms, so look that it is within"
                + " 1 K of the room before you begin.";
    }

    /** What to have done before the first run. */
    List<String> before() {
        List<String> steps = new ArrayList<>();
        steps.add("The clocks of logger and watch agree; the offset from UTC is known.");
        steps.add("Each instrument is in its file under instruments/, and its calibration is valid on the day.");
        common.forEach((name, value) -> steps.add("The same for all runs: " + name + " = " + value + "."));
        steps.add("Nothing but " + factor + " changes from run to run. Whatever does is written down.");
        return steps;
    }

    /** What to note at each run. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add("date and time of the start, with the offset from UTC");
        boolean ambient = method.map(Method::needsAmbient).orElse(true);
        if (ambient) {
            notes.add("temperature of the room at the start and at the end, with its uncertainty");
        }
        notes.add("how long the item has rested since its last load");
        method.ifPresent(m -> {
            m.runLength().ifPresent(l -> notes.add("how long the run lasted (the method says " + l + ")"));
            if (!m.records().isEmpty()) {
                notes.add("name of the log, which holds "
                        + String.join(", ", m.records().keySet()));
            }
            readings(m).forEach(r -> notes.add("reading: " + r));
            if (m.needsBackground()) {
                notes.add("background level at the same place, without the item");
            }
        });
        notes.add("how it ended: completed, stopped or failed, and why");
        notes.add("anything that was not as in the run before");
        return notes;
    }

    static List<String> readings(Method method) {
        List<String> readings = new ArrayList<>();
        for (Measurand measurand : method.measurands().values()) {
            if (measurand.reduction() instanceof Reduction.Reading r) {
                readings.add(r.reading());
            } else if (measurand.reduction() instanceof Reduction.Observation o) {
                readings.add(o.reading());
            } else if (measurand.reduction() instanceof Reduction.OnScale s) {
                readings.add(s.reading());
            }
        }
        return readings.stream().distinct().toList();
    }

    /** What can hurt somebody. */
    List<String> cautions() {
        return method.map(m -> m.hazards().stream().map(RunSheet::caution).toList())
                .orElse(List.of());
    }

    private static String caution(Hazard hazard) {
        return switch (hazard) {
            case HOT_SURFACE -> "Hot surface: let it cool before you touch it, and keep away what can scorch.";
            case MAINS ->
                "Mains: use closed, tested equipment and do not open it; wiring is for a licensed electrician.";
            case BATTERY -> "Battery: fuse the lead at the battery, cover the poles, stay near while it charges.";
            case RAISED_VOLTAGE ->
                "Raised voltage or clock: it can age or destroy the part; raise it in small steps and watch it.";
            case ROTATING_FAN -> "Rotating fan: keep fingers, hair and cables away, also while it runs down.";
            case LOUD_SOUND -> "Loud sound: wear hearing protection and keep the time short.";
        };
    }
}
