package org.evenhand.page.answer;

import org.evenhand.page.PageContexts;

/** The studies of the sample on the way to their pages. */
final class SampleAnswers {

    private SampleAnswers() {}

    static Answer of(String study) {
        return Answer.of(
                SampleSite.CHECKED.studies().get(study), PageContexts.of(SampleSite.CHECKED, SampleSite.FOLDER));
    }
}
