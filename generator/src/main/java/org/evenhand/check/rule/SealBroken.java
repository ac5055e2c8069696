package org.evenhand.check.rule;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.evenhand.check.FolderRule;
import org.evenhand.check.Group;
import org.evenhand.check.RuleFacts;
import org.evenhand.measure.Measurements;
import org.evenhand.model.Finding;
import org.evenhand.model.Place;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Seal;
import org.evenhand.model.Severity;
import org.evenhand.model.Status;
import org.evenhand.model.Study;
import org.evenhand.model.Subject;
import org.evenhand.read.FormerAnswer;
import org.evenhand.read.Seals;
import org.evenhand.read.Sha256;
import org.evenhand.words.Words;

/** What was sealed stays as it was, and a study does not fall behind it. Source: ISO/IEC 17025:2017, 7.8.8.3. */
public final class SealBroken implements FolderRule {

    private static final RuleFacts FACTS = RuleFacts.of("seal-broken", Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public List<Finding> check(ResultsFolder folder, Measurements measured, Path root, Words words) {
        List<Finding> findings = new ArrayList<>();
        folder.seals().values().stream().flatMap(Collection::stream).forEach(seal -> {
            Study study = folder.studies().get(seal.study());
            if (!seal.isWhole()) {
                findings.add(broken(seal, study, words));
            } else if (study != null) {
                fallenBehind(seal, study, root, words).ifPresent(findings::add);
            }
        });
        return findings;
    }

    private static Finding broken(Seal seal, Study study, Words words) {
        int more = seal.faults().size() - 1;
        Seal.Fault first = seal.faults().get(0);
        String what = words.say("seal." + first.flaw().id(), first.path());
        return Finding.fault(
                FACTS.id(),
                FACTS.severity(),
                Place.of(Seals.FOLDER + "/" + seal.list()),
                study == null ? Subject.PUBLICATION : Subject.study(seal.study()),
                more == 0
                        ? words.say("rules-reading.seal-broken.found", seal.version(), seal.study(), what)
                        : words.say("rules-reading.seal-broken.found-more", seal.version(), seal.study(), what, more),
                words.say("rules-reading.seal-broken.remedy"));
    }

    private static Optional<Finding> fallenBehind(Seal seal, Study study, Path root, Words words) {
        if (seal.version() > study.version()) {
            return Optional.of(Finding.fault(
                    FACTS.id(),
                    FACTS.severity(),
                    study.places().of("revisions"),
                    Subject.study(study.id()),
                    words.say("rules-reading.seal-broken.behind", seal.version(), study.version()),
                    words.say("rules-reading.seal-broken.behind-remedy")));
        }
        boolean isLatest = seal.version() == study.version();
        boolean hasEnded = study.status() == Status.SUPERSEDED || study.status() == Status.WITHDRAWN;
        String sealed = seal.files().get(seal.folder() + FormerAnswer.TEXT);
        if (!isLatest || hasEnded || sealed == null || sealed.equals(digest(root, study))) {
            return Optional.empty();
        }
        return Optional.of(Finding.fault(
                FACTS.id(),
                Severity.CAVEAT,
                study.places().file(),
                Subject.study(study.id()),
                words.say("rules-reading.seal-broken.changed", seal.version()),
                words.say("rules-reading.seal-broken.changed-remedy")));
    }

    private static String digest(Path root, Study study) {
        try {
            return Sha256.of(
                    Files.readAllBytes(root.resolve(study.places().file().file())));
        } catch (IOException e) {
            return "";
        }
    }
}
