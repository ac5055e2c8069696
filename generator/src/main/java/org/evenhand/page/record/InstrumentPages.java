package org.evenhand.page.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenhand.model.Instrument;
import org.evenhand.page.Directory;
import org.evenhand.page.FileRows;
import org.evenhand.page.FindingViews;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.RawCopies;
import org.evenhand.page.RawFile;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Entry;
import org.evenhand.page.view.HeadBlock;
import org.evenhand.page.view.InstrumentPage;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Markup;
import org.evenhand.page.words.Names;
import org.evenhand.quantity.Accuracy;
import org.evenhand.quantity.Figures;
import org.evenhand.words.Words;

/** The page of an instrument. */
public final class InstrumentPages {

    private InstrumentPages() {}

    public static void build(Instrument instrument, PageContext context, Directory directory, PageSink sink) {
        Words words = context.words();
        String path = Address.instrument(instrument.id());
        RawFile raw = RawFile.behind(path, instrument.places().file().file(), words.say("record.instrument-raw"));
        InstrumentPage page = new InstrumentPage(
                context.frames()
                        .of(
                                path,
                                Names.instrument(instrument),
                                words.say("record.instrument-about", Names.instrument(instrument), instrument.reads())),
                new HeadBlock(words.say("page.instrument"), instrument.id(), "", "", head(instrument, words)),
                Names.instrument(instrument),
                instrument
                        .notes()
                        .map(notes -> context.prose().flow(notes, path, Optional.empty()))
                        .orElse(Markup.NONE),
                properties(instrument, words),
                FindingViews.of(path, directory.findingsIn(raw.file()), words).all(),
                directory.studiesWithRun(run -> run.instruments().containsValue(instrument.id())).stream()
                        .map(directory::listed)
                        .sorted(Directory.newestFirst())
                        .toList(),
                List.of(FileRows.of(context.root(), raw, words)));
        sink.put(path, context.render("instrument", page));
        RawCopies.put(context.root(), List.of(raw), sink);
    }

    static Link link(Instrument instrument) {
        return Link.to(Names.instrument(instrument), Address.instrument(instrument.id()));
    }

    private static List<Entry> head(Instrument instrument, Words words) {
        List<Entry> head = new ArrayList<>();
        head.add(Entry.of(words.say("record.reads"), instrument.reads()));
        head.add(Entry.of(
                words.say("record.calibrated"),
                instrument.calibrated().map(words::day).orElse(words.say("record.not-recorded"))));
        validUntil(instrument)
                .ifPresent(until -> head.add(Entry.of(words.say("record.valid-until"), words.day(until))));
        return head;
    }

    private static Optional<LocalDate> validUntil(Instrument instrument) {
        return instrument
                .calibrated()
                .flatMap(on -> instrument.calibrationValid().map(on::plus));
    }

    private static List<Entry> properties(Instrument instrument, Words words) {
        List<Entry> properties = new ArrayList<>();
        instrument
                .boundary()
                .ifPresent(boundary ->
                        properties.add(Entry.of(words.say("record.where"), Names.boundary(boundary, words))));
        instrument
                .resolution()
                .ifPresent(resolution -> properties.add(new Entry(
                        words.say("record.resolution"),
                        List.of(Link.plain(Names.quantity(resolution, words))),
                        words.say("record.smallest"))));
        instrument
                .accuracy()
                .ifPresent(accuracy -> properties.add(new Entry(
                        words.say("record.accuracy"),
                        List.of(Link.plain(accuracy(accuracy, words))),
                        words.say("record.accuracy-about"))));
        if (instrument.accuracy().isEmpty()) {
            properties.add(Entry.of(words.say("record.accuracy"), words.say("record.not-stated")));
        }
        instrument
                .weighting()
                .ifPresent(weighting -> properties.add(Entry.of(words.say("record.weighting"), weighting)));
        return properties;
    }

    private static String accuracy(Accuracy accuracy, Words words) {
        String share = accuracy.ofReading().signum() == 0
                ? ""
                : words.say(
                        "record.of-reading",
                        words.number(accuracy.ofReading()
                                        .movePointRight(2)
                                        .stripTrailingZeros()
                                        .toPlainString()) + Figures.NO_BREAK_SPACE + "%");
        String fixed = accuracy.fixed().map(f -> Names.quantity(f, words)).orElse("");
        return share.isEmpty() || fixed.isEmpty() ? share + fixed : share + " + " + fixed;
    }
}
