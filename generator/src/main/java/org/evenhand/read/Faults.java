package org.evenhand.read;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.model.Finding;
import org.evenhand.model.Place;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.quantity.MisreadException;

/** Gathers what is wrong with files; each fault withholds the study that it stands in. */
final class Faults {

    private static final Pattern STUDY_FILE = Pattern.compile("studies/([^/]+)/(?:runs/([^/]+)\\.[a-z]+)?.*");

    private final List<Finding> findings = new ArrayList<>();

    void add(String rule, Place place, String message, String remedy) {
        findings.add(Finding.fault(rule, Severity.WITHHOLD, place, subjectOf(place.file()), message, remedy));
    }

    void note(String rule, Place place, String message, String remedy) {
        findings.add(Finding.fault(rule, Severity.NOTE, place, subjectOf(place.file()), message, remedy));
    }

    /** A text that is not the number, unit or quantity it should be. */
    void add(Node.Text text, MisreadException fault) {
        add(ruleOf(fault.fault()), text.part(fault.start(), fault.length()), fault.getMessage(), fault.remedy());
    }

    int count() {
        return findings.size();
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    private static String ruleOf(MisreadException.Fault fault) {
        return switch (fault) {
            case NUMBER_AMBIGUOUS -> Rules.NUMBER_AMBIGUOUS;
            case UNIT_MISSING -> Rules.UNIT_MISSING;
            case UNIT_UNKNOWN -> Rules.UNIT_UNKNOWN;
            case UNIT_DIMENSION -> Rules.UNIT_DIMENSION;
            case DIFFERENCE_AS_POINT -> Rules.DIFFERENCE_AS_POINT;
            case NOT_A_QUANTITY -> Rules.FIELD_MALFORMED;
        };
    }

    static Subject subjectOf(String file) {
        Matcher matcher = STUDY_FILE.matcher(file);
        if (!matcher.matches()) {
            return Subject.PUBLICATION;
        }
        return matcher.group(2) == null
                ? Subject.study(matcher.group(1))
                : Subject.run(matcher.group(1), matcher.group(2));
    }
}
