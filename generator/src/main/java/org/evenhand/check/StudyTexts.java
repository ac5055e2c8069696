package org.evenhand.check;

import java.util.ArrayList;
import java.util.List;
import org.evenhand.model.Study;
import org.evenhand.prose.ProseSource;
import org.evenhand.prose.ProseSource.Form;

/** The texts of a study that speak of its figures. */
public final class StudyTexts {

    private StudyTexts() {}

    /** Short answer, caveats, revisions, captions and the body, in this order. */
    public static List<ProseSource> of(Study study) {
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
        texts.add(ProseSource.field(study.places().of(path), text, Form.INLINE));
    }
}
