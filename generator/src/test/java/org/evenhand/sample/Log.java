package org.evenhand.sample;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** A log being written: a header, and rows of numbers each rounded to the decimals of its column. */
final class Log {

    private final char separator;
    private final boolean decimalComma;
    private final int[] decimals;
    private final StringBuilder text = new StringBuilder();
    private final List<double[]> rows = new ArrayList<>();

    /** @param decimals digits after the decimal marker, one for each column */
    Log(List<String> header, int... decimals) {
        this(',', false, header, decimals);
    }

    Log(char separator, boolean decimalComma, List<String> header, int... decimals) {
        this.separator = separator;
        this.decimalComma = decimalComma;
        this.decimals = decimals;
        text.append(String.join(String.valueOf(separator), header)).append('\n');
    }

    void row(double... values) {
        for (int i = 0; i < values.length; i++) {
            if (i > 0) {
                text.append(separator);
            }
            String number = rounded(values[i], decimals[i]);
            text.append(decimalComma ? number.replace('.', ',') : number);
        }
        text.append('\n');
        rows.add(values.clone());
    }

    /** Mean of a column's samples, the first column being 0. */
    double mean(int column) {
        double sum = 0;
        for (double[] row : rows) {
            sum += row[column];
        }
        return sum / rows.size();
    }

    /** The unrounded rows, in the order written. */
    List<double[]> rows() {
        return List.copyOf(rows);
    }

    String text() {
        return text.toString();
    }

    static String rounded(double value, int decimals) {
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
    }
}
