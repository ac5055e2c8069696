package org.evenhand.command.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * In which order runs are made: in blocks, each of which has every level once, on one specimen, so that neither time nor
 * specimen favours a level.
 *
 * <p>Source: R. A. Fisher, The Design of Experiments (1935), randomised blocks.
 */
final class Order {

    /** A run of the sheet. */
    record Slot(int number, int block, String specimen, String level) {}

    private Order() {}

    /**
     * The order of the runs.
     *
     * @param levels of the factor
     * @param repeats of each
     * @param specimens that take turns from block to block; one empty text if none are known
     * @param seed the same gives the same order, on any machine
     * @param random whether each block is shuffled; else every other block runs backwards
     */
    static List<Slot> of(List<String> levels, int repeats, List<String> specimens, long seed, boolean random) {
        // The numbers of this generator are part of Java's specification.
        Random source = new Random(seed);
        List<Slot> slots = new ArrayList<>();
        for (int block = 0; block < repeats; block++) {
            List<String> order = new ArrayList<>(levels);
            if (random) {
                for (int i = order.size() - 1; i > 0; i--) {
                    java.util.Collections.swap(order, i, source.nextInt(i + 1));
                }
            } else if (block % 2 == 1) {
                java.util.Collections.reverse(order);
            }
            for (String level : order) {
                slots.add(new Slot(slots.size() + 1, block + 1, specimens.get(block % specimens.size()), level));
            }
        }
        return slots;
    }
}
