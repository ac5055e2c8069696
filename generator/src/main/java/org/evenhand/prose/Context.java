package org.evenhand.prose;

import java.util.ArrayList;
import java.util.Comparator;
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
    private final List<String> levels;
    private final Optional<Pattern> numberedNames;
    private final Pattern anyLevel;
    private final String kinds;
    private final Map<List<Side>, Orientation.Patterns> orientations = new HashMap<>();
    private Pattern quantified;
    private Pattern kind;
    private Optional<Pattern> thanLevel;

    Context(EvidenceResolver resolver) {
        this.language = Language.of(resolver.language());
        this.levels = longestFirst(resolver.levels());
        List<String> names = new ArrayList<>(resolver.names());
        names.addAll(levels);
        List<String> numbered = longestFirst(names).stream()
                .filter(n -> n.chars().anyMatch(Character::isDigit))
                .toList();
        this.numberedNames = numbered.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        Words.pattern("(?<![\\p{L}\\p{Nd}.,])" + Words.alternatives(numbered) + "(?![\\p{L}\\p{Nd}])"));
        List<String> plain =
                levels.stream().filter(l -> l.matches(".*[ \\d].*")).toList();
        this.anyLevel = Words.pattern(
                plain.isEmpty() ? "(?!)" : "(?<![\\p{L}\\p{Nd}])" + Words.alternatives(plain) + "(?![\\p{L}\\p{Nd}])");
        List<String> all = new ArrayList<>(language.words.list("kind-word"));
        resolver.names().forEach(n -> all.addAll(List.of(n, n + "s")));
        this.kinds = Words.alternatives(longestFirst(all));
    }

    private static List<String> longestFirst(List<String> names) {
        return names.stream()
                .map(n -> n.toLowerCase(Locale.ROOT))
                .distinct()
                .sorted(Comparator.comparingInt(String::length).reversed().thenComparing(n -> n))
                .toList();
    }

    Language language() {
        return language;
    }

    Words words() {
        return language.words;
    }

    /** Blanks out names, so that the numbers in them are not taken for quantities. */
    String withoutNames(String text) {
        if (numberedNames.isEmpty() || text.chars().noneMatch(Character::isDigit)) {
            return text;
        }
        StringBuilder blank = new StringBuilder(text);
        Matcher matcher = numberedNames.get().matcher(text);
        while (matcher.find()) {
            for (int i = matcher.start(); i < matcher.end(); i++) {
                blank.setCharAt(i, PassageReader.GAP);
            }
        }
        return blank.toString();
    }

    /**
     * A level that is named in a text, if it is another than the one meant and that one is not named.
     *
     * <p>Only names that could be nothing else are looked for, those of several words or with a number: "full" may speak of the load.
     */
    Optional<MatchResult> otherLevel(String text, Side meant) {
        Pattern own = Words.pattern("(?<![\\p{L}\\p{Nd}])" + Words.alternatives(meant.names()) + "(?![\\p{L}\\p{Nd}])");
        Optional<MatchResult> other = Optional.empty();
        StringBuilder rest = new StringBuilder(text);
        Matcher matcher = anyLevel.matcher(text);
        while (matcher.find()) {
            if (!meant.names().contains(matcher.group().toLowerCase(Locale.ROOT).replaceAll("\\s+", " "))) {
                other = other.isPresent() ? other : Optional.of(matcher.toMatchResult());
                // "spreader" within "spreader and fan" does not name the spreader alone.
                for (int i = matcher.start(); i < matcher.end(); i++) {
                    rest.setCharAt(i, PassageReader.GAP);
                }
            }
        }
        return own.matcher(rest).find() ? Optional.empty() : other;
    }

    Orientation.Patterns orientation(Side level, Side against) {
        return orientations.computeIfAbsent(
                List.of(level, against), s -> new Orientation.Patterns(level, against, levels, words()));
    }

    /** "Most specimens": a word that speaks for a whole kind, and the kind. */
    Pattern quantified() {
        if (quantified == null) {
            String limited = words().any("limited");
            quantified = SentenceCheck.word(
                    "(?<quantifier>" + words().any("quantifier") + ")(?:\\s+(?!" + limited + ")\\p{L}+)?\\s+" + kinds);
        }
        return quantified;
    }

    Pattern kind() {
        if (kind == null) {
            kind = SentenceCheck.word(kinds);
        }
        return kind;
    }

    /** "... than the Quillet 2", behind a word that states a direction; nothing where there are no levels. */
    Optional<Pattern> thanLevel() {
        if (thanLevel == null) {
            thanLevel = levels.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Words.pattern("\\s+(?:\\p{L}+\\s+){0,3}?" + words().any("base") + "\\s+(?:"
                            + words().any("filler") + "\\s+){0,3}" + Words.alternatives(levels)
                            + "(?![\\p{L}\\p{Nd}])"));
        }
        return thanLevel;
    }
}
