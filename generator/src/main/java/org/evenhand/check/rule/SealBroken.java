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

/** What was sealed stays as it was, and a study does not fall behind it. Source: ISO/IEC 17025:2017, 7.8.8.3. */
public final class SealBroken implements FolderRule {

    private static final RuleFacts FACTS = RuleFacts.of("seal-broken", Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public List<Finding> check(ResultsFolder folder, Measurements measured, Path root) {
        List<Finding> findings = new ArrayList<>();
        folder.seals().values().stream().flatMap(Collection::stream).forEach(seal -> {
            Study study = folder.studies().get(seal.study());
            if (!seal.isWhole()) {
                findings.add(broken(seal, study));
            } else if (study != null) {
                fallenBehind(seal, study, root).ifPresent(findings::add);
            }
        });
        return findings;
    }

    private static Finding broken(Seal seal, Study study) {
        int more = seal.faults().size() - 1;
        return Finding.fault(
                FACTS.id(),
                FACTS.severity(),
                Place.of(Seals.FOLDER + "/" + seal.list()),
                study == null ? Subject.PUBLICATION : Subject.study(seal.study()),
                "version " + seal.version() + " of “" + seal.study() + "” is not whole: "
                        + seal.faults().get(0) + (more > 0 ? ", and " + more + " more" : ""),
                "put the files back as they were, from a copy or from the published site; never edit what is sealed");
    }

    private static Optional<Finding> fallenBehind(Seal seal, Study study, Path root) {
        if (seal.version() > study.version()) {
            return Optional.of(Finding.fault(
                    FACTS.id(),
                    FACTS.severity(),
                    study.places().of("revisions"),
                    Subject.study(study.id()),
                    "version " + seal.version() + " is sealed, but the study says that it is version "
                            + study.version(),
                    "put the revisions back: each makes a new version"));
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
                "the text of version " + seal.version() + " has changed since that version was sealed",
                "add an entry to revisions, which makes a new version: on, what, why"));
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
