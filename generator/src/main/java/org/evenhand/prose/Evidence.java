package org.evenhand.prose;

import java.util.Optional;
import org.evenhand.compare.Verdict;
import org.evenhand.model.Better;
import org.evenhand.quantity.Unit;

/**
 * A published figure as sentences use it.
 *
 * @param target where it stands
 * @param kind what sort of figure it is
 * @param whole the kind of the figure that a part belongs to; the same as the kind for all else
 * @param title what is measured, as readers see it
 * @param noun what is measured, in a word or two: "energy"
 * @param better which way is better
 * @param measured the unit of what is measured, which a ratio does not have
 * @param figure the number and its interval
 * @param second the exponent of a trend
 * @param verdict what may be said; absent where nothing is held against anything
 * @param differs whether a difference is shown, which may be so within the margin too
 * @param margin within which a difference does not matter, as it is written
 * @param level the level in question
 * @param against the level that is the base
 * @param n what stands behind it, in words: "n = 6 and 6 specimens"
 * @param words what to write instead of a number; empty if the number speaks
 * @param count successes and their total for a share; events for a rate
 */
public record Evidence(
        Target target,
        Kind kind,
        Kind whole,
        String title,
        String noun,
        Better better,
        Unit measured,
        Figure figure,
        Optional<Figure> second,
        Optional<Verdict> verdict,
        boolean differs,
        Optional<String> margin,
        Optional<Side> level,
        Optional<Side> against,
        String n,
        String words,
        Count count) {

    /** What sort of figure it is. */
    public enum Kind {
        DIFFERENCE,
        RATIO,
        TREND,
        TIME_UNTIL,
        SHARE,
        FAILURE_RATE,
        LEVEL,
        RUN,
        GIVEN,
        /** A number that belongs to another figure: an end of its interval, a median, a count. */
        PART
    }

    /** How many of how many; zero of zero where nothing is counted. */
    public record Count(int successes, int total) {
        static final Count NONE = new Count(0, 0);
    }

    /** Whether it bounds how often something happens. */
    boolean isBound() {
        return whole == Kind.SHARE || whole == Kind.FAILURE_RATE;
    }

    boolean isContrast() {
        return kind == Kind.DIFFERENCE || kind == Kind.RATIO || kind == Kind.TREND || kind == Kind.TIME_UNTIL;
    }

    boolean isRefused() {
        return verdict.filter(v -> v == Verdict.NOT_COMPARABLE).isPresent();
    }

    /** A part of it, as a figure of its own at the same place. */
    Evidence part(Figure part, String partWords) {
        return new Evidence(
                target,
                Kind.PART,
                kind,
                title,
                noun,
                better,
                measured,
                part,
                Optional.empty(),
                Optional.empty(),
                false,
                margin,
                level,
                against,
                n,
                partWords,
                Count.NONE);
    }
}
