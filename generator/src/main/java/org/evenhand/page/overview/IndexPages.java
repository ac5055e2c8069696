package org.evenhand.page.overview;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.evenhand.check.CheckedStudy;
import org.evenhand.model.Finding;
import org.evenhand.model.Instrument;
import org.evenhand.model.Item;
import org.evenhand.model.Method;
import org.evenhand.model.Outcome;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Severity;
import org.evenhand.model.Status;
import org.evenhand.model.Study;
import org.evenhand.page.Directory;
import org.evenhand.page.FindingViews;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.Sentence;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Entry;
import org.evenhand.page.view.Figure;
import org.evenhand.page.view.IndexPage;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Listed;
import org.evenhand.page.view.Markup;
import org.evenhand.page.view.Question;
import org.evenhand.page.words.Counting;
import org.evenhand.page.words.Names;
import org.evenhand.page.words.StudyNames;
import org.evenhand.words.Words;

/** The front page: every question with its answer at a glance. */
public final class IndexPages {

    /** What can be read first; then what is asked for; last what no longer holds. */
    private static final List<String> ORDER =
            List.of("final", "draft", "withheld", "wanted", "superseded", "withdrawn");

    private final PageContext context;
    private final Directory directory;
    private final ResultsFolder folder;
    private final Words words;
    private final Function<CheckedStudy, Optional<Figure>> leading;

    private IndexPages(PageContext context, Directory directory, Function<CheckedStudy, Optional<Figure>> leading) {
        this.context = context;
        this.directory = directory;
        this.folder = context.checked().folder();
        this.words = context.words();
        this.leading = leading;
    }

    /** @param leading the figure that carries the answer of a study, if it has one */
    public static void build(
            PageContext context, Directory directory, Function<CheckedStudy, Optional<Figure>> leading, PageSink sink) {
        sink.put(Address.INDEX, context.render("index", new IndexPages(context, directory, leading).page()));
    }

    private IndexPage page() {
        List<Question> questions = new ArrayList<>();
        context.checked().studies().values().stream()
                .sorted(Comparator.comparing((CheckedStudy s) -> ORDER.indexOf(Directory.status(s)))
                        .thenComparing(
                                s -> s.evidence()
                                        .study()
                                        .answered()
                                        .map(Object::toString)
                                        .orElse(""),
                                Comparator.reverseOrder())
                        .thenComparing(s -> s.evidence().study().id()))
                .forEach(s -> questions.add(question(s)));
        folder.broken().forEach(id -> questions.add(broken(id)));
        String about = context.publication().about().orElse("");
        return new IndexPage(
                context.frames()
                        .of(
                                Address.INDEX,
                                context.publication().title(),
                                words.say(
                                        "overview.front-about",
                                        context.publication().publisher())),
                context.prose().flow(about, Address.INDEX, Optional.empty()),
                counts(questions),
                questions,
                folder.items().values().stream().map(this::listed).toList(),
                folder.methods().values().stream().map(this::listed).toList(),
                folder.instruments().values().stream().map(this::listed).toList());
    }

    private List<Entry> counts(List<Question> questions) {
        Map<String, Long> byStatus =
                questions.stream().collect(Collectors.groupingBy(Question::status, Collectors.counting()));
        String stand = ORDER.stream()
                .filter(byStatus::containsKey)
                .map(status -> words.say("overview.stand-" + status, byStatus.get(status)))
                .collect(Collectors.joining(", "));
        long runs = directory.runs().size();
        long specimens = directory.runs().stream()
                .map(r -> r.run().item() + "/" + r.run().specimen().orElse(""))
                .distinct()
                .count();
        return List.of(
                new Entry(words.say("page.questions"), List.of(Link.plain(Integer.toString(questions.size()))), stand),
                Entry.of(words.say("overview.runs"), Long.toString(runs)),
                Entry.of(words.say("record.specimens"), Long.toString(specimens)),
                Entry.of(words.say("page.caveats"), Link.to(Long.toString(caveats()), Address.CAVEATS)));
    }

    /** Those of the checks and the authors' own, each once. */
    private long caveats() {
        long found = context.checked().findings().stream()
                .filter(f -> f.severity() == Severity.CAVEAT && f.outcome() == Outcome.FOUND)
                .map(f -> f.rule() + "\n" + f.place() + "\n" + f.message())
                .distinct()
                .count();
        long own = context.checked().studies().values().stream()
                .mapToLong(s -> s.evidence().study().caveats().size())
                .sum();
        return found + own;
    }

    private Question question(CheckedStudy checked) {
        Study study = checked.evidence().study();
        TreeSet<String> items = new TreeSet<>();
        checked.evidence().runs().forEach(r -> items.add(r.run().item()));
        return new Question(
                study.id(),
                Directory.question(study),
                Directory.status(checked),
                shortAnswer(checked),
                checked.isWithheld() ? Optional.empty() : leading.apply(checked),
                items.stream()
                        .map(id -> Link.to(folder.items().get(id).name(), Address.item(id)))
                        .toList(),
                study.methods().stream()
                        .map(id -> Link.to(folder.methods().get(id).title(), Address.method(id)))
                        .toList(),
                study.answered().map(Object::toString).orElse(""));
    }

    private Markup shortAnswer(CheckedStudy checked) {
        Study study = checked.evidence().study();
        if (checked.isWithheld()) {
            List<Finding> withholding = checked.findings().stream()
                    .filter(f -> f.severity() == Severity.WITHHOLD && f.outcome() == Outcome.FOUND)
                    .toList();
            return Markup.text(
                    words.say("overview.withheld", FindingViews.told(FindingViews.worstFirst(withholding), words)));
        }
        if (study.status() == Status.WANTED) {
            return Markup.text(wanted(checked));
        }
        return study.shortAnswer()
                .map(text -> context.prose().phrase(text, Address.INDEX, Optional.of(checked)))
                .orElse(Markup.NONE);
    }

    /** Which runs would answer a question. */
    private String wanted(CheckedStudy checked) {
        Study study = checked.evidence().study();
        StudyNames names = new StudyNames(folder, study, words);
        List<String> lacking = new ArrayList<>();
        for (String level : study.levels()) {
            long there = checked.evidence().runs().stream()
                    .filter(r -> r.level().equals(level) && r.run().counts())
                    .count();
            long planned = study.plannedRuns().orElse(1);
            if (there < planned) {
                lacking.add(words.say(
                        "overview.lacking-at", Counting.of(planned - there, "run", words), names.under(level)));
            }
        }
        return lacking.isEmpty()
                ? words.say("overview.all-there")
                : words.say("overview.lacking", String.join(", ", lacking));
    }

    private Question broken(String study) {
        return new Question(
                study,
                Link.to(study, Address.answer(study)),
                "withheld",
                Markup.text(words.say("overview.unreadable")),
                Optional.empty(),
                List.of(),
                List.of(),
                "");
    }

    private Listed listed(Item item) {
        long runs = directory.runs().stream()
                .filter(r -> r.run().item().equals(item.id()))
                .count();
        return new Listed(
                Link.to(item.name(), Address.item(item.id())),
                "",
                "",
                Sentence.of(words.say(
                        "overview.item-runs",
                        item.kind(),
                        Counting.of(item.specimens().size(), "specimen", words),
                        runs == 0 ? words.say("record.no-run") : Counting.of(runs, "run", words))));
    }

    private Listed listed(Method method) {
        return new Listed(
                Link.to(method.title(), Address.method(method.id())),
                "",
                "",
                method.runLength()
                        .map(l -> words.say("overview.method-length", method.version(), Names.quantity(l, words)))
                        .orElseGet(() -> words.say("overview.method", method.version())));
    }

    private Listed listed(Instrument instrument) {
        return new Listed(
                Link.to(Names.instrument(instrument), Address.instrument(instrument.id())),
                "",
                "",
                Sentence.of(words.say("overview.reads", instrument.reads())));
    }
}
