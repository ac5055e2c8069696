package org.evenhand.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.prose.Words.Direction;
import org.evenhand.quantity.Dimension;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;

/** Finds words that state a direction, and says which sign they give to a figure. */
final class Directions {

    private static final Dimension TIME = Unit.of("s").dimension();
    private static final Dimension TEMPERATURE = Unit.of("K").dimension();

    private final Words words;
    private final Phrases phrases;
    private final Phrases negations;
    private final Pattern shortened = Words.pattern("n't(?:\\s+\\p{L}+)?\\s+$");

    Directions(Words words) {
        this.words = words;
        this.phrases = Phrases.of(words, "(?<![\\p{L}-])", "(?![\\p{L}-])", "direction");
        this.negations = Phrases.of(words, "(?<!\\p{L})", "(?:\\s+\\p{L}+)?\\s+$", "negation");
    }

    /** A word that states a direction, where it stands. */
    record At(Direction direction, int start, int end) {}

    /** All such words that are not denied, but for those that belong to a number: "more than 30 K". */
    List<At> in(String text, List<Stated> numbers) {
        List<At> found = new ArrayList<>();
        Matcher matcher = phrases.matcher(text);
        for (int at = 0; phrases.find(matcher, text, at); at = matcher.end()) {
            int start = matcher.start();
            int end = matcher.end();
            boolean ofNumber = numbers.stream().anyMatch(n -> n.start() < end && start < n.numberStart());
            if (!ofNumber && !isNegated(text, start)) {
                String word = matcher.group().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
                found.add(new At(words.directions().get(word), start, end));
            }
        }
        return found;
    }

    boolean isNegated(String text, int at) {
        int clause = Math.max(
                text.lastIndexOf(',', at - 1), Math.max(text.lastIndexOf(';', at - 1), text.lastIndexOf(':', at - 1)));
        int from = Math.max(0, clause);
        return negations.findBefore(negations.matcher(text), text, from, at)
                || shortened
                        .matcher(text.substring(Math.max(from, at - Phrases.REACH), at))
                        .find();
    }

    /**
     * The sign that a word gives to a figure: +1 if it says that the figure is above no effect.
     *
     * @return nothing if the word is about something else: "longer" says nothing of an energy
     */
    static Optional<Integer> sign(Direction direction, Evidence evidence) {
        Unit unit = evidence.measured();
        boolean time =
                evidence.kind() == Evidence.Kind.TIME_UNTIL || unit.dimension().equals(TIME);
        return switch (direction.axis()) {
            case AMOUNT -> Optional.of(direction.sign());
            case PACE -> Optional.of(time ? -direction.sign() : direction.sign());
            case HEAT -> when(unit.dimension().equals(TEMPERATURE), direction);
            case SOUND -> when(unit.kind() == UnitKind.LEVEL, direction);
            case TIME -> when(time, direction);
            case WORTH ->
                Optional.of(
                        switch (evidence.better()) {
                            case HIGHER -> direction.sign();
                            case LOWER -> -direction.sign();
                            case NEITHER -> 0;
                        });
            case ANY -> Optional.of(0);
        };
    }

    private static Optional<Integer> when(boolean fits, Direction direction) {
        return fits ? Optional.of(direction.sign()) : Optional.empty();
    }
}
