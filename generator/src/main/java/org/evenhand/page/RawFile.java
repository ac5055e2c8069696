package org.evenhand.page;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.model.LogSource;
import org.evenhand.page.view.Address;
import org.evenhand.words.Words;

/**
 * A file of the results folder that the site hands on byte for byte, beside the page that tells of it.
 *
 * @param file within the results folder
 * @param path within the site
 * @param what it holds, in a few words
 * @param sha256 of its bytes if that is known already
 */
public record RawFile(String file, String path, String what, Optional<String> sha256) {

    /** Those of a run: what was written down, and the log if there is one that can be read. */
    public static List<RawFile> ofRun(MeasuredRun measured, Words words) {
        String page = Address.run(measured.run().study(), measured.run().id());
        Set<String> taken = new HashSet<>(Set.of(Address.INDEX));
        List<RawFile> files = new ArrayList<>();
        files.add(
                beside(page, measured.run().places().file().file(), words.say("log.run-raw"), Optional.empty(), taken));
        Optional<LogSource> log = measured.run().log();
        if (log.isPresent() && measured.sha256().isPresent()) {
            boolean packed = log.get().file().toLowerCase(Locale.ROOT).endsWith(".gz");
            String what = words.say(packed ? "log.raw-gzip" : "log.raw");
            files.add(beside(page, log.get().file(), what, measured.sha256(), taken));
        }
        return files;
    }

    /** The one file behind a page: an item's, a method's, an instrument's, a study's. */
    public static RawFile behind(String page, String file, String what) {
        return beside(page, file, what, Optional.empty(), new HashSet<>(Set.of(Address.INDEX)));
    }

    private static RawFile beside(String page, String file, String what, Optional<String> sha256, Set<String> taken) {
        String folder = page.substring(0, page.lastIndexOf('/') + 1);
        String name = file.substring(file.lastIndexOf('/') + 1);
        while (!taken.add(name.toLowerCase(Locale.ROOT))) {
            name = "raw-" + name;
        }
        return new RawFile(file, folder + name, what, sha256);
    }
}
