package org.evenhand.check;

import org.evenhand.words.Words;

/**
 * A rule on what the text says. The words are held against the figures in one pass for all of these rules, by
 * {@link org.evenhand.prose.Verification}; here stands what is fixed about each.
 */
public interface ProseRule {

    RuleFacts facts();

    /** What it means for the reader, in a sentence, in the language of the words. */
    String consequence(Words words);
}
