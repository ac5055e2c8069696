package org.evenhand.page;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListMap;
import org.evenhand.chart.Raster;
import org.evenhand.check.CheckedFolder;
import org.evenhand.model.Places;
import org.evenhand.model.ResultsFolder;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Picture;
import org.evenhand.picture.PictureFiles;
import org.evenhand.picture.Pixels;
import org.evenhand.picture.UnfitException;
import org.evenhand.prose.PictureReference;

/**
 * The pictures that pages show, each beside its page. Only the pixels of a picture are handed on, never its file. Safe for
 * several threads.
 */
public final class PagePictures {

    private final ResultsFolder folder;
    private final Path root;
    private final Map<String, String> sources = new HashMap<>();
    private final Map<String, Optional<Raster>> drawn = new ConcurrentHashMap<>();
    private final SortedMap<String, Raster> shown = new ConcurrentSkipListMap<>();
    private final Set<String> asking = ConcurrentHashMap.newKeySet();

    PagePictures(CheckedFolder checked, Path root) {
        this.folder = checked.folder();
        this.root = root;
        folder.publication().ifPresent(p -> source(Address.INDEX, p.places()));
        folder.items().values().forEach(i -> source(Address.item(i.id()), i.places()));
        folder.methods().values().forEach(m -> source(Address.method(m.id()), m.places()));
        folder.instruments().values().forEach(i -> source(Address.instrument(i.id()), i.places()));
        folder.studies().values().forEach(study -> {
            source(Address.answer(study.id()), study.places());
            study.runs().forEach(run -> source(Address.run(study.id(), run.id()), run.places()));
        });
    }

    private void source(String page, Places places) {
        sources.put(page, places.file().file());
    }

    /** A picture that the text of a page names; nothing if it is not fit to be shown, or not described. */
    Optional<Picture> named(String page, PictureReference reference) {
        asking.add(page);
        String from = sources.get(page);
        if (from == null || reference.shows().isEmpty() || reference.credit().isEmpty()) {
            return Optional.empty();
        }
        try {
            String file = PictureFiles.addressed(from, reference.address());
            return picture(page, from, file, reference.shows(), reference.credit());
        } catch (UnfitException e) {
            return Optional.empty(); // the checks have told it
        }
    }

    /** Those of a list that are fit to be shown. */
    public List<Picture> of(String page, List<org.evenhand.model.Picture> pictures) {
        return pictures.stream().flatMap(p -> listed(page, p).stream()).toList();
    }

    private Optional<Picture> listed(String page, org.evenhand.model.Picture picture) {
        asking.add(page);
        String from = sources.get(page);
        if (from == null) {
            return Optional.empty();
        }
        try {
            String file = PictureFiles.within(from, picture.file());
            return picture(page, from, file, picture.shows(), picture.by() + ", " + picture.licence());
        } catch (UnfitException e) {
            return Optional.empty();
        }
    }

    private Optional<Picture> picture(String page, String from, String file, String shows, String credit)
            throws UnfitException {
        String path = page.substring(0, page.lastIndexOf('/') + 1) + "pictures/" + PictureFiles.published(from, file);
        return drawn.computeIfAbsent(file, this::draw).map(raster -> {
            shown.put(path, raster);
            return new Picture(path, raster.width(), raster.height(), shows, credit);
        });
    }

    private Optional<Raster> draw(String file) {
        try {
            Pixels pixels = PictureFiles.read(root, file, folder.limits());
            return Optional.of(Raster.of(pixels.rgb(), pixels.width(), pixels.height()));
        } catch (UnfitException e) {
            return Optional.empty();
        }
    }

    /** Whether a page has asked for a picture, shown or not: what it looks like then depends on a file that may change. */
    boolean dependsOnPictures(String page) {
        return asking.contains(page);
    }

    /** Hands on those that the pages so far show. */
    void put(PageSink sink) {
        shown.forEach((path, raster) -> sink.put(path, raster.png()));
    }
}
