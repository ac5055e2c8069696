package org.evenhand.measure;

/**
 * A sum whose rounding errors are summed as well.
 *
 * <p>Source: A. Neumaier, Zeitschrift für Angewandte Mathematik und Mechanik 54 (1974) 39–51; the error of one addition
 * without asking which term is larger: D. E. Knuth, The Art of Computer Programming 2, 4.2.2, theorem B.
 */
final class Sum {

    private double sum;
    private double lost;

    void add(double term) {
        double next = sum + term;
        double added = next - sum;
        lost += (sum - (next - added)) + (term - added);
        sum = next;
    }

    double value() {
        return sum + lost;
    }
}
