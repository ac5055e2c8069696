package org.evenhand.page;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.UnaryOperator;
import org.evenhand.cache.Cache;
import org.evenhand.check.CheckedFolder;
import org.evenhand.model.Publication;
import org.evenhand.model.Study;
import org.evenhand.page.answer.AnswerPages;
import org.evenhand.page.answer.ComparePages;
import org.evenhand.page.kept.KeptPages;
import org.evenhand.page.overview.CaveatPages;
import org.evenhand.page.overview.ChangePages;
import org.evenhand.page.overview.Citation;
import org.evenhand.page.overview.Crate;
import org.evenhand.page.overview.DataPackage;
import org.evenhand.page.overview.Feed;
import org.evenhand.page.overview.Headers;
import org.evenhand.page.overview.History;
import org.evenhand.page.overview.IndexPages;
import org.evenhand.page.overview.SearchIndex;
import org.evenhand.page.overview.Sitemap;
import org.evenhand.page.record.InstrumentPages;
import org.evenhand.page.record.ItemPages;
import org.evenhand.page.record.MethodPages;
import org.evenhand.page.record.RunPages;
import org.evenhand.page.view.Address;
import org.evenhand.words.Words;

/** Builds all pages and data files of a site. */
public final class Pages {

    private Pages() {}

    /**
     * Builds the whole site but for its manifest. What comes out depends on what is given alone; in which order the
     * sink is called does not, and it may be called from several threads at a time.
     *
     * @param checked the results folder with everything that was found
     * @param root where it lies, for raw files
     * @param templates that pages are filled into
     * @param generator name and version of the program, as pages print it
     * @param sink takes each file once
     * @throws IllegalArgumentException if the folder does not say who publishes
     */
    public static void build(CheckedFolder checked, Path root, Templates templates, String generator, PageSink sink) {
        build(checked, root, templates, generator, Optional.empty(), Cache.none(), sink);
    }

    /**
     * The same in the place of a former site: its sealed versions stay, and each of its pages whose subject is gone gives
     * way to one that says so.
     *
     * @param former a site with its manifest
     * @param cache of charts drawn and pages made before
     * @throws java.io.UncheckedIOException if the former site cannot be read
     */
    public static void build(
            CheckedFolder checked,
            Path root,
            Templates templates,
            String generator,
            Optional<Path> former,
            Cache cache,
            PageSink sink) {
        Publication publication = checked.folder()
                .publication()
                .orElseThrow(() -> new IllegalArgumentException("nothing can be published without a publication"));
        PagePictures pictures = new PagePictures(checked, root);
        Words words = Words.in(publication.language());
        PageContext context = new PageContext(
                checked,
                root,
                templates,
                generator,
                new Frames(publication, generator),
                new FolderProse(checked, pictures, words),
                new Drawings(cache, words),
                pictures,
                words);
        Directory directory = new Directory(context);
        History history = History.of(checked, words);
        Made made = new Made(sink);
        MadeBefore before = new MadeBefore(cache, context);

        Templates.ASSETS.stream().filter(made::wants).forEach(path -> made.put(path, templates.asset(path)));
        directory.runs().parallelStream()
                .filter(run ->
                        made.wants(Address.run(run.run().study(), run.run().id())))
                .forEach(run -> before.run(run, directory, made, to -> RunPages.build(run, context, directory, to)));
        wanted(checked.folder().items(), Address::item, made)
                .forEach(item -> ItemPages.build(item, context, directory, made));
        wanted(checked.folder().methods(), Address::method, made)
                .forEach(method -> MethodPages.build(method, context, directory, made));
        wanted(checked.folder().instruments(), Address::instrument, made)
                .forEach(instrument -> InstrumentPages.build(instrument, context, directory, made));
        wanted(checked.studies(), Address::answer, made).parallelStream().forEach(study -> {
            Study of = study.evidence().study();
            RawFile raw =
                    RawFile.behind(Address.answer(of.id()), of.places().file().file(), words.say("table.study-raw"));
            before.answer(study, made, to -> {
                AnswerPages.build(study, context, to);
                RawCopies.put(root, List.of(raw), to);
            });
        });
        checked.folder().broken().stream()
                .filter(study -> made.wants(Address.answer(study)))
                .forEach(study -> AnswerPages.buildBroken(study, context, made));
        if (made.wants(Address.INDEX)) {
            IndexPages.build(context, directory, study -> AnswerPages.leading(study, context), made);
        }
        if (made.wants(Address.CAVEATS)) {
            CaveatPages.build(context, directory, made);
        }
        if (made.wants(Address.CHANGES)) {
            ChangePages.build(context, history, made);
        }
        if (made.wants(Address.COMPARE)) {
            ComparePages.build(context, before, made);
        }
        if (made.wants(SearchIndex.PATH)) {
            SearchIndex.build(context, made);
        }
        pictures.put(made);
        Feed.build(context, history, made);
        Headers.build(made);
        KeptPages kept = new KeptPages(context, made);
        kept.ofFolder();
        former.ifPresent(site -> kept.ofFormer(site, made.files().keySet()));
        // These tell of all files, and are nothing without them.
        if (made.wants(Sitemap.PATH)) {
            Sitemap.build(context, directory, history, made, made);
        }
        if (made.wants(DataPackage.PATH)) {
            DataPackage.build(context, history, made, made);
        }
        Citation.build(context, history, made);
        if (made.wants(Crate.PATH)) {
            Crate.build(context, directory, history, made, made);
            kept.gone(made.files().keySet());
        }
    }

    /** Those of some things whose pages are wanted, in their order. */
    private static <T> List<T> wanted(SortedMap<String, T> byId, UnaryOperator<String> address, PageSink sink) {
        return byId.entrySet().stream()
                .filter(entry -> sink.wants(address.apply(entry.getKey())))
                .map(Map.Entry::getValue)
                .toList();
    }
}
