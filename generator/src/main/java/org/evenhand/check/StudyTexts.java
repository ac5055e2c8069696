package org.evenhand.check;

import java.util.ArrayList;
import java.util.List;
import org.evenhand.model.Publication;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Study;
import org.evenhand.prose.Mention;
import org.evenhand.prose.Names;
import org.evenhand.prose.ProseSource;
import org.evenhand.prose.ProseSource.Form;
import org.evenhand.prose.ProseText;

/** The texts of a study that speak of its figures, read once for all rules. For one thread. */
public final class StudyTexts {

    private final Study study;
    private final String language;
    private final Names names;
    private List<ProseText> texts;
    private List<Mention> mentions;

    /**
     * Nothing is read before it is asked for.
     *
     * @param folder in which the study stands
     * @param names of the folder, which all of its studies share
     */
    StudyTexts(ResultsFolder folder, Study study, Names names) {
        this.study = study;
        this.language = folder.publication().map(Publication::language).orElse("en");
        this.names = names;
    }

    Names names() {
        return names;
    }

    /** Short answer, caveats, revisions, captions and the body, in this order. */
    List<ProseText> texts() {
        if (texts == null) {
            texts = sources(study).stream().map(ProseText::read).toList();
        }
        return texts;
    }

    /** The quantities that they speak of, in the same order. */
    public List<Mention> mentions() {
        if (mentions == null) {
            mentions = texts().stream()
                    .flatMap(t -> Mention.in(t, language).stream())
                    .toList();
        }
        return mentions;
    }

    private static List<ProseSource> sources(Study study) {
        List<ProseSource> texts = new ArrayList<>();
        study.shortAnswer().ifPresent(t -> field(study, "short-answer", t, texts));
        for (int i = 0; i < study.caveats().size(); i++) {
            field(study, "caveats/" + i, study.caveats().get(i), texts);
        }
        for (int i = 0; i < study.revisions().size(); i++) {
            field(study, "revisions/" + i + "/what", study.revisions().get(i).what(), texts);
            field(study, "revisions/" + i + "/why", study.revisions().get(i).why(), texts);
        }
        for (int i = 0; i < study.pictures().size(); i++) {
            field(study, "pictures/" + i + "/shows", study.pictures().get(i).shows(), texts);
        }
        texts.add(ProseSource.body(study.places().file().file(), study.answerLine(), study.answer()));
        return texts;
    }

    private static void field(Study study, String path, String text, List<ProseSource> texts) {
        texts.add(ProseSource.field(study.places(), path, text, Form.INLINE));
    }
}
