package org.evenhand.command.plan;

import java.io.PrintStream;
import java.util.OptionalInt;
import org.evenhand.command.UnusableException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.PoissonRate;
import org.evenhand.statistics.Proportion;
import org.evenhand.statistics.SuccessSize;
import picocli.CommandLine.Option;

/** Plans for shares of specimens, and for failures over time. */
final class Rare {

    private static final Unit HOUR = Unit.of("h");
    private static final Unit PER_HOUR = Unit.of("/h");

    @Option(
            names = "--at-least",
            paramLabel = "SHARE",
            description = "trials needed to show that at least this share succeeds: \"95 %%\"")
    private String atLeast;

    @Option(names = "--failures", paramLabel = "K", description = "that happen nevertheless [0]")
    private int failures;

    @Option(
            names = "--share-within",
            paramLabel = "SIZE",
            description = "trials needed to know a share to this, whatever it is: \"10 %%\"")
    private String within;

    @Option(
            names = "--rate-below",
            paramLabel = "RATE",
            description = "time without failure needed to show a rate below this: \"0.01 /h\"")
    private String rate;

    @Option(names = "--run-length", paramLabel = "TIME", description = "of one run, to turn times into numbers of runs")
    private String length;

    /**
     * Says what was asked for; returns the largest number of runs, 0 if none was.
     *
     * @param runs of which to say what they can show; null if that is not asked
     * @param compared whether that was said already, for a comparison of levels
     */
    int plan(PrintStream out, double confidence, Integer runs, boolean compared) {
        if (failures < 0) {
            throw new UnusableException("--failures is 0 or more, not " + failures);
        }
        String sure = Repeats.percent(confidence);
        int largest = 0;
        if (atLeast != null) {
            double share = PlanCommand.share("--at-least", atLeast, 0);
            OptionalInt bound = SuccessSize.forShare(share, failures, confidence);
            OptionalInt interval = SuccessSize.forShareTwoSided(share, failures, confidence);
            out.println(number(bound) + " trials"
                    + (failures == 0
                            ? ", all of which succeed,"
                            : " with " + failures + (failures == 1 ? " failure" : " failures"))
                    + " to show that at least "
                    + Repeats.percent(share) + " succeed, at " + sure + " confidence");
            out.println("  " + number(interval) + " for the two-sided interval, which is the one that pages show");
            largest = interval.orElse(0);
        }
        if (within != null) {
            double half = PlanCommand.share("--share-within", within, 0);
            if (!(half < 0.5)) {
                throw new UnusableException("--share-within lies below 50 %, not at " + within);
            }
            OptionalInt n = SuccessSize.forHalfWidth(half, confidence);
            out.println(number(n) + " trials to know a share to ± " + Repeats.percent(half) + " or better, at " + sure
                    + " confidence");
            largest = Math.max(largest, n.orElse(0));
        }
        if (rate != null) {
            largest = Math.max(largest, time(out, confidence, sure));
        }
        if (runs != null) {
            shownBy(out, runs, confidence, sure, compared);
        }
        return largest;
    }

    private int time(PrintStream out, double confidence, String sure) {
        Quantity wanted = Amount.quantity("--rate-below", rate);
        if (!wanted.unit().convertsTo(PER_HOUR)) {
            throw new UnusableException("--rate-below is failures per time, such as \"0.01 /h\", not " + rate);
        }
        double perHour = wanted.in(PER_HOUR);
        if (!(perHour > 0 && perHour <= Double.MAX_VALUE)) {
            throw new UnusableException("--rate-below must be larger than nothing, not " + rate);
        }
        double hours = SuccessSize.timeForRate(perHour, failures, confidence);
        out.println(new Amount(hours, HOUR, false).text() + " in all, with "
                + (failures == 0 ? "no failure" : failures + (failures == 1 ? " failure" : " failures"))
                + ", to show a rate below " + rate.strip() + ", at " + sure + " confidence");
        if (length == null) {
            return 0;
        }
        double runs = Math.ceil(hours / runHours() - 1e-9);
        if (runs > 1_000_000) {
            throw new UnusableException("that would take more than a million runs of " + length);
        }
        out.println("  " + (int) runs + " runs of " + length);
        return (int) runs;
    }

    private void shownBy(PrintStream out, int runs, double confidence, String sure, boolean compared) {
        if (!compared) {
            Proportion all = new Proportion(runs, runs);
            out.println(runs + " trials that all succeed show that at least "
                    + Repeats.percent(rounded(all.lowerBound(confidence))) + " do, at " + sure
                    + " confidence; the two-sided interval begins at "
                    + Repeats.percent(rounded(all.interval(confidence).low())));
        }
        if (length != null) {
            double hours = runs * runHours();
            Amount bound = new Amount(new PoissonRate(0, hours).upperBound(confidence), PER_HOUR, false);
            out.println(runs + " runs of " + length + " without a failure show a rate below " + bound.text() + ", at "
                    + sure + " confidence");
        }
    }

    private double runHours() {
        Quantity one = Amount.quantity("--run-length", length);
        if (one.unit().convertsTo(HOUR) && one.in(HOUR) > 0) {
            return one.in(HOUR);
        }
        throw new UnusableException("--run-length is a time, such as \"12 h\", not " + length);
    }

    /** A bound is rounded down, so that it stays one. */
    private static double rounded(double share) {
        return Math.floor(share * 1000) / 1000;
    }

    private static String number(OptionalInt n) {
        return n.isPresent() ? String.valueOf(n.getAsInt()) : "more than a million";
    }
}
