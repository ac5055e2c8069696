package org.evenhand.check;

/** Told how far the work has come. What comes out does not depend on it. */
public interface Progress {

    /** Listens to nothing. */
    Progress NONE = new Progress() {};

    /** A stage begins, and the one before has ended; called from one thread. */
    default void begins(String stage) {}

    /** How many pieces the stage that has begun consists of. */
    default void expects(int pieces) {}

    /** One of them is done, with so many rows of a log; called from several threads at a time. */
    default void done(long rows) {}
}
