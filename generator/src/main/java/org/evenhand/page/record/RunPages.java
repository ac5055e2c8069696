package org.evenhand.page.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenhand.check.CheckedStudy;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.measure.RunValue;
import org.evenhand.model.Item;
import org.evenhand.model.Method;
import org.evenhand.model.Run;
import org.evenhand.model.RunOutcome;
import org.evenhand.page.Directory;
import org.evenhand.page.FileRows;
import org.evenhand.page.FindingViews;
import org.evenhand.page.Href;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.RawCopies;
import org.evenhand.page.RawFile;
import org.evenhand.page.Sentence;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Entry;
import org.evenhand.page.view.HeadBlock;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Listed;
import org.evenhand.page.view.Notice;
import org.evenhand.page.view.RunColumn;
import org.evenhand.page.view.RunPage;
import org.evenhand.page.words.Names;
import org.evenhand.page.words.Origins;
import org.evenhand.page.words.RunValues;
import org.evenhand.page.words.StudyNames;
import org.evenhand.words.Words;

/** The page of a run, and its raw files. */
public final class RunPages {

    private final MeasuredRun measured;
    private final Run run;
    private final Method method;
    private final Optional<Item> item;
    private final PageContext context;
    private final Words words;
    private final Directory directory;

    private RunPages(MeasuredRun measured, PageContext context, Directory directory) {
        this.measured = measured;
        this.run = measured.run();
        this.method = context.checked().folder().methods().get(run.method());
        this.item = Optional.ofNullable(context.checked().folder().items().get(run.item()));
        this.context = context;
        this.words = context.words();
        this.directory = directory;
    }

    public static void build(MeasuredRun measured, PageContext context, Directory directory, PageSink sink) {
        new RunPages(measured, context, directory).build(sink);
    }

    private void build(PageSink sink) {
        String path = Address.run(run.study(), run.id());
        List<RawFile> raw = RawFile.ofRun(measured, words);
        CheckedStudy study = context.checked().studies().get(run.study());
        LogRows rows = new LogRows(measured, method, context.checked().folder().instruments(), words);
        Optional<Link> data = raw.size() > 1
                ? Optional.of(
                        Link.to(words.say("record.log-raw"), Href.of(raw.get(1).path())))
                : Optional.empty();
        RunPage page = new RunPage(
                context.frames()
                        .of(
                                path,
                                words.say("record.run", run.id()),
                                Sentence.of(words.say("record.run-about", itemName())),
                                Directory.question(study.evidence().study())),
                new HeadBlock(
                        words.say("record.run-record"),
                        run.study() + "/" + run.id(),
                        "",
                        Directory.word(run.outcome()),
                        head(study)),
                words.say("record.run", run.id()),
                notices(),
                RunConditions.of(run, words),
                LogDrawing.of(measured, method, item, rows, words)
                        .map(log -> log.figure(data, context.drawings()))
                        .stream()
                        .toList(),
                rows.all(),
                RunReadings.of(run, context.checked().folder().instruments(), words),
                method.measurands().values().stream()
                        .map(m -> new RunColumn(
                                m.title(), m.unit().isOne() ? "" : m.unit().symbol()))
                        .toList(),
                method.measurands().keySet().stream().map(this::value).toList(),
                RunSources.of(measured, method, context.checked().folder().instruments(), words),
                FindingViews.of(path, directory.findings(measured), words).all(),
                raw.stream()
                        .map(file -> FileRows.of(context.root(), file, words))
                        .toList(),
                answers(),
                context.pictures().of(path, run.pictures()));
        sink.put(path, context.render("run", page));
        RawCopies.put(context.root(), raw, sink);
    }

    private String itemName() {
        String name = item.map(Item::name).orElse(run.item());
        return run.specimen().map(s -> words.say("record.specimen-of", name, s)).orElse(name);
    }

    private List<Entry> head(CheckedStudy study) {
        List<Entry> head = new ArrayList<>();
        String factor = study.evidence().study().factor();
        StudyNames names =
                new StudyNames(context.checked().folder(), study.evidence().study(), words);
        if (!factor.equals("item") && !factor.equals("specimen")) {
            run.levelOf(factor).ifPresent(level -> head.add(Entry.of(Names.label(factor), names.level(level))));
        }
        Link tested = item.map(ItemPages::link).orElse(Link.plain(run.item()));
        head.add(new Entry(
                words.say("record.item"),
                List.of(tested),
                run.specimen().map(s -> words.say("record.specimen", s)).orElse("")));
        head.add(new Entry(
                words.say("record.method-used"),
                List.of(MethodPages.link(method)),
                words.say("record.version", run.methodVersion().orElse(method.version()))));
        run.started().ifPresent(time -> head.add(Entry.of(words.say("page.started"), Times.minute(time, words))));
        run.doneBy().ifPresent(name -> head.add(Entry.of(words.say("record.done-by"), name)));
        run.length().ifPresent(length -> head.add(Entry.of(words.say("record.length"), Names.quantity(length, words))));
        measured.log()
                .ifPresent(log -> head.add(new Entry(
                        words.say("record.log"),
                        List.of(Link.plain(words.say("record.sample-count", log.samples()))),
                        log.typicalStepS() > 0
                                ? words.say("record.one-every", Times.duration(log.typicalStepS(), words))
                                : "")));
        return head;
    }

    private List<Notice> notices() {
        List<Notice> notices = new ArrayList<>();
        if (run.outcome() != RunOutcome.COMPLETED) {
            notices.add(new Notice(
                    words.say("page.status-" + Directory.word(run.outcome())),
                    Sentence.of(run.why().orElse("")) + " "
                            + (hasValues() ? words.say("record.values-shown") : words.say("record.no-values")),
                    List.of()));
        }
        String origin = Origins.meaning(run.origin(), words);
        if (!origin.isEmpty()) {
            notices.add(new Notice(Names.label(Origins.mark(run.origin(), words)), origin, List.of()));
        }
        run.deviations()
                .forEach(d -> notices.add(new Notice(
                        words.say("record.deviates", deviating(d.from())), Sentence.of(d.why()), List.of())));
        return notices;
    }

    /** What deviates: a field of the method, which the page has a word for, or a setting. */
    private String deviating(String from) {
        return from.equals("run-length") ? words.say("record.deviates-length") : Names.setting(from);
    }

    private boolean hasValues() {
        return measured.values().values().stream().anyMatch(v -> !(v instanceof RunValue.Missing));
    }

    private org.evenhand.page.view.RunValue value(String measurand) {
        RunValue value = measured.value(measurand);
        org.evenhand.page.view.RunValue cell = RunValues.view(value, run.id(), measurand, run.origin(), words);
        return value instanceof RunValue.Missing missing
                ? new org.evenhand.page.view.RunValue(
                        cell.id(), "", "", missing.why().in(words))
                : cell;
    }

    private List<Listed> answers() {
        return directory.studiesOf(run).stream()
                .map(directory::listed)
                .sorted(Directory.newestFirst())
                .toList();
    }
}
