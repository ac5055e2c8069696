package org.evenhand.check;

/**
 * A rule on what the text says. The words are held against the figures in one pass for all of these rules, by
 * {@link org.evenhand.prose.Verification}; here stands what is fixed about each.
 */
public interface ProseRule {

    RuleFacts facts();

    /** What it means for the reader, in a sentence. */
    String consequence();
}
