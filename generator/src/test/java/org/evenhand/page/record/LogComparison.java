package org.evenhand.page.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.evenhand.chart.Mark;

/** Finds what a log's file has in the place of each mark of a line. */
final class LogComparison {

    private LogComparison() {}

    /**
     * A stretch of rows that is drawn as one.
     *
     * @param from its first row
     * @param to its last row
     * @param low drawn as its lowest
     * @param high drawn as its highest
     */
    private record Stretch(int from, int to, double low, double high) {}

    /** Beside the marks of a line, what the file has in their place. */
    static void compare(PlainLog log, String column, List<Mark> marks, TrueToScale values, TrueToScale times) {
        double[] timesS = log.timesS();
        double[] data = log.column(column);
        List<Stretch> stretches = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i);
            switch (mark.what()) {
                case "sample" -> {
                    stretches.add(new Stretch(next, next, data[next], data[next]));
                    values.add(data[next], mark.pixel());
                    times.add(timesS[next++], marks.get(++i).pixel());
                }
                case "first", "last" -> {
                    int at = row(timesS, marks.get(i + 1).value());
                    values.add(data[at], mark.pixel());
                    times.add(timesS[at], marks.get(++i).pixel());
                    next = at + 1;
                }
                case "band low" -> {
                    Mark high = marks.get(i + 1);
                    int from = row(timesS, marks.get(i + 2).value());
                    int to = row(timesS, marks.get(i + 3).value());
                    values.add(data[rowOf(mark.value(), data, from, to)], mark.pixel());
                    values.add(data[rowOf(high.value(), data, from, to)], high.pixel());
                    times.add(timesS[from], marks.get(i + 2).pixel());
                    times.add(timesS[to], marks.get(i + 3).pixel());
                    stretches.add(new Stretch(from, to, mark.value(), high.value()));
                    i += 3;
                    next = to + 1;
                }
                case "low", "high" -> {
                    boolean low = mark.what().equals("low");
                    // Between the marks of the first and the last sample.
                    int from = row(timesS, marks.get(low ? i - 1 : i - 2).value());
                    int to = row(timesS, marks.get(low ? i + 3 : i + 2).value());
                    values.add(data[rowOf(mark.value(), data, from, to)], mark.pixel());
                    if (low) {
                        stretches.add(new Stretch(
                                from, to, mark.value(), marks.get(i + 1).value()));
                    }
                }
                case "mean" -> {
                    double middleS = marks.get(i + 1).value();
                    Stretch of = stretches.stream()
                            .filter(stretch -> timesS[stretch.to()] >= middleS)
                            .findFirst()
                            .orElseThrow();
                    assertTrue(mark.value() >= of.low() && mark.value() <= of.high(), column);
                    values.add(mark.value(), mark.pixel());
                    times.add(
                            (timesS[of.from()] + timesS[of.to()]) / 2,
                            marks.get(++i).pixel());
                }
                default -> throw new IllegalStateException(mark.what());
            }
        }
        assertEquals(data.length, next, "the line ends with the log");
        assertNoExtremeIsLost(data, stretches);
    }

    /**
     * A log too long to be kept leaves stretches that begin and end between the ones in which extremes were sought: each
     * extreme of the file is drawn in the stretch in which it came, or in the one before or after.
     */
    private static void assertNoExtremeIsLost(double[] data, List<Stretch> stretches) {
        for (int k = 0; k < stretches.size(); k++) {
            List<Stretch> around = stretches.subList(Math.max(0, k - 1), Math.min(stretches.size(), k + 2));
            double low = around.stream().mapToDouble(Stretch::low).min().orElseThrow();
            double high = around.stream().mapToDouble(Stretch::high).max().orElseThrow();
            int end = k + 1 < stretches.size() ? stretches.get(k + 1).from() : data.length;
            for (int i = stretches.get(k).from(); i < end; i++) {
                assertTrue(data[i] >= low && data[i] <= high, "row " + i + " reaches beyond what is drawn around it");
            }
        }
    }

    private static int rowOf(double value, double[] data, int from, int to) {
        return IntStream.rangeClosed(from, to)
                .filter(i -> data[i] == value)
                .findFirst()
                .orElseThrow(
                        () -> new AssertionError("no sample between rows " + from + " and " + to + " is " + value));
    }

    private static int row(double[] timesS, double timeS) {
        int at = Arrays.binarySearch(timesS, timeS);
        assertTrue(at >= 0, "no sample was taken at " + timeS);
        return at;
    }
}
