package org.evenhand.picture;

import org.evenhand.model.Limits;
import org.evenhand.model.Quota;
import org.evenhand.read.Rules;

/** A picture that is not shown: by which rule, why, and what to do. */
public final class UnfitException extends Exception {

    /** The rule about pictures themselves. */
    public static final String RULE = "picture-unfit";

    private static final long serialVersionUID = 1L;

    private final String rule;
    private final String remedy;

    private UnfitException(String rule, String message, String remedy) {
        super(message, null, false, false);
        this.rule = rule;
        this.remedy = remedy;
    }

    static UnfitException of(String message, String remedy) {
        return new UnfitException(RULE, message, remedy);
    }

    static UnfitException damaged(String how) {
        return of("the picture is damaged: " + how, "open it in a program for pictures and save it anew");
    }

    static UnfitException outside(String address) {
        return new UnfitException(
                Rules.PATH_OUTSIDE,
                "“" + address + "” leads out of the results folder",
                "put the picture into the folder and give its path relative to this file, with / between the parts");
    }

    static UnfitException tooMuch(String message, Limits limits, Quota quota) {
        return new UnfitException(
                Rules.SIZE_LIMIT,
                message + "; " + limits.of(quota) + " " + quota.what() + " are read",
                "make it smaller, " + quota.raising());
    }

    /** Name of the rule that finds it. */
    public String rule() {
        return rule;
    }

    public String remedy() {
        return remedy;
    }
}
