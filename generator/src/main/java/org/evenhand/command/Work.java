package org.evenhand.command;

import java.io.PrintStream;
import org.evenhand.cache.Cache;
import picocli.CommandLine.Option;

/** How the work is done: options of the commands that read a whole results folder. */
final class Work {

    /** A few thousand runs with their charts; what is older makes room. */
    private static final long MOST_BYTES = 4L << 30;

    @Option(
            names = "--no-cache",
            description = "reads and computes everything anew, and keeps nothing of it for the next time")
    private boolean noCache;

    @Option(names = "--timings", description = "prints how long each stage took, and the most memory it needed")
    private boolean timings;

    private Cache cache;

    Cache cache() {
        if (cache == null) {
            cache = noCache ? Cache.none() : CacheFolder.open();
        }
        return cache;
    }

    Stages stages(PrintStream err) {
        return new Stages(err, System.console() != null, timings);
    }

    /** To be called when all is done. */
    void tidy() {
        cache().trim(MOST_BYTES);
    }
}
