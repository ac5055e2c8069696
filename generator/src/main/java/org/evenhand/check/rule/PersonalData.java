package org.evenhand.check.rule;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.evenhand.check.FolderRule;
import org.evenhand.check.Group;
import org.evenhand.check.RuleFacts;
import org.evenhand.measure.MeasuredRun;
import org.evenhand.measure.Measurements;
import org.evenhand.model.Finding;
import org.evenhand.model.Place;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Run;
import org.evenhand.model.Severity;
import org.evenhand.model.Study;
import org.evenhand.model.Subject;
import org.evenhand.words.Words;

/** What tells of people or their networks does not belong into published files. */
public final class PersonalData implements FolderRule {

    /** How much of each file is looked at, unpacked: headers, comments and the first hours of a log. */
    private static final int BYTES = 4_000_000;

    private static final int FILES = 100_000;

    private static final Set<String> KINDS = Set.of("yaml", "yml", "json", "md", "csv", "txt", "log", "gz");

    private static final RuleFacts FACTS = RuleFacts.of("personal-data", Group.READING, Severity.CAVEAT);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public List<Finding> check(ResultsFolder folder, Measurements measured, Path root, Words words) {
        Map<String, Subject> subjects = subjects(folder);
        String contact = folder.publication().flatMap(p -> p.contact()).orElse("");
        // Several at a time; what comes out does not depend on how many.
        Map<String, Long> heads = heads(measured);
        return files(root).parallelStream()
                .flatMap(file -> found(
                        head(root, file, heads.getOrDefault(file, (long) BYTES)),
                        file,
                        contact,
                        subjects.getOrDefault(file, subject(file, folder)),
                        words))
                .toList();
    }

    /** By log: how much of it is not plain numbers, which tell of nobody and were read already. */
    private static Map<String, Long> heads(Measurements measured) {
        Map<String, Long> heads = new HashMap<>();
        for (Map<String, MeasuredRun> runs : measured.byStudy().values()) {
            for (MeasuredRun run : runs.values()) {
                run.numbersFrom()
                        .ifPresent(
                                bytes -> heads.put(run.run().log().orElseThrow().file(), bytes));
            }
        }
        return heads;
    }

    private static Stream<Finding> found(byte[] head, String file, String contact, Subject subject, Words words) {
        return PersonalTraces.in(head, contact).entrySet().stream().map(found -> {
            PersonalTraces.Trace trace = found.getValue();
            String kind = found.getKey().said(words);
            String message = trace.count() == 1
                    ? words.say("rules-reading.personal-data.found", kind)
                    : words.say("rules-reading.personal-data.found-more", kind, trace.count() - 1);
            return Finding.fault(
                    FACTS.id(),
                    FACTS.severity(),
                    new Place(file, trace.line(), trace.column(), trace.length()),
                    subject,
                    message,
                    words.say("rules-reading.personal-data.remedy"));
        });
    }

    /** Regular files of kinds that are published, sorted; links and hidden files are passed over. */
    private static List<String> files(Path root) {
        if (!Files.isDirectory(root)) {
            return List.of();
        }
        try (Stream<Path> walk = Files.walk(root)) {
            return walk.filter(Files::isRegularFile)
                    .filter(p -> !Files.isSymbolicLink(p))
                    .map(p -> root.relativize(p).toString().replace('\\', '/'))
                    .filter(f -> !f.startsWith(".") && !f.contains("/."))
                    .filter(f -> KINDS.contains(f.substring(f.lastIndexOf('.') + 1)))
                    .limit(FILES)
                    .sorted()
                    .toList();
        } catch (IOException | java.io.UncheckedIOException e) {
            return List.of(); // reading has told of it
        }
    }

    private static byte[] head(Path root, String file, long bytes) {
        try (InputStream in = Files.newInputStream(root.resolve(file))) {
            return (file.endsWith(".gz") ? new GZIPInputStream(in) : in).readNBytes((int) Math.min(BYTES, bytes));
        } catch (IOException e) {
            return new byte[0]; // reading has told of it
        }
    }

    private static Map<String, Subject> subjects(ResultsFolder folder) {
        Map<String, Subject> subjects = new HashMap<>();
        for (Study study : folder.studies().values()) {
            for (Run run : study.runs()) {
                Subject subject = Subject.run(study.id(), run.id());
                subjects.put(run.places().file().file(), subject);
                run.log().ifPresent(log -> subjects.put(log.file(), subject));
            }
        }
        return subjects;
    }

    private static Subject subject(String file, ResultsFolder folder) {
        String[] parts = file.split("/");
        boolean ofStudy = parts.length > 2
                && parts[0].equals("studies")
                && folder.studies().containsKey(parts[1]);
        return ofStudy ? Subject.study(parts[1]) : Subject.PUBLICATION;
    }
}
