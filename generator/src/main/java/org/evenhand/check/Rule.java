package org.evenhand.check;

/** One check. Implementations hold no state, so that one instance serves all studies at once. */
public interface Rule {

    RuleFacts facts();

    /**
     * Looks at one study.
     *
     * @param study what is checked
     * @param report takes what was found; a rule that reports nothing has passed
     */
    void check(StudyView study, Report report);

    /** Whether it has to know which comparisons all other rules have refused. */
    default boolean needsVerdicts() {
        return false;
    }
}
