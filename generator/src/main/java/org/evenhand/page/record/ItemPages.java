package org.evenhand.page.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.model.Item;
import org.evenhand.model.Run;
import org.evenhand.model.Study;
import org.evenhand.page.Directory;
import org.evenhand.page.FileRows;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.RawCopies;
import org.evenhand.page.RawFile;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Entry;
import org.evenhand.page.view.HeadBlock;
import org.evenhand.page.view.ItemPage;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Markup;
import org.evenhand.page.words.Names;
import org.evenhand.words.Words;

/** The page of a test item. */
public final class ItemPages {

    private ItemPages() {}

    public static void build(Item item, PageContext context, Directory directory, PageSink sink) {
        Words words = context.words();
        String path = Address.item(item.id());
        RawFile raw = RawFile.behind(path, item.places().file().file(), words.say("record.item-raw"));
        SortedMap<String, List<MeasuredRun>> runs = directory.runsByStudy(run -> isOf(run, item));
        ItemPage page = new ItemPage(
                context.frames().of(path, item.name(), words.say("record.item-about", item.name(), item.kind())),
                new HeadBlock(words.say("record.item"), item.id(), "", "", head(item, words)),
                item.name(),
                item.notes()
                        .map(notes -> context.prose().flow(notes, path, Optional.empty()))
                        .orElse(Markup.NONE),
                new TreeMap<>(item.limits())
                        .entrySet().stream()
                                .map(limit ->
                                        Entry.of(Names.label(limit.getKey()), Names.quantity(limit.getValue(), words)))
                                .toList(),
                specimens(item, runs, words),
                directory.studiesWithRun(run -> isOf(run, item)).stream()
                        .map(directory::listed)
                        .sorted(Directory.newestFirst())
                        .toList(),
                runs(runs, context),
                context.pictures().of(path, item.pictures()),
                List.of(FileRows.of(context.root(), raw, words)));
        sink.put(path, context.render("item", page));
        RawCopies.put(context.root(), List.of(raw), sink);
    }

    static Link link(Item item) {
        return Link.to(item.name(), Address.item(item.id()));
    }

    private static boolean isOf(Run run, Item item) {
        return run.item().equals(item.id());
    }

    private static List<Entry> head(Item item, Words words) {
        List<Entry> head = new ArrayList<>();
        head.add(Entry.of(words.say("record.kind"), item.kind()));
        item.maker().ifPresent(maker -> head.add(Entry.of(words.say("record.maker"), maker)));
        head.add(Entry.of(words.say("record.obtained"), item.obtained().orElse(words.say("record.not-stated"))));
        head.add(Entry.of(
                words.say("record.specimens"), Integer.toString(item.specimens().size())));
        return head;
    }

    private static List<Entry> specimens(Item item, SortedMap<String, List<MeasuredRun>> runs, Words words) {
        return item.specimens().stream()
                .map(specimen -> {
                    long count = runs.values().stream()
                            .flatMap(List::stream)
                            .filter(r ->
                                    r.run().specimen().filter(specimen::equals).isPresent())
                            .count();
                    return Entry.of(
                            specimen, count == 0 ? words.say("record.no-run") : words.say("record.in-runs", count));
                })
                .toList();
    }

    /** One entry for each study, with its runs side by side: there may be hundreds. */
    private static List<Entry> runs(SortedMap<String, List<MeasuredRun>> runs, PageContext context) {
        List<Entry> entries = new ArrayList<>();
        runs.forEach((id, ofStudy) -> {
            Study study = context.checked().folder().studies().get(id);
            List<Link> links = ofStudy.stream()
                    .map(r -> Link.to(r.run().id(), Address.run(id, r.run().id())))
                    .toList();
            entries.add(new Entry(
                    study == null ? id : study.question(),
                    links,
                    context.words().say("record.runs", links.size())));
        });
        return entries;
    }
}
