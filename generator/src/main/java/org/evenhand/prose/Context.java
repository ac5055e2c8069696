package org.evenhand.prose;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the checks of one study's sentences share: its language, and patterns made from its names. For one thread. */
final class Context {

    private final Language language;
    private final FigureText figures;
    private final Names names;
    private final Names levels;
    private final Phrases anyLevel;
    private final Map<List<Side>, Orientation.Patterns> orientations = new HashMap<>();
    private Optional<Pattern> thanLevel;
    private Subtraction subtraction;

    /** What stands before and behind the word for taking one level from another. */
    private record Subtraction(Pattern from, Pattern amount) {}

    Context(EvidenceResolver resolver) {
        this.language = Language.of(resolver.language());
        this.figures = FigureText.in(resolver.language());
        this.names = resolver.names();
        this.levels = Names.of(resolver.levels());
        List<String> plain =
                levels.all().stream().filter(l -> l.matches(".*[ \\d].*")).toList();
        this.anyLevel = new Phrases(
                plain,
                plain.isEmpty() ? "(?!)" : "(?<![\\p{L}\\p{Nd}])" + Words.alternatives(plain) + "(?![\\p{L}\\p{Nd}])");
    }

    /** Writes figures in the language of the study. */
    FigureText figures() {
        return figures;
    }

    /** A message in the language of the study. */
    String say(String key, Object... arguments) {
        return figures.words().say(key, arguments);
    }

    Language language() {
        return language;
    }

    Words words() {
        return language.words;
    }

    /** Blanks out names, so that the numbers in them are not taken for quantities. */
    String withoutNames(String text) {
        // The name of an item may be part of a level's.
        return names.without(levels.without(text));
    }

    /**
     * A level that is named in a text, if it is another than the one meant and that one is not named.
     *
     * <p>Only names that could be nothing else are looked for, those of several words or with a number: "full" may speak of the load.
     */
    Optional<MatchResult> otherLevel(String text, Side meant) {
        Optional<MatchResult> other = Optional.empty();
        StringBuilder rest = new StringBuilder(text);
        Matcher matcher = anyLevel.matcher(text);
        for (int at = 0; anyLevel.find(matcher, text, at); at = matcher.end()) {
            if (!meant.names().contains(matcher.group().toLowerCase(Locale.ROOT).replaceAll("\\s+", " "))) {
                other = other.isPresent() ? other : Optional.of(matcher.toMatchResult());
                // "spreader" within "spreader and fan" does not name the spreader alone.
                for (int i = matcher.start(); i < matcher.end(); i++) {
                    rest.setCharAt(i, PassageReader.GAP);
                }
            }
        }
        return other.isEmpty() || isNamed(meant, rest.toString()) ? Optional.empty() : other;
    }

    private static boolean isNamed(Side side, String text) {
        return Words.pattern("(?<![\\p{L}\\p{Nd}])" + Words.alternatives(side.names()) + "(?![\\p{L}\\p{Nd}])")
                .matcher(text)
                .find();
    }

    /** Whether a word stands right between two levels and takes one from the other: "spreader less none" claims nothing. */
    boolean isSubtraction(String text, int start, int end) {
        if (levels.all().isEmpty()
                || !words().list("subtract").contains(text.substring(start, end).toLowerCase(Locale.ROOT))) {
            return false;
        }
        if (subtraction == null) {
            String level = "(?<![\\p{L}\\p{Nd}])" + Words.alternatives(levels.all()) + "(?![\\p{L}\\p{Nd}])";
            subtraction = new Subtraction(Words.pattern(level + "\\s+$"), Words.pattern("\\s+" + level));
        }
        return subtraction.from().matcher(text).region(0, start).find()
                && subtraction.amount().matcher(text).region(end, text.length()).lookingAt();
    }

    Orientation.Patterns orientation(Side level, Side against) {
        return orientations.computeIfAbsent(
                List.of(level, against), s -> new Orientation.Patterns(level, against, levels.all(), words()));
    }

    /** "Most specimens": a word that speaks for a whole kind, and the kind. */
    Phrases quantified() {
        return names.quantified(words());
    }

    Phrases kind() {
        return names.kinds(words());
    }

    /** "... than the Quillet 2", behind a word that states a direction; nothing where there are no levels. */
    Optional<Pattern> thanLevel() {
        if (thanLevel == null) {
            thanLevel = levels.all().isEmpty()
                    ? Optional.empty()
                    : Optional.of(Words.pattern("\\s+(?:\\p{L}+\\s+){0,3}?" + words().any("base") + "\\s+(?:"
                            + words().any("filler") + "\\s+){0,3}" + Words.alternatives(levels.all())
                            + "(?![\\p{L}\\p{Nd}])"));
        }
        return thanLevel;
    }
}
