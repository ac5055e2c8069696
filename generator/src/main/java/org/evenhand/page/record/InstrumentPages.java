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

/** The page of an instrument. */
public final class InstrumentPages {

    private InstrumentPages() {}

    public static void build(Instrument instrument, PageContext context, Directory directory, PageSink sink) {
        String path = Address.instrument(instrument.id());
        RawFile raw = RawFile.behind(path, instrument.places().file().file(), "Instrument, raw");
        InstrumentPage page = new InstrumentPage(
                context.frames()
                        .of(
                                path,
                                Names.instrument(instrument),
                                Names.instrument(instrument) + ": reads " + instrument.reads() + "."),
                new HeadBlock("Instrument", instrument.id(), "", "", head(instrument)),
                Names.instrument(instrument),
                instrument
                        .notes()
                        .map(notes -> context.prose().flow(notes, path, Optional.empty()))
                        .orElse(Markup.NONE),
                properties(instrument),
                FindingViews.of(path, directory.findingsIn(raw.file())).all(),
                directory.studiesWithRun(run -> run.instruments().containsValue(instrument.id())).stream()
                        .map(directory::listed)
                        .sorted(Directory.newestFirst())
                        .toList(),
                List.of(FileRows.of(context.root(), raw)));
        sink.put(path, context.render("instrument", page));
        RawCopies.put(context.root(), List.of(raw), sink);
    }

    static Link link(Instrument instrument) {
        return Link.to(Names.instrument(instrument), Address.instrument(instrument.id()));
    }

    private static List<Entry> head(Instrument instrument) {
        List<Entry> head = new ArrayList<>();
        head.add(Entry.of("Reads", instrument.reads()));
        head.add(Entry.of(
                "Calibrated", instrument.calibrated().map(Object::toString).orElse("not recorded")));
        validUntil(instrument).ifPresent(until -> head.add(Entry.of("Valid until", until.toString())));
        return head;
    }

    private static Optional<LocalDate> validUntil(Instrument instrument) {
        return instrument
                .calibrated()
                .flatMap(on -> instrument.calibrationValid().map(on::plus));
    }

    private static List<Entry> properties(Instrument instrument) {
        List<Entry> properties = new ArrayList<>();
        instrument
                .boundary()
                .ifPresent(boundary -> properties.add(Entry.of("Where it measures", Names.boundary(boundary))));
        instrument
                .resolution()
                .ifPresent(resolution -> properties.add(new Entry(
                        "Resolution",
                        List.of(Link.plain(Names.quantity(resolution))),
                        "The smallest change that shows.")));
        instrument
                .accuracy()
                .ifPresent(accuracy -> properties.add(new Entry(
                        "Accuracy",
                        List.of(Link.plain(accuracy(accuracy))),
                        "Limits of error stated by its maker, taken as rectangular: divided by √3 for the standard"
                                + " uncertainty.")));
        if (instrument.accuracy().isEmpty()) {
            properties.add(Entry.of("Accuracy", "not stated"));
        }
        instrument.weighting().ifPresent(weighting -> properties.add(Entry.of("Frequency weighting", weighting)));
        return properties;
    }

    private static String accuracy(Accuracy accuracy) {
        String share = accuracy.ofReading().signum() == 0
                ? ""
                : accuracy.ofReading().movePointRight(2).stripTrailingZeros().toPlainString() + Figures.NO_BREAK_SPACE
                        + "% of reading";
        String fixed = accuracy.fixed().map(Names::quantity).orElse("");
        return share.isEmpty() || fixed.isEmpty() ? share + fixed : share + " + " + fixed;
    }
}
