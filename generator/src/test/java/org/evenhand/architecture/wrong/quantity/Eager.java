package org.evenhand.architecture.wrong.quantity;

import org.evenhand.architecture.wrong.page.Late;

/** Wrong on purpose: the first package leans on a late one, and prints. */
public final class Eager {

    private final Late late = new Late();

    /** Prints where it may not. */
    public void print() {
        System.out.println(late);
    }
}
