package org.evenhand.prose;

/** Tells where something stands on the site. */
@FunctionalInterface
public interface EvidenceAddress {

    /** The address of the very row, relative to the page that is being written. */
    String of(Target target);
}
