package org.evenhand.check.rule;

import java.util.List;
import java.util.stream.Stream;
import org.evenhand.check.FolderRule;
import org.evenhand.check.ReadingRule;
import org.evenhand.check.RuleFacts;

/** The rules on the files themselves, in the order in which they are listed. */
public final class ReadingRules {

    /** Those that are applied while reading. */
    private static final List<ReadingRule> OF_FILES = List.of(
            new FileUnreadable(),
            new FieldMissing(),
            new FieldUnknown(),
            new FieldDuplicate(),
            new FieldMalformed(),
            new NumberAmbiguous(),
            new UnitMissing(),
            new UnitUnknown(),
            new UnitDimension(),
            new DifferenceAsPoint(),
            new ReferenceUnresolved(),
            new IdCollision(),
            new PathOutside(),
            new SizeLimit(),
            new TextDeceptive());

    /** Those that look at all files once they are read. */
    public static final List<FolderRule> OF_FOLDER =
            List.of(new ContentActive(), new PictureUnfit(), new PersonalData(), new SealBroken());

    public static final List<RuleFacts> ALL = Stream.concat(
                    OF_FILES.stream().map(ReadingRule::facts),
                    OF_FOLDER.stream().map(FolderRule::facts))
            .toList();

    private ReadingRules() {}
}
