package org.evenhand.page.kept;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.CheckedStudy;
import org.evenhand.model.Revision;
import org.evenhand.model.Seal;
import org.evenhand.model.Study;
import org.evenhand.page.Sentence;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Notice;

/** What became of an answer since one of its versions was sealed. Source: ISO/IEC 17025:2017, 7.8.8. */
final class Standing {

    private Standing() {}

    static List<Notice> of(Seal seal, CheckedFolder checked) {
        List<Notice> notices = new ArrayList<>();
        String name = "This is version " + seal.version() + ", kept as it was sealed.";
        String answer = Address.answer(seal.study());
        Link digests = Link.to("Digests of this version", seal.list());
        Optional<CheckedStudy> present = Optional.ofNullable(checked.studies().get(seal.study()));
        if (present.isEmpty()) {
            boolean isBroken = checked.folder().broken().contains(seal.study());
            notices.add(
                    isBroken
                            ? new Notice(
                                    "Withheld",
                                    name + " The files of the present one cannot be read.",
                                    List.of(Link.to("Why", answer), digests))
                            : new Notice(
                                    "Removed",
                                    name + " Its study has been removed since, and nothing replaces it.",
                                    List.of(Link.to("The answer’s address", answer), digests)));
            return notices;
        }
        Study study = present.get().evidence().study();
        stands(study, checked).ifPresent(notices::add);
        if (present.get().isWithheld()) {
            notices.add(new Notice(
                    "Withheld",
                    name + " The present one is withheld because of what was found since.",
                    List.of(Link.to("What was found", answer), digests)));
        } else if (study.version() > seal.version()) {
            notices.add(new Notice(
                    "Not the latest",
                    name + " The answer has been amended since: " + amendments(seal, study),
                    List.of(Link.to("The latest, version " + study.version(), answer), digests)));
        } else {
            notices.add(new Notice(
                    "Sealed version",
                    name + " It is the latest.",
                    List.of(Link.to("The answer’s own address", answer), digests)));
        }
        return notices;
    }

    private static Optional<Notice> stands(Study study, CheckedFolder checked) {
        return switch (study.status()) {
            case SUPERSEDED ->
                Optional.of(new Notice(
                        "Superseded",
                        "A later report replaces this one. Read instead:",
                        study.supersededBy().stream()
                                .map(by -> Link.to(question(by, checked), Address.answer(by)))
                                .toList()));
            case WITHDRAWN ->
                Optional.of(new Notice(
                        "Withdrawn",
                        "The answer no longer stands."
                                + study.why().map(w -> " " + Sentence.of(w)).orElse(""),
                        List.of()));
            default -> Optional.empty();
        };
    }

    private static String question(String study, CheckedFolder checked) {
        CheckedStudy other = checked.studies().get(study);
        return other == null ? study : other.evidence().study().question();
    }

    /** What was amended after a version, the oldest first. */
    private static String amendments(Seal seal, Study study) {
        StringBuilder text = new StringBuilder();
        for (Revision revision :
                study.revisions().subList(seal.version() - 1, study.revisions().size())) {
            text.append(text.isEmpty() ? "" : " ")
                    .append("On ")
                    .append(revision.on())
                    .append(": ")
                    .append(Sentence.of(revision.what()))
                    .append(" Why: ")
                    .append(Sentence.of(revision.why()));
        }
        return text.toString();
    }
}
