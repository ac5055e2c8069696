package org.evenhand.check.rule;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.evenhand.check.FolderRule;
import org.evenhand.check.Group;
import org.evenhand.check.RuleFacts;
import org.evenhand.measure.Measurements;
import org.evenhand.model.Finding;
import org.evenhand.model.Place;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.words.Words;

/**
 * A contributed text is read, never run. Markup is shown as text on the pages in any case; a text that tries to be more
 * is not published, because whoever reviews it should ask why it does.
 */
public final class ContentActive implements FolderRule {

    private static final RuleFacts FACTS = RuleFacts.of("content-active", Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public List<Finding> check(ResultsFolder folder, Measurements measured, Path root, Words words) {
        List<Finding> findings = new ArrayList<>();
        for (MarkdownText text : MarkdownText.allOf(folder)) {
            for (ActiveContent.Part part : ActiveContent.in(text.markdown())) {
                Place place = text.place(part.line(), part.column(), part.length());
                for (Subject subject : text.subjects()) {
                    findings.add(Finding.fault(
                            FACTS.id(),
                            FACTS.severity(),
                            place,
                            subject,
                            words.say("rules-reading.content-active.found", part.said(words)),
                            words.say("rules-reading.content-active.remedy")));
                }
            }
        }
        return findings;
    }
}
