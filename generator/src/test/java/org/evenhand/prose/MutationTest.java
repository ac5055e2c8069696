package org.evenhand.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.evenhand.model.Study;
import org.evenhand.prose.Words.Axis;
import org.evenhand.prose.Words.Direction;
import org.junit.jupiter.api.Test;

/** A sentence that holds, with one thing altered, holds no more: each alteration has to be caught. */
class MutationTest {

    private static final Pattern LINK = Pattern.compile("\\[([^\\]]*)\\]\\(((?:evidence|given):[^)]*)\\)");
    private static final Words ENGLISH = Words.of("en");

    /** Units that are put in place of others; none converts to what it replaces with the same number. */
    private static final Map<String, String> OTHER_UNIT = Map.ofEntries(
            Map.entry("K", "W"),
            Map.entry("mWh", "Wh"),
            Map.entry("Wh", "mWh"),
            Map.entry("W·h", "W"),
            Map.entry("kJ", "J"),
            Map.entry("min", "s"),
            Map.entry("minutes", "hours"),
            Map.entry("s", "min"),
            Map.entry("seconds", "minutes"),
            Map.entry("h", "min"),
            Map.entry("°C", "K"),
            Map.entry("°F", "°C"),
            Map.entry("W", "V"),
            Map.entry("mW", "W"),
            Map.entry("MHz", "GHz"),
            Map.entry("GHz", "MHz"),
            Map.entry("dB", "K"),
            Map.entry("dB(A)", "dB(C)"),
            Map.entry("frames", "pages"),
            Map.entry("ms", "s"));

    /** What is altered. */
    private enum Kind {
        DIGIT,
        UNIT,
        DIRECTION,
        BASE
    }

    private record Mutant(Kind kind, String original, String altered) {}

    @Test
    void everyAlterationOfARightSentenceIsCaught() throws IOException {
        FixedEvidence evidence = new FixedEvidence("en");
        Set<Mutant> mutants = new LinkedHashSet<>();
        for (String line : SentencesTest.lines("sentences-en.txt")) {
            if (line.contains(" => ")
                    || line.startsWith("#")
                    || line.isBlank()
                    || line.endsWith("?")
                    || line.startsWith("Whether")) {
                continue;
            }
            String text = line.replace('⏎', '\n').replace('␣', '\u00a0');
            mutants.addAll(mutants(text, evidence));
        }
        List<String> survivors = survivors(mutants, evidence);
        System.out.println(mutants.size() + " alterations of right sentences, " + survivors.size() + " not caught");
        assertTrue(mutants.size() > 600, mutants.size() + " alterations");
        assertEquals(List.of(), survivors);
    }

    @Test
    void everyAlterationOfTheProseOfTheSampleIsCaught() {
        SampleEvidence sample = new SampleEvidence();
        Map<Kind, Integer> counts = new EnumMap<>(Kind.class);
        List<String> survivors = new ArrayList<>();
        for (Study study : sample.folder().studies().values()) {
            EvidenceResolver resolver = sample.resolver(study.id());
            for (ProseSource source : SampleProseTest.sources(study)) {
                for (String text : List.of(source.text(), written(source.text(), resolver))) {
                    Set<Mutant> mutants = mutants(text, resolver);
                    mutants.forEach(m -> counts.merge(m.kind, 1, Integer::sum));
                    survivors.addAll(survivors(mutants, resolver));
                }
            }
        }
        String about = sample.folder().publication().orElseThrow().about().orElseThrow();
        EvidenceResolver front = StudyResolver.withoutStudy(sample.folder());
        survivors.addAll(survivors(mutants(about, front), front));
        System.out.println("alterations of the sample's prose: " + counts + ", " + survivors.size() + " not caught");
        assertEquals(Set.of(Kind.values()), counts.keySet());
        assertTrue(counts.get(Kind.DIGIT) > 150, counts.toString());
        assertEquals(List.of(), survivors);
    }

    /** Nearly all links of the sample are empty: here each has the text that the generator writes, as an author may copy it. */
    private static String written(String text, EvidenceResolver resolver) {
        return LINK.matcher(text).replaceAll(link -> {
            String words = link.group(1);
            try {
                EvidenceLink address = EvidenceLink.parse(link.group(2));
                if (words.isEmpty() && resolver.resolve(address.address()) instanceof EvidenceResolver.Found found) {
                    words = FigureText.in("en").of(found.evidence(), address.form());
                }
            } catch (EvidenceLink.MalformedException e) {
                throw new AssertionError(e);
            }
            return Matcher.quoteReplacement("[" + words + "](" + link.group(2) + ")");
        });
    }

    @Test
    void whatTheGeneratorWritesHoldsWhenAnAuthorCopiesIt() {
        SampleEvidence sample = new SampleEvidence();
        for (Study study : sample.folder().studies().values()) {
            EvidenceResolver resolver = sample.resolver(study.id());
            for (ProseSource source : SampleProseTest.sources(study)) {
                String text = written(source.text(), resolver);
                assertEquals(List.of(), Verification.verify(ProseSource.body("f.md", 1, text), resolver), text);
            }
        }
    }

    private static List<String> survivors(Set<Mutant> mutants, EvidenceResolver resolver) {
        return mutants.stream()
                .filter(m -> Verification.verify(ProseSource.body("f.md", 1, m.altered), resolver)
                        .isEmpty())
                .map(m -> difference(m.original, m.altered))
                .collect(Collectors.toList());
    }

    /** The sentence around the first letter that differs. */
    private static String difference(String original, String altered) {
        int at = 0;
        while (at < Math.min(original.length(), altered.length()) && original.charAt(at) == altered.charAt(at)) {
            at++;
        }
        return altered.substring(Math.max(0, at - 60), Math.min(altered.length(), at + 60))
                .replace('\n', '⏎');
    }

    private static Set<Mutant> mutants(String text, EvidenceResolver resolver) {
        Set<Mutant> mutants = new LinkedHashSet<>();
        Matcher link = LINK.matcher(text);
        while (link.find()) {
            if (resolver.resolve(EvidenceLinks.address(link.group(2))) instanceof EvidenceResolver.Found found) {
                digits(text, link, found.evidence(), mutants);
                if (!isBound(text, link)) {
                    units(text, link, mutants);
                }
                if (found.evidence().kind() == Evidence.Kind.LEVEL) {
                    levels(text, link, found.evidence(), resolver, mutants);
                }
                if (found.evidence().isContrast() && !found.evidence().isRefused()) {
                    directions(text, link, found.evidence(), mutants);
                    bases(text, link, found.evidence(), mutants);
                }
            }
        }
        return mutants;
    }

    /**
     * Each digit that states a figure, one up and one down. A bound that is made looser, a name ("Quillet 2") and a figure that
     * is only rounded still holds, and is no error.
     */
    private static void digits(String text, Matcher link, Evidence evidence, Set<Mutant> mutants) {
        String words = link.group(1).replace('\u00a0', ' ');
        boolean rough = words.matches("(?s).*(at least|at most|over|under|more than|less than|below|about|within).*");
        boolean name = words.matches("(?s).*(Quillet|Run|run) \\d.*") || words.contains("&#");
        if (rough || name || isBound(text, link)) {
            return;
        }
        for (int i = link.start(1); i < link.end(1); i++) {
            if (Character.isDigit(text.charAt(i))) {
                int digit = text.charAt(i) - '0';
                for (int other : new int[] {(digit + 1) % 10, (digit + 9) % 10}) {
                    mutants.add(new Mutant(Kind.DIGIT, text, text.substring(0, i) + other + text.substring(i + 1)));
                }
            }
        }
    }

    /** A bound that is looser than it need be is no error. */
    private static boolean isBound(String text, Matcher link) {
        String bounds = "(?s).*(at least|at most|over|under|more than|less than|below|within|as high as)";
        return text.substring(0, link.start()).replace('\n', ' ').matches(bounds + " $")
                || link.group(1).matches(bounds + ".*");
    }

    private static void units(String text, Matcher link, Set<Mutant> mutants) {
        OTHER_UNIT.forEach((unit, other) -> {
            Matcher matcher = Pattern.compile("(?<=\\d[ \u00a0])" + Pattern.quote(unit) + "(?![\\p{L}/(·])")
                    .matcher(link.group(1));
            while (matcher.find()) {
                int at = link.start(1) + matcher.start();
                mutants.add(new Mutant(
                        Kind.UNIT, text, text.substring(0, at) + other + text.substring(at + unit.length())));
            }
        });
    }

    /** Each direction word in the sentence of the link, turned into its opposite. */
    private static void directions(String text, Matcher link, Evidence evidence, Set<Mutant> mutants) {
        int start = Math.max(0, text.lastIndexOf(". ", link.start()));
        int end = text.indexOf(". ", link.end()) < 0 ? text.length() : text.indexOf(". ", link.end());
        for (Direction direction : ENGLISH.directions().values()) {
            if (direction.axis() == Axis.ANY
                    || Directions.sign(direction, evidence).isEmpty()) {
                continue;
            }
            Matcher matcher = Pattern.compile(
                            "(?<![\\p{L}-]|no |not |no\\n|more |less )" + direction.word() + "(?![\\p{L}-]| than \\d)")
                    .matcher(text)
                    .region(start, end)
                    .useTransparentBounds(true);
            while (matcher.find()) {
                boolean inLink = link.start(1) <= matcher.start() && matcher.end() <= link.end(1);
                boolean efficient = text.substring(matcher.end()).matches("(?s) (efficient|reliable|quickly|slowly).*");
                if ((inLink || direction.anywhere()) && !efficient) {
                    String altered =
                            text.substring(0, matcher.start()) + direction.opposite() + text.substring(matcher.end());
                    mutants.add(new Mutant(Kind.DIRECTION, text, altered));
                }
            }
        }
    }

    /** The name of the level of a figure near its link, turned into that of another. */
    private static void levels(
            String text, Matcher link, Evidence evidence, EvidenceResolver resolver, Set<Mutant> mutants) {
        if (evidence.level().isEmpty()) {
            return;
        }
        String title = evidence.level().get().title();
        int from = Math.max(0, link.start() - 30);
        int at = text.substring(from, link.start()).indexOf(title);
        String other = resolver.levels().stream()
                .filter(l -> l.contains(" ") && !evidence.level().get().names().contains(l))
                .findFirst()
                .orElse("");
        if (title.contains(" ") && at >= 0 && !other.isEmpty()) {
            int start = from + at;
            mutants.add(new Mutant(
                    Kind.BASE, text, text.substring(0, start) + other + text.substring(start + title.length())));
        }
    }

    /** The name of the base, where it stands behind a word that makes it one, turned into that of the other side. */
    private static void bases(String text, Matcher link, Evidence evidence, Set<Mutant> mutants) {
        if (evidence.against().isEmpty() || evidence.kind() == Evidence.Kind.TIME_UNTIL) {
            return;
        }
        boolean stated = link.group(1).isEmpty() || link.group(1).matches("(?s).*\\d.*");
        String against = evidence.against().get().title();
        String level = evidence.level().orElseThrow().title();
        for (String word : List.of(
                "than ",
                "than the ",
                "against ",
                "against the ",
                "to ",
                "minus ",
                "with the ",
                "that of the ",
                "of the ")) {
            Matcher matcher = Pattern.compile(
                            "(?<![\\p{L}-])" + word.replace(" ", "[ \\n]") + Pattern.quote(against)
                                    + "(?! (?:minus|to) )",
                            Pattern.CASE_INSENSITIVE)
                    .matcher(text)
                    .region(Math.max(0, text.lastIndexOf(". ", link.start())), text.length());
            boolean meant = matcher.find()
                    && Pattern.compile("than|against|minus|ratio|\\d\\s?% of")
                            .matcher(text)
                            .find();
            if (stated && meant && matcher.start() - link.end() < 40) {
                int at = matcher.end() - against.length();
                mutants.add(new Mutant(
                        Kind.BASE, text, text.substring(0, at) + level + text.substring(at + against.length())));
            }
        }
    }

    /** Takes the choice of a form off an address. */
    private static final class EvidenceLinks {
        static String address(String destination) {
            return destination.replaceAll("\\?.*", "");
        }
    }
}
