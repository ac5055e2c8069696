package org.evenhand.chart;

import java.util.List;
import org.evenhand.words.Words;

/**
 * The share of runs in which something has not happened yet, as a step curve for each level.
 *
 * @param shareTitle what the share is of, such as "runs not yet throttled"; "%" is added
 * @param timeTitle what time is counted from; its unit is added
 * @param toS end of the time axis in seconds, above 0
 * @param curves one for each level, at least one
 * @param censoredMeans words for the key, such as "run ended before it happened"
 */
public record SurvivalChart(String shareTitle, String timeTitle, double toS, List<Curve> curves, String censoredMeans)
        implements Figure {

    public SurvivalChart {
        curves = List.copyOf(curves);
        if (curves.isEmpty() || !(toS > 0)) {
            throw new IllegalArgumentException("a survival chart needs a curve and a length of time");
        }
    }

    /**
     * A curve that begins with the share 1 at time 0.
     *
     * @param label stands at its end
     * @param steps where it falls, in order of time
     * @param censoredAtS times in seconds at which a run ended without the event
     * @param endS time in seconds at which the last run ended
     */
    public record Curve(String label, List<Step> steps, List<Double> censoredAtS, double endS) {
        public Curve {
            steps = List.copyOf(steps);
            censoredAtS = List.copyOf(censoredAtS);
        }

        /** The share just after a time. */
        double shareAt(double timeS) {
            double share = 1;
            for (Step step : steps) {
                if (step.timeS() <= timeS) {
                    share = step.share();
                }
            }
            return share;
        }
    }

    /** A fall of the curve: the share, 0 to 1, from a time in seconds on. */
    public record Step(double timeS, double share) {

        /** @throws IllegalArgumentException if time is negative or not finite, or the share is not within 0 to 1 */
        public Step {
            if (!(timeS >= 0 && Double.isFinite(timeS) && share >= 0 && share <= 1)) {
                throw new IllegalArgumentException("no step of a curve: " + share + " from " + timeS + " s on");
            }
        }
    }

    @Override
    public Layout layout(Words words) {
        return new SurvivalLayout(this, words);
    }
}
