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
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;

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

    /**
     * A quantity of another kind than is wanted; a point on the scale, where a difference is wanted, is told apart.
     *
     * @param message what is wrong with it, in general
     */
    void doesNotConvert(Place place, Quantity quantity, Unit wanted, String message) {
        boolean point = quantity.unit().kind() == UnitKind.POINT
                && wanted.kind() == UnitKind.DIFFERENCE
                && quantity.unit().dimension().equals(wanted.dimension());
        add(
                point ? Rules.DIFFERENCE_AS_POINT : Rules.UNIT_DIMENSION,
                place,
                point
                        ? "a difference is wanted here, but “" + quantity + "” is a point on the scale of "
                                + quantity.unit().symbol()
                        : message,
                "give it in " + wanted.symbol() + " or a unit that converts to it");
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
