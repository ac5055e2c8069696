package org.evenhand.check;

import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import org.evenhand.cache.Cache;
import org.evenhand.check.rule.ReadingRules;
import org.evenhand.compare.Comparer;
import org.evenhand.compare.StudyEvidence;
import org.evenhand.measure.LogFacts;
import org.evenhand.measure.Measurements;
import org.evenhand.model.Limits;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Study;
import org.evenhand.read.FolderReader;
import org.evenhand.read.FormerAnswer;

/** The way from files to findings: read, measure, compare, check. */
public final class FolderChecker {

    private FolderChecker() {}

    /** Checks a results folder. Never throws for anything that is in it. */
    public static CheckedFolder check(Path root) {
        return check(root, Optional.empty());
    }

    /** The same, held against a former publication. */
    public static CheckedFolder check(Path root, Optional<Path> formerSite) {
        return check(root, formerSite, Limits.DEFAULT);
    }

    /** The same within limits of the caller's own. */
    public static CheckedFolder check(Path root, Optional<Path> formerSite, Limits limits) {
        return check(root, formerSite, limits, Cache.none(), Progress.NONE);
    }

    /**
     * The same, without doing again what was done before.
     *
     * @param limits of the caller
     * @param cache what is known of logs that have not changed
     * @param progress told of each stage and of each run
     */
    public static CheckedFolder check(
            Path root, Optional<Path> formerSite, Limits limits, Cache cache, Progress progress) {
        progress.begins("read");
        ResultsFolder read = FolderReader.read(root, limits);
        progress.begins("measure");
        progress.expects(read.studies().values().stream()
                .mapToInt(study -> study.runs().size())
                .sum());
        Measurements measured = Measurements.measure(
                read,
                root,
                cache,
                run -> progress.done(run.log().map(LogFacts::samples).orElse(0L)));
        progress.begins("check files");
        ResultsFolder folder = read.with(ReadingRules.OF_FOLDER.stream()
                .flatMap(rule -> rule.check(read, measured, root, Checker.words(read)).stream())
                .toList());
        progress.begins("compare");
        SortedMap<String, StudyEvidence> evidence = Comparer.compare(folder, measured);
        progress.begins("check studies");
        return Checker.check(folder, measured, evidence, study -> former(study, folder, root, formerSite));
    }

    /** What was sealed of the present version; else what a former site says. */
    private static Optional<FormerAnswer> former(
            Study study, ResultsFolder folder, Path root, Optional<Path> formerSite) {
        return folder.seals(study.id()).stream()
                .filter(seal -> seal.version() == study.version())
                .findFirst()
                .flatMap(seal -> FormerAnswer.of(root, seal))
                .or(() -> formerSite.flatMap(site -> FormerAnswer.of(site, study.id())));
    }
}
