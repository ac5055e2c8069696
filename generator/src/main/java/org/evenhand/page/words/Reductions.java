package org.evenhand.page.words;

import org.evenhand.model.Condition;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.model.Reduction;
import org.evenhand.model.Threshold;
import org.evenhand.quantity.Figures;
import org.evenhand.words.Words;

/** How a run yields a measurand, in a sentence. */
public final class Reductions {

    private Reductions() {}

    /**
     * @param method which yields it, for the titles of what it is made from
     * @param words of the language
     */
    public static String of(Measurand measurand, Method method, Words words) {
        Reduction reduction = measurand.reduction();
        if (reduction instanceof Reduction.Reading r) {
            return words.say("reduction.reading", Names.setting(r.reading()));
        }
        if (reduction instanceof Reduction.Observation r) {
            return words.say("reduction.observation", Names.setting(r.reading()));
        }
        if (reduction instanceof Reduction.OnScale r) {
            return words.say(
                    "reduction.judgement",
                    Names.setting(r.reading()),
                    String.join(", ", method.scales().get(r.scale())));
        }
        if (reduction instanceof Reduction.OfColumn r) {
            String column = Names.setting(r.column());
            String what = r.minus()
                    .map(m -> words.say("reduction.less", column, Names.setting(m)))
                    .orElse(column);
            return statistic(r.statistic(), what, words);
        }
        if (reduction instanceof Reduction.TimeUntil r) {
            return words.say("reduction.time-until", condition(r.condition(), words));
        }
        if (reduction instanceof Reduction.Share r) {
            return words.say("reduction.share", condition(r.condition(), words));
        }
        if (reduction instanceof Reduction.AmbientLimit r) {
            return words.say("reduction.ambient-limit", Names.setting(r.limit()), inText(method, r.rise(), words));
        }
        Reduction.Derived derived = (Reduction.Derived) reduction;
        String first = inText(method, derived.first(), words);
        String second = inText(method, derived.second(), words);
        return switch (derived.operation()) {
            case QUOTIENT -> words.say("reduction.quotient", first, second);
            case PRODUCT -> words.say("reduction.product", first, second);
            case DIFFERENCE -> words.say("reduction.difference", first, second);
        };
    }

    private static String statistic(Reduction.Statistic statistic, String what, Words words) {
        if (statistic instanceof Reduction.Statistic.Settled settled) {
            return words.say(
                    "reduction.settled",
                    what,
                    Names.quantity(settled.window(), words),
                    Names.quantity(settled.settledBelow(), words));
        }
        if (statistic instanceof Reduction.Statistic.Percentile percentile) {
            return words.say(
                    "reduction.percentile",
                    words.number(Figures.value(100 * percentile.share(), 0)) + Figures.NO_BREAK_SPACE + "%",
                    what);
        }
        if (statistic instanceof Reduction.Statistic.Increase increase) {
            return increase.wrapsAt()
                    .map(w -> words.say("reduction.increase-wraps", what, Names.quantity(w, words)))
                    .orElseGet(() -> words.say("reduction.increase", what));
        }
        return words.say("reduction." + statistic.word(), what);
    }

    private static String condition(Condition condition, Words words) {
        String met = words.say(
                condition.below() ? "reduction.below" : "reduction.above",
                Names.setting(condition.column()),
                threshold(condition.threshold(), words));
        return condition
                .dwell()
                .map(d -> words.say("reduction.dwell", met, Names.quantity(d, words)))
                .orElse(met);
    }

    private static String threshold(Threshold threshold, Words words) {
        if (threshold instanceof Threshold.Fixed fixed) {
            return Names.quantity(fixed.quantity(), words);
        }
        Threshold.OfSetting of = (Threshold.OfSetting) threshold;
        return words.say("reduction.of-setting", words.number(of.times().toPlainString()), Names.setting(of.setting()));
    }

    private static String inText(Method method, String measurand, Words words) {
        Measurand of = method.measurands().get(measurand);
        return words.say("reduction.measurand", of == null ? Names.setting(measurand) : of.title());
    }
}
