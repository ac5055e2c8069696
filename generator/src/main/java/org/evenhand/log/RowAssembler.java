package org.evenhand.log;

import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.evenhand.log.Faults.Fault;
import org.evenhand.log.Layout.Use;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;

/**
 * Makes samples of the fields of lines, whoever found the fields.
 *
 * <p>A line is begun, its fields are told in order, and it is ended; a line begun anew forgets what was told of the
 * one before, so that a reader may give a line up half-way and leave it to another.
 */
final class RowAssembler {

    private static final String NUMBERS =
            "write digits with a decimal point and no separators, or leave the field empty where no sample was taken";

    private final Layout layout;
    private final char decimal;
    private final Faults faults;
    private final SampleSink sink;
    private final Samples block;
    private final int[] direct;
    private final Limits limits;
    private final long mostRows;
    private final List<Fault> ofLine = new ArrayList<>();

    private double timeS;
    private int timeColumn;
    private int timeLength;
    private Stamp firstStamp;
    private Stamp stamp;
    private double rawTime;
    private double firstTime = Double.NaN;
    private double lastS = Double.NEGATIVE_INFINITY;
    private Fault notRising;
    private long moreNotRising;
    private long samples;
    private boolean begun;

    RowAssembler(Layout layout, char decimal, Faults faults, SampleSink sink, Limits limits) {
        this.layout = layout;
        this.decimal = decimal;
        this.faults = faults;
        this.sink = sink;
        this.block = new Samples(layout.columns().size());
        this.direct = direct(layout);
        this.limits = limits;
        this.mostRows = limits.of(Quota.LOG_ROWS);
        clear(0, Samples.MOST);
    }

    void begin() {
        if (!ofLine.isEmpty()) {
            ofLine.clear();
        }
        if (begun) {
            clear(block.size, block.size + 1); // the line before was given up
        }
        begun = true;
        timeS = Double.NaN;
    }

    private void clear(int from, int to) {
        for (double[] column : block.columns) {
            Arrays.fill(column, from, to, Double.NaN);
        }
    }

    /**
     * The places of a row into which the numbers of fields go as they are, by field; -1 where there is more to do than
     * that.
     */
    private static int[] direct(Layout layout) {
        int[] direct = new int[layout.fields()];
        for (int field = 0; field < direct.length; field++) {
            Use[] uses = layout.uses()[field];
            boolean asIs = field != layout.timeField() && uses.length == 1;
            direct[field] = asIs && uses[0].conversion() == null && uses[0].bit() < 0 ? uses[0].column() : -1;
        }
        return direct;
    }

    /** A field that is a plain decimal number; not for stamps. */
    void number(int field, double value, long line, int column, int length) {
        int to = direct[field];
        if (to >= 0) {
            block.columns[to][block.size] = value;
            return;
        }
        if (field == layout.timeField()) {
            timeColumn = column;
            timeLength = length;
            rawTime = value;
            Layout.Elapsed clock = (Layout.Elapsed) layout.clock();
            double since = clock.fromFirst() && !Double.isNaN(firstTime) ? value - firstTime : value;
            timeS = clock.toSeconds().apply(clock.fromFirst() && Double.isNaN(firstTime) ? 0 : since);
        }
        for (Use use : layout.uses()[field]) {
            if (use.bit() >= 0) {
                block.columns[use.column()][block.size] = bit(value, use.bit(), line, column, length);
            } else {
                block.columns[use.column()][block.size] =
                        use.conversion() == null ? value : use.conversion().apply(value);
            }
        }
    }

    /** A field of any content. */
    void text(int field, String written, long line, int column, int length) {
        String text = stripped(written);
        if (field == layout.timeField()) {
            time(field, text, line, column, length);
            return;
        }
        if (text.isEmpty()) {
            return; // no sample was taken: the value stays NaN
        }
        Use[] uses = layout.uses()[field];
        boolean bits = uses[0].bit() >= 0;
        double value = bits ? LogNumber.parseWhole(text, decimal) : LogNumber.parse(text, decimal);
        if (Double.isNaN(value)) {
            ofLine.add(new Fault("number-ambiguous", line, column, length, misread(text), NUMBERS));
            return;
        }
        number(field, value, line, column, length);
    }

    private void time(int field, String text, long line, int column, int length) {
        if (!layout.hasStamps()) {
            double value = text.isEmpty() ? Double.NaN : LogNumber.parse(text, decimal);
            if (!Double.isNaN(value)) {
                number(field, value, line, column, length);
            } else if (text.isEmpty()) {
                ofLine.add(new Fault(
                        "log-time-broken",
                        line,
                        column,
                        length,
                        "the sample has no time",
                        "give each sample its time"));
            } else {
                ofLine.add(new Fault("number-ambiguous", line, column, length, misread(text), NUMBERS));
            }
            return;
        }
        timeColumn = column;
        timeLength = length;
        stamp = Stamp.parse(text);
        if (stamp != null) {
            timeS = firstStamp == null ? 0 : stamp.secondsSince(firstStamp);
            return;
        }
        if (!Double.isNaN(LogNumber.parse(text.isEmpty() ? "-" : text, decimal))) {
            ofLine.add(new Fault(
                    "unit-missing",
                    line,
                    column,
                    length,
                    "the time " + Faults.shown(text) + " is a number, and the header gives no unit of time",
                    "write the header as “time [s]”, or give the unit under “columns” of the run"));
            return;
        }
        boolean noOffset = Stamp.flawOf(text) == Stamp.Flaw.NO_OFFSET;
        ofLine.add(new Fault(
                "log-time-broken",
                line,
                column,
                length,
                Faults.shown(text)
                        + (noOffset ? " does not say its offset from UTC" : " is no date and time after RFC 3339"),
                noOffset
                        ? "append Z, or an offset such as +02:00"
                        : "write it as 2026-03-02T09:14:00Z, or give elapsed seconds under the header “time [s]”"));
    }

    /** @param fields how many the line had */
    void end(int fields, long line) {
        if (fields != layout.fields()) {
            wrongCount(fields, line);
        }
        if (!ofLine.isEmpty()) {
            ofLine.forEach(faults::add);
        }
        if (fields != layout.fields() || Double.isNaN(timeS)) {
            return;
        }
        if (timeS <= lastS) {
            notRising(line);
            if (timeS < lastS) {
                return;
            }
        }
        if (samples == 0) {
            firstTime = rawTime;
            firstStamp = stamp;
        }
        if (samples == mostRows) {
            throw new UncheckedIOException(
                    new TooMuchException("the log has too many samples", limits, Quota.LOG_ROWS));
        }
        lastS = timeS;
        samples++;
        begun = false;
        block.timesS[block.size++] = timeS;
        if (block.size == Samples.MOST) {
            deliver();
        }
    }

    private void deliver() {
        if (block.size > 0) {
            sink.samples(block);
            clear(0, block.size);
            block.size = 0;
        }
    }

    /** Hands on what is left, and says what can only be said when all lines are known. */
    void finish() {
        deliver();
        if (notRising != null) {
            String more = moreNotRising == 0
                    ? ""
                    : moreNotRising == 1 ? "; it happens once more" : "; it happens " + moreNotRising + " times more";
            faults.add(new Fault(
                    notRising.rule(),
                    notRising.line(),
                    notRising.column(),
                    notRising.length(),
                    notRising.message() + more,
                    notRising.remedy()));
        }
        if (samples < 2 && !faults.any()) {
            faults.ofFile(
                    "file-unreadable",
                    samples == 0 ? "the log holds no samples" : "the log holds a single sample",
                    "record at least two samples, the first when the run starts and the last when it ends");
        }
    }

    long samples() {
        return samples;
    }

    Layout layout() {
        return layout;
    }

    private void notRising(long line) {
        if (notRising != null) {
            moreNotRising++;
            return;
        }
        notRising = new Fault(
                "log-time-broken",
                line,
                timeColumn,
                timeLength,
                timeS == lastS
                        ? "the sample has the same time as the one before it"
                        : "the time goes back behind that of the sample before it",
                "times must rise from sample to sample; find out whether the logger's clock was set during the run");
    }

    private void wrongCount(int fields, long line) {
        boolean few = fields < layout.fields();
        ofLine.add(new Fault(
                few ? "field-missing" : "field-unknown",
                line,
                0,
                1,
                "the line has " + fields + (fields == 1 ? " field" : " fields") + " where the header has "
                        + layout.fields(),
                few
                        ? "complete the line, or remove it if the log was cut off while it was written"
                        : "remove what is too much; if numbers are written with a decimal comma, say so under “decimal”"
                                + " and “separator” of the run"));
    }

    private double bit(double value, int bit, long line, int column, int length) {
        if (value >= 0 && value <= (1L << 53) && value == Math.rint(value)) {
            return ((long) value >> bit) & 1;
        }
        ofLine.add(new Fault(
                "number-ambiguous",
                line,
                column,
                length,
                "a bit is wanted of this field, but it holds no whole number",
                "log the status as a whole number, decimal or as 0x1f"));
        return Double.NaN;
    }

    private static String misread(String text) {
        return Faults.shown(text) + " is no number, or can be read in two ways";
    }

    /** Without the spaces that spreadsheets leave around numbers. */
    private static String stripped(String text) {
        int start = 0;
        int end = text.length();
        while (start < end && isSpace(text.charAt(start))) {
            start++;
        }
        while (end > start && isSpace(text.charAt(end - 1))) {
            end--;
        }
        return text.substring(start, end);
    }

    private static boolean isSpace(char c) {
        return c == ' ' || c == '\t' || c == '\u00a0' || c == '\u202f';
    }
}
