package org.evenhand.page.words;

import org.evenhand.model.Condition;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.model.Threshold;
import org.evenhand.quantity.Figures;

/** How a run yields a measurand, in a sentence. */
public final class Reductions {

    private Reductions() {}

    /** @param method which yields it, for the titles of what it is made from */
    public static String of(Measurand measurand, Method method) {
        Reduction reduction = measurand.reduction();
        if (reduction instanceof Reduction.Reading r) {
            return "Reading “" + Names.setting(r.reading()) + "”, noted once a run.";
        }
        if (reduction instanceof Reduction.Observation r) {
            return "Observation “" + Names.setting(r.reading()) + "”: yes, partly or no.";
        }
        if (reduction instanceof Reduction.OnScale r) {
            return "Judgement “" + Names.setting(r.reading()) + "” on the scale "
                    + String.join(", ", method.scales().get(r.scale())) + ".";
        }
        if (reduction instanceof Reduction.OfColumn r) {
            String what = Names.setting(r.column())
                    + r.minus().map(m -> " less " + Names.setting(m)).orElse("");
            return statistic(r.statistic(), what);
        }
        if (reduction instanceof Reduction.TimeUntil r) {
            return "Time from the start of the log until " + condition(r.condition())
                    + "; known only as a lower bound if that does not happen before the log ends.";
        }
        if (reduction instanceof Reduction.Share r) {
            return "Share of the time during which " + condition(r.condition()) + ".";
        }
        if (reduction instanceof Reduction.AmbientLimit r) {
            return "Stated limit “" + Names.setting(r.limit()) + "” of the item less " + inText(method, r.rise())
                    + ", of the same run: the ambient temperature at which that limit would just be reached, if the rise"
                    + " stays as it was.";
        }
        Reduction.Derived derived = (Reduction.Derived) reduction;
        String first = inText(method, derived.first());
        String second = inText(method, derived.second());
        return switch (derived.operation()) {
            case QUOTIENT -> "Quotient: " + first + " ÷ " + second + ", of the same run.";
            case PRODUCT -> "Product: " + first + " × " + second + ", of the same run.";
            case DIFFERENCE -> "Difference: " + first + " − " + second + ", of the same run.";
        };
    }

    private static String statistic(Reduction.Statistic statistic, String what) {
        if (statistic instanceof Reduction.Statistic.Settled settled) {
            return "Mean of " + what + " over the last " + Names.quantity(settled.window())
                    + " of the log, provided that it drifts by less than " + Names.quantity(settled.settledBelow())
                    + " within that time.";
        }
        if (statistic instanceof Reduction.Statistic.Percentile percentile) {
            return "Value that " + Figures.value(100 * percentile.share(), 0) + Figures.NO_BREAK_SPACE
                    + "% of the samples of " + what + " do not exceed.";
        }
        if (statistic instanceof Reduction.Statistic.Increase increase) {
            return "Increase of the counter " + what + " over the run"
                    + increase.wrapsAt()
                            .map(w -> ", which starts again from zero at " + Names.quantity(w))
                            .orElse("")
                    + ".";
        }
        return switch (statistic.word()) {
            case "mean" -> "Mean of " + what + " over time: its integral divided by the duration.";
            case "median" -> "Value that half of the samples of " + what + " do not exceed.";
            case "maximum" -> "Highest sample of " + what + ".";
            case "minimum" -> "Lowest sample of " + what + ".";
            case "integral" -> "Integral of " + what + " over time, by trapezoids between the samples.";
            case "asymptote" -> "Plateau of an exponential approach fitted to " + what + ".";
            case "level-mean" -> "Energetic mean of " + what + ": the mean of the powers, as a level.";
            default -> throw new IllegalArgumentException(statistic.word());
        };
    }

    private static String condition(Condition condition) {
        String dwell =
                condition.dwell().map(d -> " for at least " + Names.quantity(d)).orElse("");
        return "the " + Names.setting(condition.column()) + " is " + (condition.below() ? "below " : "above ")
                + threshold(condition.threshold()) + dwell;
    }

    private static String threshold(Threshold threshold) {
        if (threshold instanceof Threshold.Fixed fixed) {
            return Names.quantity(fixed.quantity());
        }
        Threshold.OfSetting of = (Threshold.OfSetting) threshold;
        return of.times().toPlainString() + " of the " + Names.setting(of.setting()) + " that was set";
    }

    private static String inText(Method method, String measurand) {
        Measurand of = method.measurands().get(measurand);
        return "“" + (of == null ? Names.setting(measurand) : of.title()) + "”";
    }
}
