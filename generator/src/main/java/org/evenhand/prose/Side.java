package org.evenhand.prose;

import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A level as sentences name it.
 *
 * @param level as the study has it
 * @param title as the generator writes it
 * @param names by which a sentence may mean it, in lower case; the longest first
 */
public record Side(String level, String title, List<String> names) {

    /** Words of a level's name that tell it from nothing. */
    private static final Set<String> JOINING = Set.of("and", "with", "the", "a", "of");

    /** Levels that stand for the lack of something. */
    private static final Set<String> LACKING = Set.of("none", "off", "no");

    public Side {
        names = List.copyOf(names);
    }

    /**
     * The names of a level.
     *
     * @param level as the study has it
     * @param other the level on the other side: "short cable" against "long cable" may be called "the short one"
     * @param name of the item, where levels are items
     */
    static Side of(String level, Optional<String> other, Optional<String> name) {
        String words = words(level);
        Set<String> names = new LinkedHashSet<>(List.of(level.toLowerCase(Locale.ROOT), words));
        name.ifPresent(n -> names.add(n.toLowerCase(Locale.ROOT)));
        if (LACKING.contains(words)) {
            names.add("without");
        }
        Set<String> shared = new HashSet<>(JOINING);
        other.ifPresent(o -> shared.addAll(List.of(words(o).split(" "))));
        List<String> own = List.of(words.split(" ")).stream()
                .filter(w -> !shared.contains(w))
                .toList();
        if (other.isPresent() && own.size() == 1 && own.get(0).matches("\\p{L}{3,}")) {
            names.add(own.get(0));
        }
        List<String> longestFirst = names.stream()
                .sorted(Comparator.comparingInt(String::length).reversed().thenComparing(n -> n))
                .toList();
        return new Side(level, name.map(n -> shortName(n, words)).orElse(level), longestFirst);
    }

    private static String words(String level) {
        return level.replaceAll("(?<=\\p{L})-|-(?=\\p{Nd})", " ").strip().toLowerCase(Locale.ROOT);
    }

    /** "Quillet 2 encoder" is called "Quillet 2" where its id is quillet-2. */
    private static String shortName(String name, String words) {
        return name.toLowerCase(Locale.ROOT).startsWith(words) ? name.substring(0, words.length()) : name;
    }
}
