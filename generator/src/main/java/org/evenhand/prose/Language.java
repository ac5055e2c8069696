package org.evenhand.prose;

import java.util.Map;
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
    final Cue.Table cues;
    final Phrases open;
    final Phrases apart;
    final Pattern of;
    final Pattern confidence;
    final Map<Stated.Bound, Phrases> before;

    private Language(Words words) {
        this.words = words;
        this.scanner = new QuantityScanner(words);
        this.directions = new Directions(words);
        this.sentences = new SentenceCheck(words, directions);
        this.unlinked = new UnlinkedCheck(words, scanner);
        this.cues = new Cue.Table(words);
        this.open = Phrases.of(words, "(?<!\\p{L})", "(?!\\p{L})", "open");
        this.apart = Phrases.of(words, "(?<!\\p{L})", "(?!\\p{L})", "apart");
        this.of = Words.pattern("\\s*" + words.any("of") + "(?!\\p{L})");
        this.confidence = Words.pattern("\\s+" + words.any("confidence") + "(?!\\p{L})");
        this.before = Map.of(
                Stated.Bound.UPPER, Phrases.of(words, "(?<!\\p{L})", "\\s*$", "upper"),
                Stated.Bound.LOWER, Phrases.of(words, "(?<!\\p{L})", "\\s*$", "lower"),
                Stated.Bound.ABOUT, Phrases.of(words, "(?<!\\p{L})", "\\s*$", "about"));
    }

    /** A language by its IETF tag; English where there are no words for it. */
    static Language of(String tag) {
        return KNOWN.computeIfAbsent(Words.has(tag) ? Words.primary(tag) : "en", t -> new Language(Words.of(t)));
    }
}
