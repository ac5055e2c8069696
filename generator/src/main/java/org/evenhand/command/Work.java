package org.evenhand.command;

import java.io.PrintStream;
import org.evenhand.cache.Cache;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How the work is done: options of the commands that read a whole results folder once. */
final class Work {

    @Mixin
    private final Kept kept = new Kept();

    @Option(names = "--timings", description = "prints how long each stage took, and the most memory it needed")
    private boolean timings;

    Cache cache() {
        return kept.cache();
    }

    Stages stages(PrintStream err) {
        return new Stages(err, System.console() != null, timings);
    }

    /** To be called when all is done. */
    void tidy() {
        kept.tidy();
    }
}
