package org.evenhand.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;

/** Takes the files of a site, each once; may be called from several threads at a time. */
public interface PageSink {

    /**
     * Takes one file.
     *
     * @param path from the site's root, with "/" between the parts
     * @param bytes not changed afterwards
     */
    void put(String path, byte[] bytes);

    /**
     * Takes a file of the results folder as it stands there. A sink that writes to disk does so without reading it into
     * memory.
     *
     * @param path from the site's root, with "/" between the parts
     * @param sha256 of its bytes when it was read, 64 hexadecimal digits
     * @throws IOException if the source cannot be read
     */
    default void copy(String path, Path source, String sha256) throws IOException {
        put(path, Files.readAllBytes(source));
    }

    /**
     * Takes files that the former site has already, at the same paths and with the same bytes: all of them, or none.
     *
     * @param files by path from the site's root
     * @return whether it did; if not, they are to be made
     */
    default boolean again(SortedMap<String, SiteFile> files) {
        return false;
    }

    /**
     * Whether a page is wanted, and what stands beside it, or a picture that is costly to draw. What is not need not be
     * made: so whoever looks at one page does not wait for all.
     *
     * @param path of the page or the picture
     */
    default boolean wants(String path) {
        return true;
    }
}
