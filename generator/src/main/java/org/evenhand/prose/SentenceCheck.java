package org.evenhand.prose;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.compare.Verdict;
import org.evenhand.prose.Passage.Bound;
import org.evenhand.quantity.UnitKind;

/** Looks for claims that need a certain kind of evidence in their sentence: sameness, certainty, a whole kind. */
final class SentenceCheck {

    private final Words words;
    private final Directions directions;
    private final Phrases same;
    private final Phrases certain;
    private final Phrases heard;
    private final Phrases general;
    private final Phrases we;
    private final Phrases multiplied;

    SentenceCheck(Words words, Directions directions) {
        this.words = words;
        this.directions = directions;
        this.same = new Phrases(words.list("same"), word(words.any("same")));
        this.certain = new Phrases(
                words.list("certain", "certain-with"),
                word(words.any("certain") + "(?!\\s+enough)|(?<habit>" + words.any("certain-with")
                        + ")(?:\\s+\\p{L}+)?\\s+" + words.any("behaviour")));
        this.heard = new Phrases(words.list("heard"), word(words.any("heard")));
        this.general = new Phrases(words.list("general"), word(words.any("general")));
        this.we = Phrases.of(words, "(?<!\\p{L})", "(?:\\s+\\p{L}+){0,2}\\s+$", "we");
        // "Twice as fast as" claims no sameness.
        this.multiplied = Phrases.of(words, "(?<!\\p{L})", "\\s+$", "multiple", "times");
    }

    static String word(String alternatives) {
        return "(?<![\\p{L}-])(?:" + alternatives + ")(?![\\p{L}-])";
    }

    void check(Sentence sentence, List<ProseFault> faults) {
        boolean any = sentence.has(Cue.SAME)
                || sentence.has(Cue.CERTAIN)
                || sentence.has(Cue.HEARD)
                || sentence.has(Cue.SCOPE)
                || sentence.has(Cue.BASE);
        if (!any) {
            return;
        }
        String text = Sentence.without(
                sentence.only(sentence.range()), sentence.passage().silent());
        if (sentence.has(Cue.SAME)) {
            sameness(sentence, text, faults);
        }
        if (sentence.has(Cue.CERTAIN)) {
            certainty(sentence, text, faults);
        }
        if (sentence.has(Cue.HEARD)) {
            heard(sentence, text, faults);
        }
        if (sentence.has(Cue.SCOPE)) {
            scope(sentence, text, faults);
        }
        if (sentence.has(Cue.BASE) && sentence.has(Cue.DIRECTION)) {
            unlinkedContrast(sentence, text, faults);
        }
    }

    private void sameness(Sentence sentence, String text, List<ProseFault> faults) {
        Matcher matcher = same.matcher(text);
        for (int at = 0; same.find(matcher, text, at); at = matcher.end()) {
            String found = matcher.group().toLowerCase(Locale.ROOT);
            boolean denied = directions.isNegated(text, matcher.start())
                    || multiplied.findBefore(multiplied.matcher(text), text, 0, matcher.start());
            boolean strong = found.contains("differ")
                    || found.contains("matter")
                    || found.contains("effect")
                    || found.contains("affect")
                    || found.contains("unterschied");
            Optional<Bound> contrast = nearest(sentence.contrasts(), matcher.start());
            if (contrast.isEmpty() && strong) {
                contrast = sentence.passage().links().stream()
                        .filter(l -> l.evidence().isContrast() && l.start() < matcher.start())
                        .reduce((a, b) -> b);
            }
            boolean nothingAtAll = contrast.isEmpty() && found.contains("difference");
            boolean shown = contrast.map(c -> c.evidence().verdict().equals(Optional.of(Verdict.SAME_WITHIN_MARGIN)))
                    .orElse(!nothingAtAll);
            // What the generator itself writes for a difference that is not shown.
            String none = sentence.context().figures().words().say("sentence.none-shown");
            int own = text.indexOf(none, Math.max(0, matcher.end() - none.length()));
            boolean careful = own >= 0 && own <= matcher.start();
            if (!denied && !shown && !careful && !sentence.isOpen(matcher.start())) {
                Optional<Evidence> evidence = contrast.map(Bound::evidence);
                faults.add(new ProseFault(
                        "sameness-not-shown",
                        sentence.place(matcher.start(), matcher.end()),
                        sentence.context().say("prose.sameness", matcher.group()),
                        evidence.map(sentence.context().figures()::computed).orElse(""),
                        evidence.map(e -> sentence.context()
                                        .say(
                                                "prose.write-or-margin",
                                                sentence.context().figures().of(e, EvidenceLink.Form.WORDS)))
                                .orElse(sentence.context().say("prose.sameness.remedy")),
                        Optional.empty()));
            }
        }
    }

    private static Optional<Bound> nearest(List<Bound> links, int at) {
        return links.stream().min(Comparator.comparingInt(l -> Math.abs(l.start() - at)));
    }

    private void certainty(Sentence sentence, String text, List<ProseFault> faults) {
        Matcher matcher = certain.matcher(text);
        boolean bounded = sentence.links().stream().anyMatch(l -> l.evidence().isBound());
        for (int at = 0; !bounded && certain.find(matcher, text, at); at = matcher.end()) {
            boolean habit = matcher.group("habit") != null;
            boolean ours = habit && we.findBefore(we.matcher(text), text, 0, matcher.start());
            boolean own = matcher.group()
                    .toLowerCase(Locale.ROOT)
                    .matches("(no|never|without|does not|do not|did not|cannot|will not).*");
            boolean denied = !own && directions.isNegated(text, matcher.start());
            if (!ours && !denied && !sentence.isOpen(matcher.start())) {
                faults.add(ProseFault.of(
                        "stability-overclaimed",
                        sentence.place(matcher.start(), matcher.end()),
                        sentence.context().say("prose.no-limit", matcher.group()),
                        sentence.context().say("prose.no-limit.remedy")));
            }
        }
    }

    private void heard(Sentence sentence, String text, List<ProseFault> faults) {
        Matcher matcher = heard.matcher(text);
        boolean measured = sentence.links().stream()
                .anyMatch(l -> l.evidence().measured().kind() == UnitKind.LEVEL
                        || (!l.evidence().words().isEmpty()
                                && l.evidence().figure().value().isEmpty()));
        for (int at = 0; !measured && heard.find(matcher, text, at); at = matcher.end()) {
            if (!directions.isNegated(text, matcher.start()) && !sentence.isOpen(matcher.start())) {
                faults.add(ProseFault.of(
                        "heard-not-measured",
                        sentence.place(matcher.start(), matcher.end()),
                        sentence.context().say("prose.by-ear", matcher.group()),
                        sentence.context().say("prose.by-ear.remedy")));
            }
        }
    }

    private void scope(Sentence sentence, String text, List<ProseFault> faults) {
        boolean proportion =
                sentence.links().stream().anyMatch(l -> l.evidence().whole() == Evidence.Kind.SHARE);
        if (proportion) {
            return;
        }
        Phrases quantified = sentence.context().quantified();
        Matcher matcher = quantified.matcher(text);
        for (int at = 0; quantified.find(matcher, text, at); at = matcher.end()) {
            overclaimed(sentence, matcher.start(), matcher.end("quantifier"), faults);
        }
        Matcher generally = general.matcher(text);
        boolean ofKind = sentence.context().kind().isIn(text);
        for (int at = 0; ofKind && general.find(generally, text, at); at = generally.end()) {
            overclaimed(sentence, generally.start(), generally.end(), faults);
        }
    }

    private static void overclaimed(Sentence sentence, int start, int end, List<ProseFault> faults) {
        if (sentence.isOpen(start)) {
            return;
        }
        faults.add(ProseFault.of(
                "scope-overclaimed",
                sentence.place(start, end),
                sentence.context()
                        .say("prose.beyond-tested", sentence.passage().text().substring(start, end)),
                sentence.context().say("prose.beyond-tested.remedy")));
    }

    /** "The one is faster than the other", with nothing behind it. */
    private void unlinkedContrast(Sentence sentence, String text, List<ProseFault> faults) {
        boolean linked =
                sentence.passage().links().stream().anyMatch(l -> l.evidence().isContrast());
        Optional<Pattern> than = sentence.context().thanLevel();
        if (linked
                || than.isEmpty()
                || sentence.passage().heading()
                || sentence.passage().quoted()) {
            return;
        }
        for (Directions.At at : directions.in(text, List.of())) {
            if (at.direction().anywhere()
                    && !sentence.isOpen(at.start())
                    && than.get().matcher(text).region(at.end(), text.length()).lookingAt()) {
                faults.add(ProseFault.of(
                        LinkCheck.DIFFERENCE_NOT_SHOWN,
                        sentence.place(at.start(), at.end()),
                        sentence.context().say("prose.difference-unlinked", text.substring(at.start(), at.end())),
                        sentence.context().say("prose.difference-unlinked.remedy")));
            }
        }
    }
}
