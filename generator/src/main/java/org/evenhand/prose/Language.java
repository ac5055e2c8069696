package org.evenhand.prose;

import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/** What is made once for a language from its words. */
final class Language {

    private static final Map<String, Language> KNOWN = new ConcurrentHashMap<>();

    final Words words;
    final QuantityScanner scanner;
    final Directions directions;
    final SentenceCheck sentences;
    final UnlinkedCheck unlinked;
    final Set<String> open;
    final Pattern apart;
    final Pattern of;
    final Pattern confidence;
    final Map<Stated.Bound, Pattern> before;

    private Language(Words words) {
        this.words = words;
        this.scanner = new QuantityScanner(words);
        this.directions = new Directions(words);
        this.sentences = new SentenceCheck(words, directions);
        this.unlinked = new UnlinkedCheck(words, scanner);
        this.open = words.hints("open");
        this.apart = Words.pattern("(?<!\\p{L})" + words.any("apart") + "(?!\\p{L})");
        this.of = Words.pattern("\\s*" + words.any("of") + "(?!\\p{L})");
        this.confidence = Words.pattern("\\s+" + words.any("confidence") + "(?!\\p{L})");
        this.before = Map.of(
                Stated.Bound.UPPER, Words.pattern("(?<!\\p{L})" + words.any("upper") + "\\s*$"),
                Stated.Bound.LOWER, Words.pattern("(?<!\\p{L})" + words.any("lower") + "\\s*$"),
                Stated.Bound.ABOUT, Words.pattern("(?<!\\p{L})" + words.any("about") + "\\s*$"));
    }

    /** A language by its IETF tag; English where there are no words for it. */
    static Language of(String tag) {
        return KNOWN.computeIfAbsent(Words.has(tag) ? Words.primary(tag) : "en", t -> new Language(Words.of(t)));
    }
}
