package org.evenhand.prose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;

/** Names that sentences may speak of: items of a folder, levels of a study. Made once for all texts that they stand in. */
public final class Names {

    /** No names at all. */
    public static final Names NONE = of(List.of());

    private final List<String> all;
    private final Phrases numbered;
    private final Map<String, Phrases> kinds = new ConcurrentHashMap<>();
    private final Map<String, Phrases> quantified = new ConcurrentHashMap<>();

    private Names(List<String> all) {
        this.all = all;
        List<String> digits =
                all.stream().filter(n -> n.chars().anyMatch(Character::isDigit)).toList();
        this.numbered = new Phrases(digits, "(?<![\\p{L}\\p{Nd}.,])" + alternatives(digits) + "(?![\\p{L}\\p{Nd}])");
    }

    /** Names, in any case and order. */
    public static Names of(Collection<String> names) {
        return new Names(names.stream()
                .map(n -> n.toLowerCase(Locale.ROOT))
                .distinct()
                .sorted(Comparator.comparingInt(String::length).reversed().thenComparing(n -> n))
                .toList());
    }

    /** In lower case, the longest first. */
    List<String> all() {
        return all;
    }

    private static String alternatives(List<String> names) {
        return names.isEmpty() ? "(?!)" : Words.alternatives(names);
    }

    /** Blanks out names, so that the numbers in them are not taken for quantities. */
    String without(String text) {
        char[] blank = null;
        Matcher matcher = numbered.matcher(text);
        for (int at = 0; numbered.find(matcher, text, at); at = matcher.end()) {
            blank = blank == null ? text.toCharArray() : blank;
            Arrays.fill(blank, matcher.start(), matcher.end(), PassageReader.GAP);
        }
        return blank == null ? text : new String(blank);
    }

    /** Any of them, or a word of the language for things of a kind: "specimens". */
    Phrases kinds(Words words) {
        return kinds.computeIfAbsent(words.language(), l -> {
            List<String> found = kindWords(words);
            return new Phrases(found, SentenceCheck.word(Words.alternatives(found)));
        });
    }

    /** "Most specimens": a word that speaks for a whole kind, and the kind. */
    Phrases quantified(Words words) {
        return quantified.computeIfAbsent(
                words.language(),
                l -> new Phrases(
                        words.list("quantifier"),
                        SentenceCheck.word("(?<quantifier>" + words.any("quantifier") + ")(?:\\s+(?!"
                                + words.any("limited") + ")\\p{L}+)?\\s+" + Words.alternatives(kindWords(words)))));
    }

    private List<String> kindWords(Words words) {
        List<String> found = new ArrayList<>(words.list("kind-word"));
        all.forEach(n -> found.addAll(List.of(n, n + "s")));
        found.sort(Comparator.comparingInt(String::length).reversed().thenComparing(n -> n));
        return found;
    }
}
