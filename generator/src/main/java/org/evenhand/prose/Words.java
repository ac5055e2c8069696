package org.evenhand.prose;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The words of a language that sentences about measurements turn on; a data file for each.
 *
 * @param language its tag
 * @param decimal the decimal sign
 * @param thousands what may part groups of three digits, besides a space
 * @param directions words that state a direction
 * @param byKind all other entries by kind: a word, and its value if it has one
 */
record Words(
        String language,
        String decimal,
        String thousands,
        Map<String, Direction> directions,
        Map<String, Map<String, String>> byKind) {

    /** What a direction is about. */
    enum Axis {
        AMOUNT,
        PACE,
        HEAT,
        SOUND,
        TIME,
        WORTH,
        ANY
    }

    /**
     * A word that states a direction.
     *
     * @param word in lower case
     * @param opposite what would state the other
     * @param axis what it is about
     * @param sign +1 for up, −1 for down
     * @param anywhere whether it counts outside of a link's text
     */
    record Direction(String word, String opposite, Axis axis, int sign, boolean anywhere) {}

    private static final Map<String, Optional<Words>> LOADED = new ConcurrentHashMap<>();

    /** The words of a language; English if there is no list for it. */
    static Words of(String language) {
        String primary = language.toLowerCase(Locale.ROOT).split("-")[0];
        return LOADED.computeIfAbsent(primary, Words::load)
                .orElseGet(() -> LOADED.computeIfAbsent("en", Words::load).orElseThrow());
    }

    /** Whether there is a list for a language. */
    static boolean has(String language) {
        return LOADED.computeIfAbsent(primary(language), Words::load).isPresent();
    }

    /** The language itself, without script and region. */
    static String primary(String tag) {
        return tag.toLowerCase(Locale.ROOT).split("-")[0];
    }

    /** The words of the kinds, the longest first. */
    List<String> list(String... kinds) {
        return Stream.of(kinds)
                .flatMap(k -> (k.equals("direction") ? directions : byKind.getOrDefault(k, Map.of())).keySet().stream())
                .sorted(Comparator.comparingInt(String::length).reversed().thenComparing(w -> w))
                .toList();
    }

    /** The value behind a word, if it is of the kind. */
    Optional<String> value(String kind, String word) {
        return Optional.ofNullable(byKind.getOrDefault(kind, Map.of()).get(word.toLowerCase(Locale.ROOT)));
    }

    BigDecimal number(String kind, String word) {
        return new BigDecimal(value(kind, word).orElseThrow());
    }

    /**
     * The longest word of each entry of the kinds: where a text has none of them, it has none of the entries, which is found out
     * much faster than by looking for each.
     */
    Set<String> hints(String... kinds) {
        Set<String> hints = new HashSet<>();
        for (String kind : kinds) {
            for (String entry : list(kind)) {
                Set<String> parts = wordsIn(entry);
                // The longest that is not on every line.
                parts.stream()
                        .max(Comparator.comparing(
                                        (String w) -> value("common", w).isEmpty())
                                .thenComparingInt(String::length)
                                .thenComparing(w -> w))
                        .ifPresent(hints::add);
            }
        }
        return hints;
    }

    /** The words of a text, in lower case. */
    static Set<String> wordsIn(String text) {
        Set<String> found = new HashSet<>();
        int start = -1;
        for (int i = 0; i <= text.length(); i++) {
            boolean letter = i < text.length() && Character.isLetter(text.charAt(i));
            if (letter && start < 0) {
                start = i;
            } else if (!letter && start >= 0) {
                found.add(text.substring(start, i).toLowerCase(Locale.ROOT));
                start = -1;
            }
        }
        return found;
    }

    /** A pattern for any word of the kinds, the longest first, in a group; matches nothing if there is none. */
    String any(String... kinds) {
        List<String> all = list(kinds);
        return all.isEmpty() ? "(?!)" : alternatives(all);
    }

    /** A pattern for any of the words, which stand for themselves; a space stands for any. */
    static String alternatives(List<String> words) {
        return words.stream()
                .map(w -> List.of(w.split(" ")).stream().map(Pattern::quote).collect(Collectors.joining("\\s+")))
                .collect(Collectors.joining("|", "(?:", ")"));
    }

    static Pattern pattern(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    private static Optional<Words> load(String language) {
        if (!language.matches("[a-z]{2,3}")) {
            return Optional.empty();
        }
        try (InputStream in = Words.class.getResourceAsStream("words-" + language + ".txt")) {
            return in == null ? Optional.empty() : Optional.of(read(language, in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Words read(String language, InputStream in) throws IOException {
        String decimal = ".";
        String thousands = "";
        Map<String, Direction> directions = new LinkedHashMap<>();
        Map<String, Map<String, String>> byKind = new LinkedHashMap<>();
        BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        for (String line = reader.readLine(); line != null; line = reader.readLine()) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            String[] fields = line.strip().split(" \\| ");
            switch (fields[0]) {
                case "decimal" -> {
                    decimal = fields[1];
                    thousands = fields[2];
                }
                case "direction" ->
                    directions.put(
                            fields[1],
                            new Direction(
                                    fields[1],
                                    fields[2],
                                    Axis.valueOf(fields[3].toUpperCase(Locale.ROOT)),
                                    fields[4].equals("up") ? 1 : -1,
                                    fields[5].equals("anywhere")));
                default ->
                    byKind.computeIfAbsent(fields[0], k -> new LinkedHashMap<>())
                            .put(fields[1], fields.length > 2 ? fields[2] : "");
            }
        }
        return new Words(language, decimal, thousands, directions, byKind);
    }
}
