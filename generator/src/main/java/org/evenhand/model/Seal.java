package org.evenhand.model;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A version of an answer that was frozen when it was published, so that whoever cited it finds it as it was.
 *
 * @param study whose answer; the study itself may be gone
 * @param version of the answer, from one
 * @param question as it was asked then; empty if that cannot be read any more
 * @param files with their digests, 64 hexadecimal digits, by their path below {@code sealed/} and on the site alike; the
 *     list of them is not among them
 * @param faults what is not as it was sealed; empty if all is
 */
public record Seal(String study, int version, String question, SortedMap<String, String> files, List<Fault> faults) {

    /**
     * A file that is not as it was sealed.
     *
     * @param path below {@code sealed/} and on the site alike
     */
    public record Fault(String path, Flaw flaw) {}

    /** What can be wrong with a sealed file. */
    public enum Flaw {
        LIST_MISSING,
        OF_OTHER_VERSION,
        NOT_LISTED,
        ELSEWHERE,
        MISSING,
        CHANGED,
        UNREADABLE,
        KIND,
        WITHOUT_POLICY,
        ACTIVE;

        /** As words know it: "list-missing". */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** The list of what was sealed, in its folder. */
    public static final String LIST = "seal-sha256.txt";

    /** The list of what the version was made from, in its folder. */
    public static final String INPUTS = "inputs-sha256.txt";

    public Seal {
        files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
        faults = List.copyOf(faults);
    }

    /** The folder of a sealed version, below {@code sealed/} and on the site alike. A promise: addresses stay. */
    public static String folder(String study, int version) {
        return "answers/" + study + "/v/" + version + "/";
    }

    public String folder() {
        return folder(study, version);
    }

    /** The path of the page. */
    public String page() {
        return folder() + "index.html";
    }

    /** The path of the list of digests. */
    public String list() {
        return folder() + LIST;
    }

    public boolean isWhole() {
        return faults.isEmpty();
    }
}
