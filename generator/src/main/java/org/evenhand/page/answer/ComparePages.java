package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.evenhand.check.CheckedStudy;
import org.evenhand.check.Pairing;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelSummary;
import org.evenhand.compare.Verdict;
import org.evenhand.model.Finding;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Method;
import org.evenhand.model.Status;
import org.evenhand.page.Directory;
import org.evenhand.page.FindingViews;
import org.evenhand.page.MadeBefore;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.Sentence;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Caveat;
import org.evenhand.page.view.ComparePage;
import org.evenhand.page.view.ComparedLevel;
import org.evenhand.page.view.ComparedMeasurand;
import org.evenhand.page.view.ComparedPair;
import org.evenhand.page.view.Link;
import org.evenhand.page.words.ComparisonFigures;
import org.evenhand.page.words.Counting;
import org.evenhand.page.words.LevelFigures;
import org.evenhand.page.words.Written;
import org.evenhand.words.Words;

/** The page that tells of any two levels whether they may be compared. Each pair is judged here, none in the browser. */
public final class ComparePages {

    /** Levels of one measurand that are held against each other, the newest first: 50 make 1225 pairs. */
    private static final int MOST = 50;

    private static final Set<Status> STANDING = Set.of(Status.FINAL, Status.DRAFT);

    private final PageContext context;
    private final MadeBefore before;
    private final Pairing pairing;
    private final Set<String> explained;
    private final Words words;

    private ComparePages(PageContext context, MadeBefore before) {
        this.context = context;
        this.before = before;
        this.pairing = new Pairing(context.checked());
        this.words = context.words();
        this.explained =
                context.checked().findings().stream().map(Finding::rule).collect(Collectors.toUnmodifiableSet());
    }

    /** A level of an answer, with its figure. */
    private record Standing(Answer answer, LevelSummary summary) {

        String key() {
            return answer.study().id() + "/" + summary.level();
        }

        Link figure() {
            String name = answer.words()
                    .say(
                            "pairing.level",
                            answer.names().factor(),
                            answer.names().level(summary.level()));
            String id = Address.level(summary.level(), answer.names().address(summary.measurand()));
            return Link.to(name, answer.page() + "#" + id);
        }

        Pairing.Side side() {
            return new Pairing.Side(answer.checked(), summary.level());
        }

        String answered() {
            return answer.study().answered().map(Object::toString).orElse("");
        }

        boolean isOf(Answer other) {
            return answer.study().id().equals(other.study().id());
        }
    }

    /** @param before of which pairs that have not changed come */
    public static void build(PageContext context, MadeBefore before, PageSink sink) {
        ComparePages pages = new ComparePages(context, before);
        List<ComparedMeasurand> measurands = pages.byMeasurand().entrySet().parallelStream()
                .filter(e -> e.getValue().size() > 1)
                .map(e -> pages.measurand(e.getKey(), e.getValue()))
                .toList();
        ComparePage page = new ComparePage(
                context.frames()
                        .of(
                                Address.COMPARE,
                                context.words().say("page.compare"),
                                context.words().say("pairing.about")),
                measurands);
        sink.put(Address.COMPARE, context.render("compare", page));
    }

    private Map<MeasurandId, List<Standing>> byMeasurand() {
        Map<MeasurandId, List<Standing>> levels = new TreeMap<>();
        for (CheckedStudy checked : context.checked().studies().values()) {
            if (checked.isWithheld()
                    || !STANDING.contains(checked.evidence().study().status())) {
                continue;
            }
            Answer answer = Answer.of(checked, context);
            checked.evidence().summaries().stream()
                    .filter(s ->
                            s.n() > 0 && answer.names().measurand(s.measurand()).isNumeric())
                    .forEach(s -> levels.computeIfAbsent(s.measurand(), m -> new ArrayList<>())
                            .add(new Standing(answer, s)));
        }
        return levels;
    }

    private ComparedMeasurand measurand(MeasurandId id, List<Standing> all) {
        Method method = context.checked().folder().methods().get(id.method());
        Measurand measurand = method.measurands().get(id.measurand());
        List<Standing> levels = all.stream()
                .sorted(Comparator.comparing(Standing::answered, Comparator.reverseOrder()))
                .limit(MOST)
                .toList();
        PairsBefore judged = new PairsBefore(before, id);
        List<ComparedPair> pairs = IntStream.range(0, levels.size())
                .boxed()
                .flatMap(i -> levels.subList(i + 1, levels.size()).stream().map(l -> List.of(l, levels.get(i))))
                .toList()
                .parallelStream()
                .map(pair -> leadingOn(pair(pair.get(0), pair.get(1), id, judged)))
                .toList();
        judged.keep();
        return new ComparedMeasurand(
                Address.measurand(id.method() + " " + id.measurand()),
                measurand.title(),
                measurand.unit().isOne() ? "" : measurand.unit().symbol(),
                Link.to(method.title(), Address.method(id.method())),
                levels.stream().map(this::level).toList(),
                Integer.toString(all.size() - levels.size()),
                pairs);
    }

    private ComparedLevel level(Standing of) {
        LevelSummary summary = of.summary();
        Written written = LevelFigures.of(summary, words);
        String value = LevelFigures.value(summary, words);
        return new ComparedLevel(
                of.key(),
                of.figure(),
                Directory.question(of.answer().study()),
                Counting.counted(summary.n(), summary.counts(), summary.runs().size(), words),
                value.isEmpty() ? LevelFigures.label(summary, words) : value,
                written.expanded(),
                written.low(),
                written.high(),
                of.answer().caveats(summary));
    }

    private ComparedPair pair(Standing first, Standing second, MeasurandId measurand, PairsBefore judged) {
        return judged.of(
                first.answer(),
                first.summary().level(),
                second.answer(),
                second.summary().level(),
                () -> pair(first, second, measurand));
    }

    private ComparedPair pair(Standing first, Standing second, MeasurandId measurand) {
        Optional<ComparisonResult> planned = planned(first, second, measurand);
        return planned.isPresent()
                ? published(first, second, planned.get())
                : judged(first, second, pairing.judge(first.side(), second.side(), measurand));
    }

    /** Where an answer holds the two against each other already, which it may do either way round. */
    private static Optional<ComparisonResult> planned(Standing first, Standing second, MeasurandId measurand) {
        return !first.isOf(second.answer())
                ? Optional.empty()
                : first.answer().evidence().comparisons().stream()
                        .filter(c -> c instanceof ComparisonResult.Contrasted || c instanceof ComparisonResult.Survival)
                        .filter(c ->
                                c.plan().measurand().filter(measurand::equals).isPresent())
                        .filter(c -> Set.of(
                                        first.summary().level(),
                                        second.summary().level())
                                .equals(Set.of(
                                        c.plan().level().orElse(""),
                                        c.plan().against().orElse("-"))))
                        .findFirst();
    }

    private ComparedPair published(Standing first, Standing second, ComparisonResult result) {
        Answer answer = first.answer();
        return new ComparedPair(
                first.key(),
                second.key(),
                subject(first, second),
                answer.verdict(result).map(Verdict::word).orElse(""),
                answer.isRefused(result) ? "" : answer.sentence(result),
                answer.isRefused(result) ? reasons(answer.refusals(result)) : List.of(),
                answer.isRefused(result) ? List.of() : answer.caveats(result),
                Optional.of(Link.to(
                        words.say("pairing.evidence"),
                        answer.page() + "#" + Address.comparison(result.plan().id()))));
    }

    private ComparedPair judged(Standing first, Standing second, Pairing.Judgement judgement) {
        List<Caveat> reasons = new ArrayList<>(reasons(judgement.refusals()));
        if (!judgement.shared().isEmpty()) {
            reasons.add(Caveat.note(words.say("pairing.same-runs", String.join(", ", judgement.shared()))));
        }
        return new ComparedPair(
                first.key(),
                second.key(),
                subject(first, second),
                judgement.isRefused() ? Verdict.NOT_COMPARABLE.word() : "may-be-compared",
                judgement.isRefused() ? "" : difference(first, second, judgement.result()),
                reasons,
                judgement.isRefused() ? List.of() : reasons(judgement.caveats()),
                Optional.empty());
    }

    private String subject(Standing first, Standing second) {
        return words.say("chart.against", name(first, second), name(second, first));
    }

    private static String name(Standing of, Standing beside) {
        String level = of.answer().names().level(of.summary().level());
        return of.isOf(beside.answer())
                ? level
                : level + " (" + of.answer().study().id() + ")";
    }

    /** The difference, without a verdict: a comparison that nobody planned shows nothing by itself. */
    private String difference(Standing first, Standing second, ComparisonResult.Contrasted result) {
        Written written = ComparisonFigures.of(result, words);
        String why = String.join("; ", result.why());
        if (written.isAbsent()) {
            return why.isEmpty() ? words.say("pairing.none") : words.say("pairing.none-because", why);
        }
        String figure = written.withUnit();
        if (written.hasInterval()) {
            return words.say("pairing.difference", figure, Quotable.CONFIDENCE, written.interval());
        }
        return why.isEmpty()
                ? words.say("pairing.difference-alone", figure)
                : words.say("pairing.difference-because", figure, why);
    }

    /** Each with its rule. */
    private static List<Caveat> reasons(List<Finding> findings) {
        return FindingViews.worstFirst(findings).stream()
                .map(f -> new Caveat(
                        f.rule(),
                        Sentence.of(f.message())
                                + (f.consequence().isEmpty() ? "" : " " + Sentence.of(f.consequence())),
                        Optional.empty()))
                .distinct()
                .toList();
    }

    /** With the way to what a rule means, where the page of caveats has it. */
    private ComparedPair leadingOn(ComparedPair pair) {
        return new ComparedPair(
                pair.first(),
                pair.second(),
                pair.subject(),
                pair.verdict(),
                pair.words(),
                pair.reasons().stream().map(this::leadingOn).toList(),
                pair.caveats().stream().map(this::leadingOn).toList(),
                pair.evidence());
    }

    private Caveat leadingOn(Caveat caveat) {
        return caveat.more().isEmpty() && explained.contains(caveat.rule())
                ? Caveat.of(caveat.rule(), caveat.text(), FindingViews.rule(caveat.rule()))
                : caveat;
    }
}
