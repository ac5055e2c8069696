package org.evenhand.command;

import java.util.ArrayList;
import java.util.List;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.CheckedStudy;
import org.evenhand.model.Finding;
import org.evenhand.model.Outcome;
import org.evenhand.model.Severity;

/** Counts what was found, in one line. */
final class Summary {

    private Summary() {}

    static String of(CheckedFolder checked) {
        List<String> parts = new ArrayList<>();
        parts.add(number(checked.studies().size() + checked.folder().broken().size(), "study", "studies"));
        parts.add(number(
                checked.studies().values().stream()
                                .mapToInt(s -> s.evidence().study().runs().size())
                                .sum()
                        + checked.folder().brokenRuns().size(),
                "run",
                "runs"));
        parts.add(number(count(checked, Severity.WITHHOLD), "error", "errors"));
        parts.add(number(count(checked, Severity.REFUSE), "refusal", "refusals"));
        parts.add(number(count(checked, Severity.CAVEAT), "caveat", "caveats"));
        parts.add(number(count(checked, Severity.NOTE), "note", "notes"));
        long open = checked.findings().stream()
                .filter(f -> f.outcome() == Outcome.NOT_CHECKABLE)
                .count();
        if (open > 0) {
            parts.add(open + " not checkable");
        }
        return String.join(", ", parts);
    }

    /** What was published, in one line. */
    static String ofPublication(CheckedFolder checked) {
        int withheld = withheld(checked);
        int studies = checked.studies().size() + checked.folder().broken().size();
        return number(studies - withheld, "answer", "answers") + " published with "
                + number(count(checked, Severity.CAVEAT), "caveat", "caveats") + ", "
                + number(withheld, "study", "studies") + " withheld";
    }

    /** How many studies are kept back. */
    static int withheld(CheckedFolder checked) {
        return (int) checked.studies().values().stream()
                        .filter(CheckedStudy::isWithheld)
                        .count()
                + checked.folder().broken().size();
    }

    private static int count(CheckedFolder checked, Severity severity) {
        return (int) checked.findings().stream()
                .filter(f -> f.severity() == severity && f.outcome() == Outcome.FOUND)
                .map(Finding::rule)
                .count();
    }

    static String number(int n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }
}
