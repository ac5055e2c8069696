package org.evenhand.check;

/** A rule that is applied while files are read; its class holds what is fixed about it, for there is nothing left to check. */
public interface ReadingRule {

    RuleFacts facts();
}
