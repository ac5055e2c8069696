package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.Counts;
import org.evenhand.compare.LevelSummary;
import org.evenhand.model.Comparison;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Method;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Entry;
import org.evenhand.page.view.Link;
import org.evenhand.page.words.Reductions;
import org.evenhand.quantity.UnitKind;

/** How the figures of a page were computed, in the words of the project's page on methods; what is not on the page is left out. */
final class MethodNotes {

    private MethodNotes() {}

    static List<Entry> of(Answer answer) {
        List<Entry> notes = new ArrayList<>();
        for (Method method : answer.methods()) {
            notes.add(new Entry(
                    "Test method",
                    List.of(Link.to(method.title() + ", version " + method.version(), Address.method(method.id()))),
                    ""));
        }
        for (MeasurandId id : answer.study().measurands()) {
            Method method = answer.folder().methods().get(id.method());
            notes.add(Entry.of(
                    answer.names().title(id),
                    Reductions.of(
                            answer.names().measurand(id),
                            method,
                            answer.context().words())));
        }
        if (!answer.counting().isEmpty()) {
            levels(answer, notes);
            comparisons(answer, notes);
        }
        return notes;
    }

    private static void levels(Answer answer, List<Entry> notes) {
        List<LevelSummary> summaries = answer.evidence().summaries();
        Set<Counts> counts = new TreeSet<>();
        summaries.stream().filter(s -> s.n() > 0 && s.words().isEmpty()).forEach(s -> counts.add(s.counts()));
        if (counts.contains(Counts.SPECIMENS)) {
            notes.add(note(
                    "What n counts",
                    "Specimens, where a level has two or more: each specimen’s mean is one value. Repeats on one specimen"
                            + " say nothing about others."));
        } else if (counts.contains(Counts.RUNS)) {
            notes.add(note(
                    "What n counts", "Runs: one specimen took part, and the figures speak for that specimen only."));
        }
        if (summaries.stream().anyMatch(s -> s.interval().isPresent())) {
            notes.add(note(
                    "Mean with its interval",
                    "Student t, 95 %, two-sided. Type A is the standard deviation, divisor n − 1, over √n; type B comes"
                            + " from the instruments’ limits of error, taken as rectangular (÷ √3). They are combined after"
                            + " the GUM (JCGM 100) with the degrees of freedom of Welch and Satterthwaite."));
        }
        if (summaries.stream().anyMatch(s -> s.median().isPresent())) {
            notes.add(note(
                    "Median with its interval",
                    "Between two of the values in their order, with a chance of at least 95 % whatever their law; exists from"
                            + " six values."));
        }
        if (summaries.stream().anyMatch(s -> s.mean().isPresent() && s.unit().kind() == UnitKind.LEVEL)) {
            notes.add(note(
                    "Mean of levels",
                    "10 lg of the mean of 10^(L/10), the energetic mean; its uncertainty is that of the mean energy, to first"
                            + " order."));
        }
        if (summaries.stream().anyMatch(s -> s.outlier().isPresent())) {
            notes.add(note("Suspected outliers", "Grubbs’ test, two-sided, 5 %: reported, never removed."));
        }
    }

    private static void comparisons(Answer answer, List<Entry> notes) {
        Set<Comparison.Kind> kinds = new TreeSet<>();
        boolean paired = false;
        boolean margin = false;
        long tests = 0;
        for (ComparisonResult result : answer.evidence().comparisons()) {
            if (!answer.isRefused(result)) {
                kinds.add(result.plan().kind());
                paired |= result.plan().pairedBy().isPresent();
                margin |= result.plan().sameWithin().isPresent();
                tests += result.p().isPresent() ? 1 : 0;
            }
        }
        for (Comparison.Kind kind : kinds) {
            notes.add(kind(kind));
        }
        if (paired) {
            notes.add(note("Pairs", "Student’s t on the differences within pairs, n − 1 degrees of freedom."));
        }
        if (margin) {
            notes.add(note(
                    "The same, within a margin",
                    "Two one-sided tests at 5 % each: the 90 % interval lies inside the margin. The margin m of a ratio runs"
                            + " from 1/(1 + m) to 1 + m, symmetric on the log scale."));
        }
        if (tests > 1) {
            notes.add(note(
                    "Several comparisons",
                    "p after Holm over the " + tests
                            + " tests of this page, which keeps the chance of any false alarm at 5 %."
                            + " The intervals printed are those of single comparisons."));
        }
    }

    private static Entry kind(Comparison.Kind kind) {
        return switch (kind) {
            case DIFFERENCE ->
                note(
                        "Difference",
                        "Difference of means with the fractional degrees of freedom of Welch. Of one instrument on both"
                                + " sides an offset cancels, and a gain error scales with the difference; of two instruments"
                                + " neither cancels.");
            case RATIO ->
                note(
                        "Ratio",
                        "Ratio of arithmetic means. Its interval is the set of ratios that a Welch test does not reject, so"
                                + " that it holds 1 exactly when the interval of the difference holds 0. A percentage is"
                                + " (ratio − 1) × 100 of the base named.");
            case TREND ->
                note(
                        "Trend",
                        "Least squares line through the values that n counts. The exponent is the slope of the logarithms;"
                                + " 1 is proportion. Scaling efficiency is the ratio of results over the ratio of the factor.");
            case TIME_UNTIL ->
                note(
                        "Times until an event",
                        "Kaplan–Meier; the median is the first time with half or fewer left. Times cut off by the end of the"
                                + " run count as watched until then. Levels are told apart by the log-rank test, exact by"
                                + " permutation while there are at most 10 000 arrangements.");
            case PROPORTION ->
                note(
                        "Share",
                        "Interval of Clopper and Pearson, 95 % with 2.5 % in each tail. A specimen counts as a success if every"
                                + " run of it was one.");
            case FAILURE_RATE ->
                note(
                        "Failure rate",
                        "Exact Poisson for a test stopped by time. Without a failure, the one-sided 95 % upper bound −ln 0.05"
                                + " ÷ time. Assumes a constant rate: wearing out is not described.");
            case GEOMETRIC_MEAN ->
                note(
                        "Geometric mean",
                        "Mean of the logarithms of the ratios; the interval combines their standard errors on the log scale."
                                + " It speaks for these workloads only.");
        };
    }

    private static Entry note(String label, String text) {
        return new Entry(label, List.of(Link.plain(text.replace(" %", "\u00a0%"))), "");
    }
}
