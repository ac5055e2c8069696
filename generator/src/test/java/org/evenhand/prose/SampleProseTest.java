package org.evenhand.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import org.evenhand.model.Place;
import org.evenhand.model.Study;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The prose of the sample renders whole: each link finds its figure. */
class SampleProseTest {

    private static final SampleEvidence SAMPLE = new SampleEvidence();

    @TestFactory
    List<DynamicTest> everyLinkOfTheSampleFindsItsFigure() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Study study : SAMPLE.folder().studies().values()) {
            for (ProseSource source : sources(study)) {
                tests.add(DynamicTest.dynamicTest(source.start().toString(), () -> {
                    Rendered rendered = Prose.render(source, SAMPLE.resolver(study.id()), t -> "#there", 1);
                    assertEquals(List.of(), rendered.faults());
                    assertFalse(rendered.html().contains("evidence:"), rendered.html());
                }));
            }
        }
        return tests;
    }

    @TestFactory
    List<DynamicTest> nothingIsWrongWithTheProseOfTheSample() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Study study : SAMPLE.folder().studies().values()) {
            for (ProseSource source : sources(study)) {
                tests.add(DynamicTest.dynamicTest(
                        source.start().toString(),
                        () -> assertEquals(List.of(), Verification.verify(source, SAMPLE.resolver(study.id())))));
            }
        }
        return tests;
    }

    /** All the prose of a study. */
    static List<ProseSource> sources(Study study) {
        List<ProseSource> sources = new ArrayList<>();
        Place file = study.places().file();
        study.shortAnswer()
                .ifPresent(text -> sources.add(
                        ProseSource.field(study.places().of("short-answer"), text, ProseSource.Form.INLINE)));
        for (int i = 0; i < study.caveats().size(); i++) {
            sources.add(ProseSource.field(
                    study.places().of("caveats/" + i), study.caveats().get(i), ProseSource.Form.INLINE));
        }
        for (int i = 0; i < study.revisions().size(); i++) {
            String at = "revisions/" + i;
            sources.add(ProseSource.field(
                    study.places().of(at + "/what"), study.revisions().get(i).what(), ProseSource.Form.INLINE));
            sources.add(ProseSource.field(
                    study.places().of(at + "/why"), study.revisions().get(i).why(), ProseSource.Form.INLINE));
        }
        for (int i = 0; i < study.pictures().size(); i++) {
            sources.add(ProseSource.field(
                    study.places().of("pictures/" + i + "/shows"),
                    study.pictures().get(i).shows(),
                    ProseSource.Form.INLINE));
        }
        sources.add(ProseSource.body(file.file(), study.answerLine(), study.answer()));
        return sources;
    }
}
