package org.evenhand.regex;

import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.evenhand.prose.PatternsOfProse;

/** Every regular expression of the program: those written in calls, those kept in constants, those made of words. */
final class RegularExpressions {

    private static final Path SOURCES = Path.of("src/main/java");
    private static final Path CLASSES = Path.of("target/classes");
    private static final Pattern CALL =
            Pattern.compile("(Pattern\\.compile|\\.matches|\\.replaceAll|\\.replaceFirst|\\.split)\\(\\s*+");
    private static final Pattern LITERAL = Pattern.compile("\\G(?:\\s*+\\+\\s*+)?+\"((?:[^\"\\\\]|\\\\.)*+)\"");

    /** A regular expression and how it is brought to a text. */
    record Use(Pattern pattern, Way way) {}

    /** How a text is searched. */
    enum Way {
        WHOLE,
        FRONT,
        ALL
    }

    /** Those that are only ever asked whether they match where something else ended ({@code lookingAt}). */
    private static final Set<String> AT_FRONT = Set.of(
            "QuantityScanner.ofOne",
            "QuantityScanner.countOf",
            "QuantityScanner.times",
            "QuantityScanner.range",
            "QuantityScanner.second",
            "QuantityScanner.PLUS_MINUS",
            "UnitReader.named",
            "UnitReader.SYMBOL",
            "UnitReader.PER",
            "Context.thanLevel",
            "Language.of",
            "Language.confidence",
            "UnlinkedCheck.direction",
            "UnlinkedCheck.afterMultiple");

    /** Those that are only ever asked whether they match a text as a whole. */
    private static final Set<String> OF_THE_WHOLE = Set.of(
            "Dialect.COMMA_NUMBER",
            "Dialect.POINT_NUMBER",
            "Cell.WITH_POINT",
            "Cell.WITH_COMMA",
            "Cell.HEXADECIMAL",
            "Matching.SAID",
            "Moments.MOMENT",
            "Moments.DAY",
            "UnitGuess.IN_BRACKETS",
            "UnitGuess.BEHIND_NAME",
            "PageLinks.ELSEWHERE",
            "PictureFiles.SCHEME",
            "Signature.MARKUP",
            "Relinking.ELSEWHERE",
            "Kept.DRAWN",
            "UnitParser.ATOM",
            "Faults.STUDY_FILE");

    private final Map<String, Use> all = new TreeMap<>();
    private final List<String> composed = new ArrayList<>();

    private RegularExpressions() {}

    static RegularExpressions ofTheProgram() throws IOException, ReflectiveOperationException {
        RegularExpressions found = new RegularExpressions();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
                found.inSource(file);
            }
        }
        try (Stream<Path> files = Files.walk(CLASSES.resolve("org/evenhand"))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".class")).sorted().toList()) {
                found.inConstants(CLASSES.relativize(file).toString());
            }
        }
        PatternsOfProse.all().forEach((name, pattern) -> found.all.put(name, new Use(pattern, way(name))));
        return found;
    }

    Map<String, Use> all() {
        return all;
    }

    /** Calls whose expression is put together from names, by file; constants and fields are found by other means. */
    List<String> composed() {
        return composed;
    }

    private void inSource(Path file) throws IOException {
        String text = Files.readString(file);
        Matcher call = CALL.matcher(text);
        while (call.find()) {
            StringBuilder regex = new StringBuilder();
            Matcher literal = LITERAL.matcher(text).region(call.end(), text.length());
            int end = call.end();
            while (literal.find()) {
                regex.append(unescaped(literal.group(1)));
                end = literal.end();
            }
            String name = file.getFileName().toString().replace(".java", "");
            String rest = text.substring(end).stripLeading();
            if (end == call.end() || !(rest.startsWith(",") || rest.startsWith(")"))) {
                composed.add(name + " " + text.substring(call.start(), text.indexOf('\n', call.start())));
                continue;
            }
            int flags = rest.startsWith(", Pattern.CASE_INSENSITIVE") ? Pattern.CASE_INSENSITIVE : 0;
            boolean front = text.substring(end, Math.min(text.length(), end + 250))
                    .split(";", 2)[0]
                    .contains(".lookingAt()");
            Way way = call.group(1).equals(".matches") ? Way.WHOLE : front ? Way.FRONT : Way.ALL;
            if (!call.group(1).equals("Pattern.compile") || !isConstant(text, call.start())) {
                all.put(
                        name + " " + call.group(1) + " " + regex,
                        new Use(Pattern.compile(regex.toString(), flags), way));
            }
        }
    }

    /** @param name of class and field, perhaps with a language in front and a key behind */
    private static Way way(String name) {
        String bare = name.replaceFirst("^[a-z]{2} ", "").replaceFirst(" .*", "");
        return AT_FRONT.contains(bare) ? Way.FRONT : OF_THE_WHOLE.contains(bare) ? Way.WHOLE : Way.ALL;
    }

    private static String unescaped(String literal) {
        return Pattern.compile("(?<!\\\\)((?:\\\\{2})*+)\\\\u([0-9a-fA-F]{4})")
                .matcher(literal)
                .replaceAll(m -> Matcher.quoteReplacement(m.group(1) + (char) Integer.parseInt(m.group(2), 16)))
                .translateEscapes();
    }

    /** Constants are taken from the classes. */
    private static boolean isConstant(String text, int at) {
        int statement = Math.max(text.lastIndexOf(';', at), text.lastIndexOf('{', at));
        return text.substring(statement + 1, at).contains("static final Pattern");
    }

    private void inConstants(String file) throws ReflectiveOperationException {
        String name = file.replace('\\', '/').replace('/', '.').replaceFirst("\\.class$", "");
        Class<?> type = Class.forName(name);
        for (Field field : type.getDeclaredFields()) {
            if (Modifier.isStatic(field.getModifiers()) && field.getType() == Pattern.class) {
                field.setAccessible(true);
                String named = type.getSimpleName() + "." + field.getName();
                all.put(named, new Use((Pattern) field.get(null), way(named)));
            }
        }
    }
}
