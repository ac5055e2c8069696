package org.evenhand.measure;

/**
 * A sum whose rounding errors are summed as well.
 *
 * <p>Source: A. Neumaier, Zeitschrift für Angewandte Mathematik und Mechanik 54 (1974) 39–51.
 */
final class Sum {

    private double sum;
    private double lost;

    void add(double term) {
        double next = sum + term;
        lost += Math.abs(sum) >= Math.abs(term) ? (sum - next) + term : (term - next) + sum;
        sum = next;
    }

    double value() {
        return sum + lost;
    }
}
