package org.evenhand.page;

import java.nio.file.Path;
import org.evenhand.check.CheckedFolder;
import org.evenhand.words.Words;

/** The surroundings in which pages are built, for tests of what stands on them. */
public final class PageContexts {

    private PageContexts() {}

    public static PageContext of(CheckedFolder checked, Path folder) {
        String generator = "Evenhand test";
        PagePictures pictures = new PagePictures(checked, folder);
        Words words = Words.in(checked.folder().publication().orElseThrow().language());
        return new PageContext(
                checked,
                folder,
                Templates.bundled(),
                generator,
                new Frames(checked.folder().publication().orElseThrow(), generator),
                new FolderProse(checked, pictures, words),
                new Drawings(org.evenhand.cache.Cache.none(), words),
                pictures,
                words);
    }
}
