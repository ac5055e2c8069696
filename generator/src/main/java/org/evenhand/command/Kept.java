package org.evenhand.command;

import org.evenhand.cache.Cache;
import picocli.CommandLine.Option;

/** What is kept from one call to the next: the option of the commands that may use it. */
final class Kept {

    /** A few thousand runs with their charts; what is older makes room. */
    private static final long MOST_BYTES = 4L << 30;

    @Option(
            names = "--no-cache",
            description = "reads and computes everything anew, and keeps nothing of it for the next time")
    private boolean noCache;

    private Cache cache;

    Cache cache() {
        if (cache == null) {
            cache = noCache ? Cache.none() : CacheFolder.open();
        }
        return cache;
    }

    /** To be called when all is done. */
    void tidy() {
        cache().trim(MOST_BYTES);
    }
}
