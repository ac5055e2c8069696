package org.evenhand.page.view;

import java.util.Locale;

/**
 * Where pages stand below the site's root, and the ids of the evidence on them. These are promises: an address that was
 * published stays, so a form given here is never changed.
 *
 * <p>Paths name {@code index.html} in full, because a folder opened from disk shows a listing otherwise. The parts of an
 * id are parted by full stops, which no id of a results folder contains.
 */
public final class Address {
    public static final String INDEX = "index.html";
    public static final String CAVEATS = "caveats/index.html";
    public static final String COMPARE = "compare/index.html";
    public static final String CHANGES = "changes/index.html";

    private Address() {}

    public static String answer(String study) {
        return "answers/" + study + "/index.html";
    }

    public static String item(String item) {
        return "items/" + item + "/index.html";
    }

    public static String method(String method) {
        return "methods/" + method + "/index.html";
    }

    public static String instrument(String instrument) {
        return "instruments/" + instrument + "/index.html";
    }

    public static String run(String study, String run) {
        return "runs/" + study + "/" + run + "/index.html";
    }

    /** The way back: {@code ../} for each folder of a path from the root. */
    public static String rootFrom(String path) {
        return "../".repeat((int) path.chars().filter(c -> c == '/').count());
    }

    /** A comparison's row on its answer's page. */
    public static String comparison(String comparison) {
        return "comparison." + comparison;
    }

    /** A level summary's row on its answer's page. */
    public static String level(String level, String measurand) {
        return "level." + slug(level) + "." + slug(measurand);
    }

    /** A run's row on its answer's page. */
    public static String run(String run) {
        return "run." + run;
    }

    /** One value of one run, on its answer's page and on its own. */
    public static String value(String run, String measurand) {
        return "value." + run + "." + slug(measurand);
    }

    public static String chart(String chart) {
        return "chart." + slug(chart);
    }

    /** The uncertainty budget of the evidence with the given id. */
    public static String budget(String evidence) {
        return "budget." + evidence;
    }

    /** A finding of a page: the rule that made it, and a number from one among the rule's findings there. */
    public static String finding(String rule, int number) {
        return "finding." + rule + "." + number;
    }

    /** A revision of an answer, counted from one, the oldest first. */
    public static String revision(int number) {
        return "revision." + number;
    }

    public static String measurand(String measurand) {
        return "measurand." + slug(measurand);
    }

    public static String caveatGroup(String rule) {
        return "rule." + rule;
    }

    /**
     * A name as part of an id: lower case, each stretch of anything but letters and digits a hyphen. A sign and a
     * decimal point are kept as words, so that levels that are numbers stay apart.
     */
    public static String slug(String name) {
        return name.toLowerCase(Locale.ROOT)
                .replaceAll("^[-\u2212](?=\\p{Nd})", "minus ")
                .replaceAll("(?<=\\p{Nd})\\.(?=\\p{Nd})", " point ")
                .replaceAll("[^\\p{L}\\p{Nd}]+", "-")
                .replaceAll("^-|-$", "");
    }
}
