package org.evenhand.command.start;

/** Asks a question; somebody at a terminal answers, or nobody does. */
@FunctionalInterface
interface Asker {

    /** @return what was answered; null where the input has ended */
    String ask(String prompt);
}
