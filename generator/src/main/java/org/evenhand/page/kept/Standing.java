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
import org.evenhand.words.Words;

/** What became of an answer since one of its versions was sealed. Source: ISO/IEC 17025:2017, 7.8.8. */
final class Standing {

    private Standing() {}

    static List<Notice> of(Seal seal, CheckedFolder checked, Words words) {
        List<Notice> notices = new ArrayList<>();
        String name = words.say("kept.this-version", seal.version());
        String answer = Address.answer(seal.study());
        Link digests = Link.to(words.say("kept.digests"), seal.list());
        Optional<CheckedStudy> present = Optional.ofNullable(checked.studies().get(seal.study()));
        if (present.isEmpty()) {
            boolean isBroken = checked.folder().broken().contains(seal.study());
            notices.add(
                    isBroken
                            ? new Notice(
                                    words.say("kept.withheld"),
                                    words.say("kept.unreadable", name),
                                    List.of(Link.to(words.say("kept.why"), answer), digests))
                            : new Notice(
                                    words.say("kept.removed"),
                                    words.say("kept.removed-text", name),
                                    List.of(Link.to(words.say("kept.address"), answer), digests)));
            return notices;
        }
        Study study = present.get().evidence().study();
        stands(study, checked, words).ifPresent(notices::add);
        if (present.get().isWithheld()) {
            notices.add(new Notice(
                    words.say("kept.withheld"),
                    words.say("kept.withheld-text", name),
                    List.of(Link.to(words.say("kept.found"), answer), digests)));
        } else if (study.version() > seal.version()) {
            notices.add(new Notice(
                    words.say("kept.not-latest"),
                    words.say("kept.amended", name, amendments(seal, study, words)),
                    List.of(Link.to(words.say("kept.latest", study.version()), answer), digests)));
        } else {
            notices.add(new Notice(
                    words.say("kept.sealed"),
                    words.say("kept.is-latest", name),
                    List.of(Link.to(words.say("kept.own-address"), answer), digests)));
        }
        return notices;
    }

    private static Optional<Notice> stands(Study study, CheckedFolder checked, Words words) {
        return switch (study.status()) {
            case SUPERSEDED ->
                Optional.of(new Notice(
                        words.say("report.superseded"),
                        words.say("kept.superseded-text"),
                        study.supersededBy().stream()
                                .map(by -> Link.to(question(by, checked), Address.answer(by)))
                                .toList()));
            case WITHDRAWN ->
                Optional.of(new Notice(
                        words.say("report.withdrawn"),
                        words.say("report.withdrawn-text")
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
    private static String amendments(Seal seal, Study study, Words words) {
        StringBuilder text = new StringBuilder();
        for (Revision revision :
                study.revisions().subList(seal.version() - 1, study.revisions().size())) {
            text.append(text.isEmpty() ? "" : " ")
                    .append(words.say(
                            "kept.amendment",
                            words.day(revision.on()),
                            Sentence.of(revision.what()),
                            Sentence.of(revision.why())));
        }
        return text.toString();
    }
}
