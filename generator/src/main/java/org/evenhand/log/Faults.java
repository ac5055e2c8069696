package org.evenhand.log;

import java.util.ArrayList;
import java.util.List;
import org.evenhand.model.Finding;
import org.evenhand.model.Place;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.words.Words;

/** Collects what is wrong with one log, up to a cap, and counts the rest. */
final class Faults {

    /** More would hide the first, which usually explains the others. */
    static final int MOST = 20;

    private static final int SHOWN = 40;

    private final String file;
    private final Subject subject;
    private final Words words;
    private final List<Finding> found = new ArrayList<>();
    private Fault firstLeftOut;
    private long leftOut;

    /** A fault at a place of the log; line 0 stands for the file as a whole. */
    record Fault(String rule, long line, int column, int length, String message, String remedy) {}

    Faults(String file, Subject subject, Words words) {
        this.file = file;
        this.subject = subject;
        this.words = words;
    }

    void add(Fault fault) {
        if (found.size() < MOST) {
            found.add(finding(fault, fault.message, fault.remedy));
            return;
        }
        if (leftOut == 0) {
            firstLeftOut = fault;
        }
        leftOut++;
    }

    /** The words in which faults are told. */
    Words words() {
        return words;
    }

    String say(String key, Object... arguments) {
        return words.say(key, arguments);
    }

    /** A text of the file, cut where it is long. */
    static String cut(String text) {
        return text.length() > SHOWN ? text.substring(0, SHOWN) + "…" : text;
    }

    /**
     * A fault of the file as a whole.
     *
     * @param what names a message without arguments, and that of what to do
     */
    void ofFile(String rule, String what) {
        add(new Fault(rule, 0, 0, 1, say("log-fault." + what), say("log-fault." + what + ".remedy")));
    }

    boolean any() {
        return !found.isEmpty();
    }

    List<Finding> findings() {
        List<Finding> all = new ArrayList<>(found);
        all.sort(null);
        if (leftOut > 0) {
            all.add(finding(firstLeftOut, say("log-fault.more", leftOut), say("log-fault.more.remedy")));
        }
        return all;
    }

    private Finding finding(Fault fault, String message, String remedy) {
        // A line number beyond the range of an int would need a log of more than two thousand million samples.
        int line = (int) Math.min(fault.line, Integer.MAX_VALUE);
        Place place = new Place(file, line, fault.column, Math.max(1, fault.length));
        return Finding.fault(fault.rule, Severity.WITHHOLD, place, subject, message, remedy);
    }
}
