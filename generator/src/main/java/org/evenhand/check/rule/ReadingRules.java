package org.evenhand.check.rule;

import static org.evenhand.check.Group.READING;
import static org.evenhand.model.Severity.WITHHOLD;

import java.util.List;
import java.util.stream.Stream;
import org.evenhand.check.FolderRule;
import org.evenhand.check.RuleFacts;
import org.evenhand.read.Rules;

/** The rules on the files themselves. Most are applied while reading, so that the facts alone stand here. */
public final class ReadingRules {

    /** Those that look at all files once they are read. */
    public static final List<FolderRule> OF_FOLDER = List.of(new ContentActive(), new PersonalData());

    private static final List<RuleFacts> OF_FILES = List.of(
            RuleFacts.of(
                    Rules.FILE_UNREADABLE, READING, WITHHOLD, "a file that is missing or is not what its name says"),
            RuleFacts.of(Rules.FIELD_MISSING, READING, WITHHOLD, "a field that must be there and is not"),
            RuleFacts.of(Rules.FIELD_UNKNOWN, READING, WITHHOLD, "a field that no file of this kind has"),
            RuleFacts.of(Rules.FIELD_DUPLICATE, READING, WITHHOLD, "a field that is written twice"),
            RuleFacts.of(Rules.FIELD_MALFORMED, READING, WITHHOLD, "a value of another form than the field takes"),
            RuleFacts.of(
                    Rules.NUMBER_AMBIGUOUS, READING, WITHHOLD, "a number that can be read in two ways, or is none"),
            RuleFacts.of(Rules.UNIT_MISSING, READING, WITHHOLD, "a number without a unit"),
            RuleFacts.of(Rules.UNIT_UNKNOWN, READING, WITHHOLD, "a unit that is not in the table, capitals included"),
            RuleFacts.of(Rules.UNIT_DIMENSION, READING, WITHHOLD, "a quantity of another kind than is wanted"),
            RuleFacts.of(
                    Rules.DIFFERENCE_AS_POINT,
                    READING,
                    WITHHOLD,
                    "a difference of temperatures written as a point on the scale"),
            RuleFacts.of(Rules.REFERENCE_UNRESOLVED, READING, WITHHOLD, "a name that leads nowhere"),
            RuleFacts.of(Rules.ID_COLLISION, READING, WITHHOLD, "two names that addresses cannot tell apart"),
            RuleFacts.of(Rules.PATH_OUTSIDE, READING, WITHHOLD, "a path that leads out of the results folder"),
            RuleFacts.of(Rules.SIZE_LIMIT, READING, WITHHOLD, "a file, or a part of one, that is larger than is read"),
            RuleFacts.of(
                    Rules.TEXT_DECEPTIVE, READING, WITHHOLD, "characters that make a text look other than it reads"));

    public static final List<RuleFacts> ALL = Stream.concat(
                    OF_FILES.stream(), OF_FOLDER.stream().map(FolderRule::facts))
            .toList();

    private ReadingRules() {}
}
