package org.evenhand.page;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.evenhand.cache.Cache;
import org.evenhand.check.CheckedStudy;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.model.Study;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Listed;

/**
 * Makes pages with what stands beside them, but for those that were made before from the same and that the former site still
 * has.
 *
 * <p>What a page is made from is known by the bytes of the files that its figures, texts and names come from, and by what was
 * found. A page that asks for a picture is always made, because no digest of a picture is known.
 */
public final class MadeBefore {

    private static final String STUDIES = "studies/";
    private static final String STUDIES_END = "studies0"; // the digit follows the slash

    private final Cache cache;
    private final PageContext context;
    /** A key of what all pages are made from. */
    private final String common;

    private final Map<String, String> keys = new ConcurrentHashMap<>();

    MadeBefore(Cache cache, PageContext context) {
        this.cache = cache;
        this.context = context;
        this.common = cache.keepsNothing() ? "" : common(cache, context);
    }

    private static String common(Cache cache, PageContext context) {
        SortedMap<String, String> files =
                new TreeMap<>(context.checked().folder().digests());
        files.subMap(STUDIES, STUDIES_END).clear();
        return cache.key("pages", context.generator(), context.templates().overriding(), files);
    }

    /** What was made, as the cache keeps it. */
    record Kept(SortedMap<String, SiteFile> files) {}

    /** Where things made before are kept. */
    public Cache cache() {
        return cache;
    }

    /** A key of all that the page of a study is made from; the same as long as nothing of it changes. */
    public String key(CheckedStudy study) {
        return keys.computeIfAbsent(study.evidence().study().id(), id -> key(Address.answer(id), from(study)));
    }

    private List<Object> from(CheckedStudy study) {
        SortedSet<String> owners = new TreeSet<>(Set.of(study.evidence().study().id()));
        SortedMap<String, String> logs = new TreeMap<>();
        for (LevelRun run : study.evidence().runs()) {
            String owner = run.run().study();
            owners.add(owner);
            run.measured()
                    .sha256()
                    .ifPresent(sha256 -> logs.put(owner + "/" + run.run().id(), sha256));
        }
        SortedMap<String, String> files = new TreeMap<>();
        owners.forEach(owner -> files.putAll(filesOf(owner)));
        return List.of(
                files,
                logs,
                context.checked().folder().seals(study.evidence().study().id()),
                study.findings(),
                study.moved(),
                study.movedSentences());
    }

    private String key(String page, List<Object> from) {
        return cache.key("page", page, common, from);
    }

    /** The page of a study. */
    void answer(CheckedStudy study, PageSink sink, Consumer<PageSink> make) {
        make(Address.answer(study.evidence().study().id()), key(study), sink, make);
    }

    /** The page of a run. */
    void run(MeasuredRun measured, Directory directory, PageSink sink, Consumer<PageSink> make) {
        String study = measured.run().study();
        SortedMap<String, String> digests = context.checked().folder().digests();
        Study of = context.checked().folder().studies().get(study);
        List<Listed> answers = directory.studiesOf(measured.run()).stream()
                .map(directory::listed)
                .toList();
        List<Object> from = Arrays.asList(
                digests.get(of.places().file().file()),
                digests.get(measured.run().places().file().file()),
                measured.sha256(),
                directory.findings(measured),
                answers);
        String page = Address.run(study, measured.run().id());
        make(page, key(page, from), sink, make);
    }

    private void make(String page, String key, PageSink sink, Consumer<PageSink> make) {
        boolean again = cache.get(key, Kept.class)
                .filter(kept -> sink.again(kept.files()))
                .isPresent();
        if (again) {
            return;
        }
        Made made = new Made(sink);
        make.accept(made);
        if (!made.lacksSome() && !context.pictures().dependsOnPictures(page)) {
            cache.put(key, new Kept(made.files()));
        }
    }

    /** The files of a study as they were read. */
    private SortedMap<String, String> filesOf(String study) {
        return context.checked().folder().digests().subMap(STUDIES + study + "/", STUDIES + study + "0");
    }
}
