package org.evenhand.regex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.regex.RegularExpressions.Use;
import org.evenhand.regex.RegularExpressions.Way;
import org.junit.jupiter.api.Test;

/**
 * No regular expression takes more than linear time on any text. Looks at characters are counted, not seconds.
 *
 * <p>The texts are those on which backtracking is known to run away: something repeated that several parts of the
 * expression match, and at the end something that none does. What is repeated is made of the expression's own words.
 */
class LinearTimeTest {

    private static final int SHORT = 60;
    private static final int LONG = 240;

    /** A matcher may look a few times at each character: once for each alternative, and some for what is around it. */
    private static final double MOST_GROWTH = 1.5 * LONG / SHORT;

    @Test
    void everyExpressionOfTheProgramIsLinear() throws Exception {
        Map<String, String> slow = new TreeMap<>();
        RegularExpressions.ofTheProgram()
                .all()
                .forEach((name, use) -> slowest(use)
                        .ifPresent(text -> slow.put(
                                name,
                                name + "   "
                                        + use.pattern()
                                                .toString()
                                                .substring(
                                                        0,
                                                        Math.min(
                                                                70,
                                                                use.pattern()
                                                                        .toString()
                                                                        .length()))
                                        + " on " + text)));
        assertEquals(Map.of(), slow, () -> String.join("\n", slow.values()));
    }

    @Test
    void expressionsThatAreKnownToRunAwayAreFound() {
        // Textbook cases of exponential, quadratic and cubic backtracking.
        for (String regex : List.of("(a+)+b", "\\s*x", ".*=.*=.*;", "^(\\d+)*$")) {
            Way way = regex.startsWith("\\s") ? Way.ALL : Way.WHOLE;
            assertTrue(slowest(new Use(Pattern.compile(regex), way)).isPresent(), regex);
        }
        assertTrue(slowest(new Use(Pattern.compile("[a-z]+"), Way.ALL)).isEmpty());
    }

    /** A text on which the expression takes more than linear time; nothing if none was found. */
    private static java.util.Optional<String> slowest(Use use) {
        List<String> words = words(use.pattern().pattern());
        for (String start : starts(words)) {
            for (String pumped : pumped(words)) {
                for (String end : List.of("", "\u0001")) {
                    long few = looks(use, start + pumped.repeat(SHORT / pumped.length() + 1) + end, 3000L * SHORT);
                    long most = Math.min(3000L * LONG, (long) (MOST_GROWTH * few) + 50L * LONG);
                    String text = start + pumped.repeat(LONG / pumped.length() + 1) + end;
                    if (looks(use, text, most) > most) {
                        return java.util.Optional.of("“" + start + "” (“" + pumped + "”)* “" + end + "”");
                    }
                }
            }
        }
        return java.util.Optional.empty();
    }

    private static long looks(Use use, String text, long most) {
        Counted counted = new Counted(text, most);
        Matcher matcher = use.pattern().matcher(counted);
        try {
            switch (use.way()) {
                case WHOLE -> matcher.matches();
                case FRONT -> matcher.lookingAt();
                case ALL -> {
                    while (matcher.find()) {
                        continue;
                    }
                }
            }
        } catch (Counted.TooManyLooksException | StackOverflowError e) {
            return most + 1;
        }
        return counted.looks();
    }

    private static List<String> starts(List<String> words) {
        List<String> starts = new ArrayList<>(List.of("", "<a "));
        words.stream().filter(w -> w.length() > 1).limit(1).forEach(starts::add);
        return starts;
    }

    /** Characters and words of the expression, and some that classes stand for. */
    private static List<String> words(String regex) {
        Set<String> words = new LinkedHashSet<>(List.of(" ", "a", "0", "-"));
        Matcher quoted = Pattern.compile("\\\\Q(.+?)\\\\E|(\\p{L}{2,})").matcher(regex);
        while (quoted.find() && words.size() < 9) {
            words.add(quoted.group(1) == null ? quoted.group(2) : quoted.group(1));
        }
        regex.replaceAll("\\\\[Qa-zA-Z]|\\\\p\\{\\w+\\}", "")
                .chars()
                .filter(c -> !Character.isLetterOrDigit(c) && "()|^$?*+{}".indexOf(c) < 0)
                .limit(8)
                .forEach(c -> words.add(Character.toString(c)));
        words.add("\n");
        return List.copyOf(words);
    }

    private static List<String> pumped(List<String> words) {
        Set<String> pumped = new LinkedHashSet<>(words);
        for (String one : words) {
            for (String other : words.subList(0, Math.min(8, words.size()))) {
                pumped.add(one + other);
            }
        }
        return List.copyOf(pumped);
    }
}
