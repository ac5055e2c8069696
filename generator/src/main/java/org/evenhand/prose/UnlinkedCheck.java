package org.evenhand.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.evenhand.prose.Passage.Range;

/** Finds quantities that are bound to nothing. Dates, versions, names, pages, headings, code and quotations are none. */
final class UnlinkedCheck {

    static final String RULE = "number-unlinked";

    /** What is counted in passing: "2 steps", "12 pages". */
    private static final Set<String> IN_PASSING = Set.of(
            "points",
            "steps",
            "files",
            "images",
            "samples",
            "tasks",
            "pages",
            "cycles",
            "games",
            "moves",
            "requests",
            "tokens",
            "packets",
            "operations",
            "events");

    private final QuantityScanner scanner;
    private final Phrases label;
    private final Pattern afterMultiple;
    private final Pattern calendar;
    private final Pattern direction;
    private final Pattern base;

    UnlinkedCheck(Words words, QuantityScanner scanner) {
        this.scanner = scanner;
        List<String> labels = new ArrayList<>(words.list("label"));
        labels.addAll(List.of("§", "№"));
        this.label = new Phrases(labels, "(?<!\\p{L})" + Words.alternatives(labels) + "\\.?\\s*$");
        this.afterMultiple = Words.pattern(
                "\\s+" + words.any("after-multiple") + "(?!\\p{L})(?!\\s+" + words.any("article") + "\\s)");
        this.direction = Words.pattern("\\s+" + words.any("direction") + "(?!\\p{L})");
        this.base = Words.pattern("(?<!\\p{L})" + words.any("base") + "(?!\\p{L})");
        this.calendar = Words.pattern("(?<!\\p{L})" + words.any("calendar") + "(?!\\p{L})");
    }

    void check(ProseSource source, Passage passage, Context context, List<ProseFault> faults) {
        if (passage.heading() || passage.quoted() || !scanner.mayHave(passage.text())) {
            return;
        }
        List<Range> notMeant = new ArrayList<>(passage.silent());
        notMeant.addAll(passage.cited());
        passage.links().forEach(l -> notMeant.add(new Range(l.start(), l.end())));
        String text = context.withoutNames(Sentence.without(passage.text(), notMeant));
        for (Stated stated : scanner.scan(text)) {
            if (isQuantity(stated, text)) {
                int from = stated.numberStart();
                String written = passage.text().substring(from, stated.end());
                Sentence whole = Sentence.of(source, passage, new Range(0, text.length()), context);
                if (isWithoutBase(stated, text)) {
                    faults.add(ProseFault.of(
                            LinkCheck.PERCENT_WITHOUT_BASE,
                            whole.place(from, stated.end()),
                            context.say("prose.percent-unlinked", written),
                            context.say("prose.percent-unlinked.remedy", written)));
                    continue;
                }
                faults.add(ProseFault.of(
                        RULE,
                        whole.place(from, stated.end()),
                        context.say("prose.unlinked", written),
                        context.say("prose.unlinked.remedy", written)));
            }
        }
    }

    /** "18 % better": held against something, but against what? */
    private boolean isWithoutBase(Stated stated, String text) {
        String behind = text.substring(stated.end());
        int stop = behind.indexOf('.');
        return stated.shape() == Stated.Shape.PERCENT
                && direction.matcher(behind).lookingAt()
                && !base.matcher(stop < 0 ? behind : behind.substring(0, stop)).find();
    }

    private boolean isQuantity(Stated stated, String text) {
        boolean named = label.findBefore(label.matcher(text), text, 0, stated.start());
        String behind = text.substring(stated.end());
        return switch (stated.shape()) {
            case PERCENT, POINTS -> true;
            case MULTIPLE ->
                afterMultiple.matcher(behind).lookingAt()
                        || text.substring(stated.numberEnd(), stated.end()).startsWith("-");
            // "One of two" picks one out; "9 of 10" is a share.
            case COUNT ->
                !named
                        && (Character.isDigit(text.charAt(stated.numberStart()))
                                || stated.first().intValue() > 1);
            case NUMBER -> false;
            case QUANTITY ->
                !named
                        && !IN_PASSING.contains(stated.unit().symbol())
                        && !isCalendar(stated, text)
                        && !isOrdinal(stated, text);
        };
    }

    /** "Two days" tells when, "48 h" how much. */
    private boolean isCalendar(Stated stated, String text) {
        boolean written = !Character.isDigit(text.charAt(stated.numberStart())) && !stated.signed();
        return written
                && calendar.matcher(text.substring(stated.numberEnd(), stated.end()))
                        .find();
    }

    /** "About a second try" counts tries, not seconds. */
    private static boolean isOrdinal(Stated stated, String text) {
        boolean written = Character.isLetter(text.charAt(stated.numberStart()));
        return written
                && text.startsWith("second", Math.max(0, stated.end() - "second".length()))
                && Pattern.compile("\\s+(?!of|or|and|before|after|in|at|to|on|for|later|from)\\p{L}")
                        .matcher(text)
                        .region(stated.end(), text.length())
                        .lookingAt();
    }
}
