package org.evenhand.check;

import java.nio.file.Path;
import java.util.List;
import org.evenhand.measure.Measurements;
import org.evenhand.model.Finding;
import org.evenhand.model.ResultsFolder;
import org.evenhand.words.Words;

/** One check of all files at once, studies or not. Implementations hold no state. */
public interface FolderRule {

    RuleFacts facts();

    /**
     * Looks at the whole folder.
     *
     * @param folder as it was read
     * @param measured the values of its runs
     * @param root where it lies
     * @param words in which it is told: those of the publication
     * @return what was found, in any order
     */
    List<Finding> check(ResultsFolder folder, Measurements measured, Path root, Words words);
}
