package org.evenhand.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;

/**
 * Which side of a comparison a sentence takes as its base.
 *
 * @param base as the sentence has it
 * @param start of the name of the base in the text; −1 if none is named
 * @param end behind the name
 * @param pair whether both sides are named: "X to Y"
 * @param other the level that is named as the base, where it is neither side
 */
record Orientation(Base base, int start, int end, boolean pair, String other) {

    /** The base that a sentence names. */
    enum Base {
        /** That of the comparison. */
        AS_COMPARED,
        /** The level in question: the figure has to be turned over. */
        TURNED,
        /** Another level of the study. */
        ANOTHER,
        NOT_NAMED
    }

    static final Orientation NOT_NAMED = new Orientation(Base.NOT_NAMED, -1, -1, false, "");

    private static final int MOST_FILLERS = 6;
    private static final int MOST_WORDS_OF_PAIR = 12;
    private static final int MOST_WORDS_OF_SELF = 7;

    /** What names the base of one pair of sides. */
    static final class Patterns {
        private final Side level;
        private final Side against;
        private final Phrases single;
        private final Phrases pair;

        Patterns(Side level, Side against, List<String> levels, Words words) {
            this.level = level;
            this.against = against;
            List<String> names = new ArrayList<>(level.names());
            names.addAll(against.names());
            levels.stream().filter(n -> !names.contains(n)).forEach(names::add);
            names.sort((a, b) -> b.length() - a.length());
            String any = Words.alternatives(names);
            String name = "(?<![\\p{L}\\p{Nd}])(?<name>" + any + ")(?![\\p{L}\\p{Nd}])";
            String fillers = "(?:\\s+" + words.any("filler") + "){0," + MOST_FILLERS + "}?\\s+";
            String between = "[^.;:]{0,60}?";
            this.single = new Phrases(words.list("base"), "(?<!\\p{L})" + words.any("base") + fillers + name);
            this.pair = new Phrases(
                    names,
                    "(?<![\\p{L}\\p{Nd}])(?<first>" + any + ")(?!\\p{L})(?:" + between + "\\s" + words.any("pair")
                            + "\\s+" + between + "|\\s+" + words.any("subtract") + "\\s+)" + name);
        }

        /**
         * Looks for the base in the words around a link.
         *
         * @param text in which to look, with all else blanked out
         * @param from index from which the nearest mention counts first
         */
        Orientation in(String text, int from) {
            List<Orientation> found = new ArrayList<>();
            Matcher base = single.matcher(text);
            for (int at = 0; single.find(base, text, at); at = base.end()) {
                found.add(named(base, false));
            }
            Matcher both = pair.matcher(text);
            for (int at = 0; pair.find(both, text, at); at = both.start() + 1) {
                boolean different = side(both.group("first")) != side(both.group("name"));
                int apart = both.group().split("\\s+").length;
                if (different && apart <= MOST_WORDS_OF_PAIR) {
                    found.add(named(both, true));
                } else if (!different && apart <= MOST_WORDS_OF_SELF) {
                    // A side held against itself is no comparison that there is.
                    found.add(new Orientation(
                            Base.ANOTHER, both.start("name"), both.end("name"), true, both.group("name")));
                }
            }
            return nearest(found, from).orElse(NOT_NAMED);
        }

        private Orientation named(Matcher matcher, boolean isPair) {
            String name = matcher.group("name");
            return new Orientation(side(name), matcher.start("name"), matcher.end("name"), isPair, name);
        }

        private Base side(String name) {
            String plain = name.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
            if (against.names().contains(plain)) {
                return Base.AS_COMPARED;
            }
            return level.names().contains(plain) ? Base.TURNED : Base.ANOTHER;
        }
    }

    static Orientation of(String text, int from, Evidence evidence, Context context) {
        return evidence.against().isEmpty() || evidence.level().isEmpty()
                ? NOT_NAMED
                : context.orientation(evidence.level().get(), evidence.against().get())
                        .in(text, from);
    }

    private static Optional<Orientation> nearest(List<Orientation> found, int from) {
        Optional<Orientation> after =
                found.stream().filter(o -> o.start >= from).min((a, b) -> Integer.compare(a.start, b.start));
        return after.isPresent() ? after : found.stream().max((a, b) -> Integer.compare(a.start, b.start));
    }
}
