package org.evenhand.statistics;

import java.util.Arrays;

/**
 * Finds a value of a given rank without putting all values in order.
 *
 * <p>Source: C. A. R. Hoare, "Algorithm 65: Find", Communications of the ACM 4 (1961) 321. Where its choices are unlucky
 * for too long, what is left is put in order after all.
 */
final class Selection {

    private Selection() {}

    /**
     * The median; of an even number of values the mean of the middle two.
     *
     * @param values at least one, none NaN; their order is changed
     */
    static double median(double[] values) {
        int middle = values.length / 2;
        double upper = find(values, middle);
        if (values.length % 2 == 1) {
            return upper;
        }
        double lower = values[0];
        for (int i = 1; i < middle; i++) {
            lower = Math.max(lower, values[i]);
        }
        return lower / 2 + upper / 2;
    }

    /**
     * The value that would stand at an index if all were in ascending order.
     *
     * @param values none NaN; changed so that no value before the index is greater and none behind it is less
     */
    static double find(double[] values, int index) {
        int low = 0;
        int high = values.length - 1;
        int patience = 2 * (32 - Integer.numberOfLeadingZeros(values.length));
        while (low < high) {
            if (patience-- == 0) {
                Arrays.sort(values, low, high + 1);
                return values[index];
            }
            double pivot = middleOf(values[low], values[(low + high) >>> 1], values[high]);
            int i = low;
            int j = high;
            while (i <= j) {
                while (values[i] < pivot) {
                    i++;
                }
                while (values[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    double held = values[i];
                    values[i++] = values[j];
                    values[j--] = held;
                }
            }
            if (index <= j) {
                high = j;
            } else if (index >= i) {
                low = i;
            } else {
                break;
            }
        }
        return values[index];
    }

    private static double middleOf(double a, double b, double c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }
}
