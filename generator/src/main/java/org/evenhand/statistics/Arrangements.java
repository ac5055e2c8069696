package org.evenhand.statistics;

import java.util.Arrays;
import java.util.OptionalInt;
import java.util.function.Consumer;

/** The distinct orders of a list of group labels, in lexicographic order. */
final class Arrangements {

    private Arrangements() {}

    /** How many there are, n! / ∏ nᵢ!; empty if more than the limit. */
    static OptionalInt count(int[] labels, int limit) {
        int[] sizes = new int[Arrays.stream(labels).max().orElseThrow() + 1];
        double count = 1;
        int placed = 0;
        for (int label : labels) {
            placed++;
            sizes[label]++;
            // Multiplying in this order, each product is itself such a number, and so a whole one.
            count = Math.rint(count * placed / sizes[label]);
            if (!(count <= limit)) {
                return OptionalInt.empty();
            }
        }
        return OptionalInt.of((int) count);
    }

    /** Hands each arrangement to the action; the array is reused and must not be kept. */
    static void forEach(int[] labels, Consumer<int[]> action) {
        int[] current = labels.clone();
        Arrays.sort(current);
        do {
            action.accept(current);
        } while (advance(current));
    }

    /** The next permutation: D. E. Knuth, The Art of Computer Programming 4A, algorithm 7.2.1.2 L. */
    private static boolean advance(int[] labels) {
        int pivot = labels.length - 2;
        while (pivot >= 0 && labels[pivot] >= labels[pivot + 1]) {
            pivot--;
        }
        if (pivot < 0) {
            return false;
        }
        int successor = labels.length - 1;
        while (labels[pivot] >= labels[successor]) {
            successor--;
        }
        swap(labels, pivot, successor);
        for (int i = pivot + 1, j = labels.length - 1; i < j; i++, j--) {
            swap(labels, i, j);
        }
        return true;
    }

    private static void swap(int[] labels, int i, int j) {
        int held = labels[i];
        labels[i] = labels[j];
        labels[j] = held;
    }
}
