package org.evenhand.prose;

import java.util.List;
import java.util.Optional;
import org.evenhand.prose.Directions.At;
import org.evenhand.prose.Evidence.Kind;
import org.evenhand.prose.Orientation.Base;
import org.evenhand.prose.Passage.Bound;
import org.evenhand.prose.Passage.Range;

/** Holds the words of a link, and those around it, against the figure that it is bound to. */
final class LinkCheck {

    static final String NUMBER_MISMATCH = "number-mismatch";
    static final String PERCENT_WITHOUT_BASE = "percent-without-base";
    static final String DIFFERENCE_NOT_SHOWN = "difference-not-shown";

    private final Sentence sentence;
    private final Bound link;
    private final Evidence evidence;
    private final List<ProseFault> faults;
    private final QuantityScanner scanner;
    private final Orientation orientation;
    private final List<Stated> stated;
    private final List<At> directions;

    private LinkCheck(Sentence sentence, Bound link, List<ProseFault> faults) {
        this.sentence = sentence;
        this.link = link;
        this.evidence = link.evidence();
        this.faults = faults;
        this.scanner = sentence.language().scanner;
        boolean contrast = evidence.isContrast();
        String text = contrast
                ? Sentence.without(
                        sentence.only(sentence.around(link)), sentence.passage().silent())
                : "";
        this.orientation =
                contrast ? Orientation.of(text, link.start(), evidence, sentence.context()) : Orientation.NOT_NAMED;
        this.stated = link.isEmpty() ? List.of() : scanner.scan(linkText());
        boolean directed = contrast && sentence.has(Cue.DIRECTION);
        this.directions = directed ? directions(text) : List.of();
    }

    static void check(Sentence sentence, Bound link, List<ProseFault> faults) {
        LinkCheck check = new LinkCheck(sentence, link, faults);
        check.level();
        check.base();
        boolean wrongWay = check.directions();
        check.numbers(wrongWay);
    }

    /** The text of the link alone; names that hold numbers are blanked out, and words just before it may belong to a number. */
    private String linkText() {
        String text = sentence.only(new Range(link.start(), link.end()));
        return evidence.kind() == Kind.GIVEN ? text : sentence.context().withoutNames(text);
    }

    private List<At> directions(String around) {
        Directions finder = sentence.language().directions;
        List<Stated> numbers = scanner.scan(around);
        return finder.in(around, numbers).stream()
                .filter(d -> !sentence.context().isSubtraction(around, d.start(), d.end()))
                .filter(d -> isOwn(d)
                        || (d.direction().anywhere()
                                && !sentence.isOpen(d.start())
                                && !sentence.passage().isLinked(d.start(), d.end())))
                .filter(d -> Directions.sign(d.direction(), evidence).isPresent())
                .toList();
    }

    private boolean isOwn(At direction) {
        return link.start() <= direction.start() && direction.end() <= link.end();
    }

    /** "The Quillet 2 took [](evidence:level/quillet-3/energy)": the figure is of another level than the sentence. */
    private void level() {
        if (evidence.kind() != Kind.LEVEL || evidence.level().isEmpty()) {
            return;
        }
        String text = Sentence.without(
                sentence.only(sentence.around(link, sentence.links())),
                sentence.passage().silent());
        sentence.context()
                .otherLevel(text, evidence.level().get())
                .ifPresent(other -> fault(
                        NUMBER_MISMATCH,
                        other.start(),
                        other.end(),
                        sentence.context()
                                .say(
                                        "prose.other-level",
                                        other.group(),
                                        evidence.level().get().title()),
                        evidence.level().get().title()));
    }

    private void base() {
        boolean inverse = link.isEmpty() && link.form().isInverse();
        boolean named = orientation.base() == Base.AS_COMPARED || orientation.base() == Base.TURNED;
        if (orientation.base() == Base.ANOTHER && evidence.isContrast()) {
            fault(
                    NUMBER_MISMATCH,
                    orientation.start(),
                    orientation.end(),
                    sentence.context()
                            .say(
                                    "prose.other-base",
                                    orientation.other(),
                                    evidence.against().orElseThrow().title()),
                    evidence.against().orElseThrow().title());
        } else if (link.isEmpty() && named && (orientation.base() == Base.TURNED) != inverse && isTurnable()) {
            String title = (inverse ? evidence.level() : evidence.against())
                    .orElseThrow()
                    .title();
            fault(
                    NUMBER_MISMATCH,
                    orientation.start(),
                    orientation.end(),
                    sentence.context()
                            .say(
                                    "prose.turned-base",
                                    sentence.passage().text().substring(orientation.start(), orientation.end()),
                                    title),
                    title);
        }
        if (link.isEmpty() && link.form().isPercent() && !named && evidence.kind() == Kind.RATIO) {
            withoutBase(sentence.passage().links().indexOf(link) < 0 ? 0 : link.start(), link.end());
        }
    }

    private boolean isTurnable() {
        return (evidence.kind() == Kind.RATIO || evidence.kind() == Kind.DIFFERENCE)
                && !evidence.isRefused()
                && link.form() != EvidenceLink.Form.WORDS;
    }

    private void withoutBase(int start, int end) {
        String base = evidence.against().map(Side::title).orElse("…");
        faults.add(new ProseFault(
                PERCENT_WITHOUT_BASE,
                start < end ? sentence.place(start, end) : sentence.place(link),
                sentence.context().say("prose.base-not-named"),
                sentence.context().figures().computed(evidence),
                sentence.context()
                        .say(
                                "prose.name-base",
                                sentence.context().figures().of(evidence, EvidenceLink.Form.PERCENT),
                                base),
                Optional.empty()));
    }

    /** Whether some word states the wrong direction. */
    private boolean directions() {
        for (At at : directions) {
            String word = sentence.passage().text().substring(at.start(), at.end());
            if (!evidence.differs() || evidence.isRefused()) {
                faults.add(new ProseFault(
                        DIFFERENCE_NOT_SHOWN,
                        sentence.place(at.start(), at.end()),
                        sentence.context().say("prose.not-shown", word),
                        sentence.context().figures().computed(evidence),
                        sentence.context()
                                .say("prose.write", sentence.context().figures().of(evidence, EvidenceLink.Form.WORDS)),
                        Optional.empty()));
                return true;
            }
            int claimed = Directions.sign(at.direction(), evidence).orElseThrow();
            boolean neither = claimed == 0 && at.direction().axis() == Words.Axis.WORTH;
            if (neither || claimed * sign() < 0) {
                String right = neither ? "" : at.direction().opposite();
                faults.add(new ProseFault(
                        DIFFERENCE_NOT_SHOWN,
                        sentence.place(at.start(), at.end()),
                        sentence.context().say(neither ? "prose.judgement" : "prose.opposite", word),
                        sentence.context().figures().computed(evidence),
                        neither
                                ? sentence.context().say("prose.judgement.remedy")
                                : sentence.context().say("prose.write", right),
                        right.isEmpty() ? Optional.empty() : sentence.correction(at.start(), at.end(), right)));
                return true;
            }
        }
        return false;
    }

    /** The sign of the effect as the sentence takes it. */
    private int sign() {
        double value = evidence.figure()
                .value()
                .orElse(
                        evidence.figure().low().isPresent()
                                ? 1
                                : evidence.figure().high().isPresent() ? -1 : 0);
        double effect = evidence.kind() == Kind.RATIO ? value - 1 : value;
        return (int) Math.signum(effect) * (orientation.base() == Base.TURNED ? -1 : 1);
    }

    private void numbers(boolean wrongWay) {
        StatedCheck check = new StatedCheck(sentence, link, orientation, directions, sign(), wrongWay, scanner);
        for (Stated one : stated) {
            check.fault(one).ifPresent(faults::add);
        }
    }

    private void fault(String rule, int start, int end, String message, String right) {
        String written = sentence.passage().text().substring(start, end);
        boolean replaceable =
                orientation.base() != Base.TURNED && !orientation.pair() && !written.equalsIgnoreCase(right);
        faults.add(new ProseFault(
                rule,
                sentence.place(start, end),
                message,
                sentence.context().figures().computed(evidence),
                sentence.context().say("prose.write-or-link", right),
                // In "X to Y" both names would have to change.
                replaceable ? sentence.correction(start, end, right) : Optional.empty()));
    }
}
