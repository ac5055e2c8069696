package org.evenhand.prose;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The places in a text at which a quantity may begin: digits, signs before them, and words that may be or begin a number. */
final class Candidates {

    private final Set<String> first = new HashSet<>();
    private final Set<String> articles = new HashSet<>();
    private final Set<String> second = new HashSet<>();
    private final Set<String> modifiers = new HashSet<>();
    private final Phrases.Initials initials;

    Candidates(Words words) {
        articles.addAll(words.list("article"));
        for (String phrase : words.list("number", "multiple")) {
            List<String> parts = List.of(phrase.split(" "));
            if (parts.size() > 1 && articles.contains(parts.get(0))) {
                second.add(parts.get(1));
            } else {
                first.add(parts.get(0).split("-")[0]);
            }
        }
        for (String phrase : words.list("about", "lower", "upper")) {
            modifiers.add(phrase.substring(phrase.lastIndexOf(' ') + 1));
        }
        Set<String> all = new HashSet<>(first);
        all.addAll(articles);
        this.initials = new Phrases.Initials(all);
    }

    /** The next such place from an index on; the length of the text if there is none. */
    int next(String text, int from) {
        for (int at = from; at < text.length(); at++) {
            char c = text.charAt(at);
            if (Character.isDigit(c)) {
                if (at == 0 || !Character.isDigit(text.charAt(at - 1)) || at == from) {
                    return at;
                }
            } else if (c == '-' || c == '+') {
                if (at + 1 < text.length() && Character.isLetterOrDigit(text.charAt(at + 1))) {
                    return at;
                }
            } else if (initials.has(c) && (at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1)))) {
                int end = Phrases.wordEnd(text, at);
                String word = text.substring(at, end).toLowerCase(Locale.ROOT);
                if (first.contains(word) || (articles.contains(word) && isOfQuantity(text, at, end))) {
                    return at;
                }
                at = end - 1;
            }
        }
        return text.length();
    }

    /** "A third", and "under a minute"; not any other article. */
    private boolean isOfQuantity(String text, int start, int end) {
        int next = end;
        while (next < text.length() && !Character.isLetterOrDigit(text.charAt(next))) {
            next++;
        }
        if (second.contains(text.substring(next, Phrases.wordEnd(text, next)).toLowerCase(Locale.ROOT))) {
            return true;
        }
        int last = start;
        while (last > 0 && Character.isWhitespace(text.charAt(last - 1))) {
            last--;
        }
        int begin = last;
        while (begin > 0 && Character.isLetterOrDigit(text.charAt(begin - 1))) {
            begin--;
        }
        return (begin == last && last > 0)
                || modifiers.contains(text.substring(begin, last).toLowerCase(Locale.ROOT));
    }
}
