package org.evenhand.page;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The order in which people list names: A2 before A10. */
public final class Ids {

    private static final Pattern PART = Pattern.compile("\\d+|\\D+");

    public static final Comparator<String> ORDER = Ids::compare;

    private Ids() {}

    private static int compare(String one, String other) {
        Matcher left = PART.matcher(one);
        Matcher right = PART.matcher(other);
        while (true) {
            boolean more = left.find();
            if (more != right.find()) {
                return more ? 1 : -1;
            }
            if (!more) {
                return one.compareTo(other);
            }
            int part = comparePart(left.group(), right.group());
            if (part != 0) {
                return part;
            }
        }
    }

    private static int comparePart(String one, String other) {
        boolean numbers = Character.isDigit(one.charAt(0)) && Character.isDigit(other.charAt(0));
        return numbers ? new BigInteger(one).compareTo(new BigInteger(other)) : one.compareTo(other);
    }
}
