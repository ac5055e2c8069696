package org.evenhand.picture;

import java.util.function.Function;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;
import org.evenhand.read.Rules;
import org.evenhand.words.QuotaWords;
import org.evenhand.words.Words;

/** A picture that is not shown: by which rule, why, and what to do. */
public final class UnfitException extends Exception {

    /** The rule about pictures themselves. */
    public static final String RULE = "picture-unfit";

    private static final long serialVersionUID = 1L;

    private final String rule;
    private final transient Function<Words, String> why;
    private final transient Function<Words, String> remedy;

    private UnfitException(String rule, Function<Words, String> why, Function<Words, String> remedy) {
        super(why.apply(Words.english()), null, false, false);
        this.rule = rule;
        this.why = why;
        this.remedy = remedy;
    }

    /**
     * By the rule about pictures themselves.
     *
     * @param what names the message, and the remedy that belongs to it
     * @param arguments of the message: texts and whole numbers
     */
    static UnfitException of(String what, Object... arguments) {
        return new UnfitException(RULE, words -> words.say("picture." + what, arguments), remedy(what));
    }

    /**
     * A file that cannot be decoded.
     *
     * @param how names the message
     */
    static UnfitException damaged(String how, Object... arguments) {
        return new UnfitException(
                RULE,
                words -> words.say("picture.damaged", words.say("picture.damage-" + how, arguments)),
                remedy("damaged"));
    }

    static UnfitException outside(String address) {
        return new UnfitException(
                Rules.PATH_OUTSIDE, words -> words.say("picture.outside", address), remedy("outside"));
    }

    /** More than is read of something; what, and how much of it there is, as for {@link #of}. */
    static UnfitException tooMuch(Limits limits, Quota quota, String what, Object... arguments) {
        return new UnfitException(
                Rules.SIZE_LIMIT,
                words -> words.say(
                        "picture.too-much",
                        words.say("picture." + what, arguments),
                        QuotaWords.read(limits, quota, words)),
                words -> words.say("picture.too-much.remedy", QuotaWords.raising(quota, words)));
    }

    private static Function<Words, String> remedy(String what) {
        return words -> words.say("picture." + what + ".remedy");
    }

    /** Name of the rule that finds it. */
    public String rule() {
        return rule;
    }

    /** Why the picture is not shown. */
    public String why(Words words) {
        return why.apply(words);
    }

    /** What to do about it. */
    public String remedy(Words words) {
        return remedy.apply(words);
    }
}
