package org.evenhand.page.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.evenhand.model.Better;
import org.evenhand.model.Method;
import org.evenhand.page.Directory;
import org.evenhand.page.FileRows;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.RawCopies;
import org.evenhand.page.RawFile;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Entry;
import org.evenhand.page.view.HeadBlock;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Measurand;
import org.evenhand.page.view.MethodPage;
import org.evenhand.page.words.Hazards;
import org.evenhand.page.words.Names;
import org.evenhand.page.words.Reductions;
import org.evenhand.words.Words;

/** The page of a method. */
public final class MethodPages {

    private MethodPages() {}

    public static void build(Method method, PageContext context, Directory directory, PageSink sink) {
        Words words = context.words();
        String path = Address.method(method.id());
        RawFile raw = RawFile.behind(path, method.places().file().file(), words.say("record.method-raw"));
        MethodPage page = new MethodPage(
                context.frames()
                        .of(path, method.title(), words.say("record.method-about", method.id(), method.version())),
                new HeadBlock(words.say("record.method"), method.id(), method.version(), "", head(method, words)),
                method.title(),
                method.hazards().stream()
                        .map(hazard -> Hazards.caution(hazard, words))
                        .toList(),
                context.prose().flow(method.procedure(), path, Optional.empty()),
                method.records().entrySet().stream()
                        .map(column -> Entry.of(
                                Names.label(column.getKey()),
                                column.getValue().isOne()
                                        ? words.say("record.number")
                                        : column.getValue().symbol()))
                        .toList(),
                method.measurands().values().stream()
                        .map(measurand -> view(measurand, method, words))
                        .toList(),
                context.checked().studies().values().stream()
                        .filter(s -> s.evidence().study().methods().contains(method.id()))
                        .map(directory::listed)
                        .sorted(Directory.newestFirst())
                        .toList(),
                List.of(FileRows.of(context.root(), raw, words)));
        sink.put(path, context.render("method", page));
        RawCopies.put(context.root(), List.of(raw), sink);
    }

    static Link link(Method method) {
        return Link.to(method.title(), Address.method(method.id()));
    }

    private static List<Entry> head(Method method, Words words) {
        List<Entry> head = new ArrayList<>();
        method.runLength()
                .ifPresent(length -> head.add(Entry.of(words.say("record.run-length"), Names.quantity(length, words))));
        method.ambientRange()
                .ifPresent(range -> head.add(Entry.of(
                        words.say("record.ambient"),
                        words.say(
                                "record.ambient-range",
                                Names.quantity(range.lowest(), words),
                                Names.quantity(range.highest(), words)))));
        method.cooling()
                .ifPresent(cooling -> head.add(
                        Entry.of(words.say("record.cooling"), cooling.name().toLowerCase(Locale.ROOT))));
        method.maxGap()
                .ifPresent(gap -> head.add(Entry.of(words.say("record.longest-gap"), Names.quantity(gap, words))));
        return head;
    }

    private static Measurand view(org.evenhand.model.Measurand measurand, Method method, Words words) {
        String unit = measurand.unit().isOne() ? "" : measurand.unit().symbol();
        String better = measurand.better() == Better.NEITHER
                ? ""
                : measurand.better().name().toLowerCase(Locale.ROOT);
        return new Measurand(
                Address.measurand(measurand.id()),
                measurand.title(),
                unit,
                Reductions.of(measurand, method, words),
                better);
    }
}
