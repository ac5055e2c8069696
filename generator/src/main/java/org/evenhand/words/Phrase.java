package org.evenhand.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * What is to be said before it is known in which language: a message with its arguments.
 *
 * @param key of the message
 * @param arguments texts, numbers as they are written with a point, and phrases
 */
public record Phrase(String key, List<Object> arguments) {

    private static final Pattern NUMBER = Pattern.compile("\\A[-\u2212]?+\\d++\\.\\d++(e[-+]?+\\d++)?+( .*+)?+");

    /** @throws IllegalArgumentException if an argument is neither text nor phrase */
    public Phrase {
        arguments = List.copyOf(arguments);
        for (Object each : arguments) {
            if (!(each instanceof String || each instanceof Phrase)) {
                throw new IllegalArgumentException("neither text nor phrase: " + each);
            }
        }
    }

    /** A message with its arguments. */
    public static Phrase of(String key, Object... arguments) {
        return new Phrase(key, Arrays.asList(arguments));
    }

    /** A number as an argument: rounded to so many significant digits, without zeros at its end. */
    public static String rounded(double value, int digits) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** In a language. */
    public String in(Words words) {
        return words.say(key, arguments.stream().map(each -> said(each, words)).toArray());
    }

    private static String said(Object argument, Words words) {
        if (argument instanceof Phrase phrase) {
            return phrase.in(words);
        }
        String text = (String) argument;
        return NUMBER.matcher(text).matches() ? words.number(text) : text;
    }
}
