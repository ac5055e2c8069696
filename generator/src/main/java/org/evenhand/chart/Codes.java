package org.evenhand.chart;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.PriorityQueue;
import java.util.function.IntConsumer;

/**
 * Prefix codes, short for what is frequent.
 *
 * <p>Source: D. A. Huffman, A method for the construction of minimum-redundancy codes, 1952; RFC 1951, 3.2.2.
 */
final class Codes {

    private final int[] lengths;
    private final int[] codes;

    private Codes(int[] lengths) {
        this.lengths = lengths;
        this.codes = codes(lengths);
    }

    /**
     * @param counts how often each symbol occurs
     * @param longest bits that a code may have
     */
    static Codes of(int[] counts, int longest) {
        int[] weights = counts.clone();
        int[] lengths = lengths(weights);
        while (Arrays.stream(lengths).max().orElse(0) > longest) {
            // Weights closer to each other give codes of lengths closer to each other.
            for (int i = 0; i < weights.length; i++) {
                weights[i] = weights[i] == 0 ? 0 : weights[i] / 2 + 1;
            }
            lengths = lengths(weights);
        }
        return new Codes(lengths);
    }

    /** Bits of a symbol's code; nought for one that does not occur. */
    int length(int symbol) {
        return lengths[symbol];
    }

    int code(int symbol) {
        return codes[symbol];
    }

    void forEachLength(IntConsumer each) {
        Arrays.stream(lengths).forEach(each);
    }

    /** A tree in which every node has two children, or none and a symbol. */
    private record Node(long weight, int order, int symbol, Node left, Node right) {}

    private record Step(Node node, int depth) {}

    private static int[] lengths(int[] weights) {
        PriorityQueue<Node> open =
                new PriorityQueue<>(Comparator.comparing(Node::weight).thenComparing(Node::order));
        for (int symbol = 0; symbol < weights.length; symbol++) {
            if (weights[symbol] > 0) {
                open.add(new Node(weights[symbol], symbol, symbol, null, null));
            }
        }
        int[] lengths = new int[weights.length];
        if (open.size() == 1) {
            lengths[open.remove().symbol()] = 1;
            return lengths;
        }
        int order = weights.length;
        while (open.size() > 1) {
            Node left = open.remove();
            Node right = open.remove();
            open.add(new Node(left.weight() + right.weight(), order++, -1, left, right));
        }
        Deque<Step> steps = new ArrayDeque<>();
        open.forEach(root -> steps.push(new Step(root, 0)));
        while (!steps.isEmpty()) {
            Step step = steps.pop();
            if (step.node().left() == null) {
                lengths[step.node().symbol()] = step.depth();
            } else {
                steps.push(new Step(step.node().left(), step.depth() + 1));
                steps.push(new Step(step.node().right(), step.depth() + 1));
            }
        }
        return lengths;
    }

    /** Codes of one length follow each other in the order of their symbols. */
    private static int[] codes(int[] lengths) {
        int[] codes = new int[lengths.length];
        int code = 0;
        for (int length = 1; length <= Arrays.stream(lengths).max().orElse(0); length++) {
            for (int symbol = 0; symbol < lengths.length; symbol++) {
                if (lengths[symbol] == length) {
                    codes[symbol] = code++;
                }
            }
            code <<= 1;
        }
        return codes;
    }
}
