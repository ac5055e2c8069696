package org.evenhand.page.record;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.evenhand.chart.LogChart;
import org.evenhand.chart.Trace;
import org.evenhand.words.Words;

/**
 * The values of a drawn log, for the script that reads them out at a time.
 *
 * <p>They are those that are drawn, as whole numbers of their last shown digit, each but the first as the step from the
 * one before: a log of thousands of samples takes a few kilobytes.
 */
final class LogReadout {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final ObjectNode log = JSON.createObjectNode();
    private final ArrayNode columns;

    /** @param widths in which the chart is drawn, the widest first */
    LogReadout(LogChart chart, Words words, int... widths) {
        log.put("from", chart.fromS()).put("to", chart.toS());
        ArrayNode places = log.putArray("places");
        for (int width : widths) {
            LogChart.Place at = chart.place(width, words);
            places.addArray()
                    .add(width)
                    .add(round(at.leftPx()))
                    .add(round(at.rightPx()))
                    .add(round(at.topPx()))
                    .add(round(at.bottomPx()));
        }
        this.columns = log.putArray("columns");
    }

    /**
     * Adds a column.
     *
     * @param title and unit as the page shows them
     * @param decimals as many as the page's table has
     */
    LogReadout with(String title, String unit, int decimals, Trace trace) {
        List<Trace.Bucket> buckets = trace.buckets();
        double scale = StrictMath.pow(10, decimals);
        ObjectNode column = columns.addObject();
        column.put("title", title).put("unit", unit).put("decimals", decimals);
        column.put(
                "ms",
                steps(buckets.stream()
                        .mapToLong(b -> StrictMath.round(b.fromS() * 1000))
                        .toArray()));
        column.put(
                "value",
                steps(buckets.stream()
                        .mapToLong(b -> StrictMath.round(b.mean() * scale))
                        .toArray()));
        if (trace.thinned()) {
            column.put(
                    "lasts",
                    steps(buckets.stream()
                            .mapToLong(b -> StrictMath.round((b.toS() - b.fromS()) * 1000))
                            .toArray()));
            column.put(
                    "low",
                    steps(buckets.stream()
                            .mapToLong(b -> StrictMath.round(b.low() * scale))
                            .toArray()));
            column.put(
                    "high",
                    steps(buckets.stream()
                            .mapToLong(b -> StrictMath.round(b.high() * scale))
                            .toArray()));
        }
        ArrayNode gaps = column.putArray("gaps");
        for (int i = 0; i < buckets.size(); i++) {
            if (buckets.get(i).gapBefore()) {
                gaps.add(i);
            }
        }
        return this;
    }

    private static String steps(long[] values) {
        StringBuilder text = new StringBuilder();
        long before = 0;
        for (long value : values) {
            text.append(text.length() == 0 ? "" : " ").append(value - before);
            before = value;
        }
        return text.toString();
    }

    private static double round(double px) {
        return StrictMath.round(px * 100) / 100.0;
    }

    /** As the value of an attribute. */
    String attribute() {
        return log.toString().replace("&", "&amp;").replace("\"", "&quot;").replace("<", "&lt;");
    }
}
