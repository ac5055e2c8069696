package org.evenhand.page.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.measure.RunValue;
import org.evenhand.model.Instrument;
import org.evenhand.model.Measurand;
import org.evenhand.model.Method;
import org.evenhand.page.view.RunSource;
import org.evenhand.page.words.Causes;
import org.evenhand.page.words.Names;
import org.evenhand.quantity.Figures;
import org.evenhand.quantity.Unit;
import org.evenhand.words.Words;

/** What the standard uncertainties of one run's values are made of, the largest source of each first. */
final class RunSources {

    private RunSources() {}

    private record Part(String source, double u) {}

    static List<RunSource> of(MeasuredRun measured, Method method, Map<String, Instrument> instruments, Words words) {
        List<RunSource> sources = new ArrayList<>();
        for (Measurand measurand : method.measurands().values()) {
            if (measured.value(measurand.id()) instanceof RunValue.Known known && known.standardUncertainty() > 0) {
                add(measurand, known, instruments, sources, words);
            }
        }
        return sources;
    }

    private static void add(
            Measurand measurand,
            RunValue.Known known,
            Map<String, Instrument> instruments,
            List<RunSource> sources,
            Words words) {
        List<Part> parts = new ArrayList<>();
        if (known.withinRun() > 0) {
            parts.add(new Part(words.say("log.scatter"), known.withinRun()));
        }
        known.contributions()
                .byCause()
                .forEach((cause, u) -> parts.add(new Part(Causes.words(cause, instruments, words), Math.abs(u))));
        parts.sort(Comparator.comparingDouble((Part p) -> -p.u()).thenComparing(Part::source));
        double combined = known.standardUncertainty();
        // One place more than the combined uncertainty is written with, so that parts add up to it visibly.
        int decimals = Figures.decimals(combined) + 1;
        Unit unit = known.unit().ofDifference();
        for (Part part : parts) {
            sources.add(new RunSource(
                    measurand.title(),
                    unit.isOne() ? "" : Names.unit(unit.symbol(), words),
                    part.source(),
                    words.number(smallest(part.u(), decimals)),
                    words.number(percent(part.u() / combined))));
        }
    }

    private static String smallest(double u, int decimals) {
        double step = StrictMath.pow(10, -decimals);
        return u < step / 2
                ? "<" + Figures.NO_BREAK_SPACE + Figures.at(step, decimals)
                : Figures.uncertaintyAt(u, decimals);
    }

    private static String percent(double shareOfUncertainty) {
        double share = 100 * shareOfUncertainty * shareOfUncertainty;
        String written = share < 0.05 ? "<" + Figures.NO_BREAK_SPACE + "0.1" : Figures.at(share, share > 99.95 ? 0 : 1);
        return written + Figures.NO_BREAK_SPACE + "%";
    }
}
