package org.evenhand.architecture.wrong.drawer;

/** Wrong on purpose: its package has no place in the order. */
public final class Things {

    private Things() {}
}
