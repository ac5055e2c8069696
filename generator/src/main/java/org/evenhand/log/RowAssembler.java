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
            ofLine.add(misread(text, line, column, length));
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
                        faults.say("log-fault.no-time"),
                        faults.say("log-fault.no-time.remedy")));
            } else {
                ofLine.add(misread(text, line, column, length));
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
                    faults.say("log-fault.time-unit", Faults.cut(text)),
                    faults.say("log-fault.time-unit.remedy")));
            return;
        }
        String key = Stamp.flawOf(text) == Stamp.Flaw.NO_OFFSET ? "log-fault.no-offset" : "log-fault.no-stamp";
        ofLine.add(new Fault(
                "log-time-broken",
                line,
                column,
                length,
                faults.say(key, Faults.cut(text)),
                faults.say(key + ".remedy")));
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
            throw new UncheckedIOException(new TooMuchException("log-fault.many-samples", limits, Quota.LOG_ROWS));
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
            faults.add(new Fault(
                    notRising.rule(),
                    notRising.line(),
                    notRising.column(),
                    notRising.length(),
                    moreNotRising == 0
                            ? notRising.message()
                            : faults.say("log-fault.happens-more", notRising.message(), moreNotRising),
                    notRising.remedy()));
        }
        if (samples < 2 && !faults.any()) {
            faults.add(new Fault(
                    "file-unreadable",
                    0,
                    0,
                    1,
                    faults.say(samples == 0 ? "log-fault.no-samples" : "log-fault.one-sample"),
                    faults.say("log-fault.few-samples.remedy")));
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
                faults.say(timeS == lastS ? "log-fault.same-time" : "log-fault.time-back"),
                faults.say("log-fault.time-order.remedy"));
    }

    private void wrongCount(int fields, long line) {
        boolean few = fields < layout.fields();
        ofLine.add(new Fault(
                few ? "field-missing" : "field-unknown",
                line,
                0,
                1,
                faults.say("log-fault.fields", fields, layout.fields()),
                faults.say(few ? "log-fault.few-fields.remedy" : "log-fault.many-fields.remedy")));
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
                faults.say("log-fault.no-bit"),
                faults.say("log-fault.no-bit.remedy")));
        return Double.NaN;
    }

    private Fault misread(String text, long line, int column, int length) {
        return new Fault(
                "number-ambiguous",
                line,
                column,
                length,
                faults.say("log-fault.not-number", Faults.cut(text)),
                faults.say("log-fault.not-number.remedy"));
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
