package org.evenhand.words;

import java.util.ArrayList;
import java.util.List;

/**
 * One message of a bundle: text in which {@code {0}} stands for the first argument, and {@code {0|run|runs}} for the first
 * text where that argument is 1, else for the second. The texts of a choice may hold arguments in their turn. A brace that
 * no digit follows stands for itself.
 */
final class Message {

    private sealed interface Part {}

    private record Text(String text) implements Part {}

    private record Argument(int index) implements Part {}

    private record Choice(int index, List<Part> one, List<Part> other) implements Part {}

    private final String pattern;
    private final List<Part> parts;
    private final int arguments;
    private int at;

    /** @throws IllegalArgumentException if a brace is not closed, or a choice has other than two texts */
    Message(String pattern) {
        this.pattern = pattern;
        this.parts = parts(false);
        this.arguments = count(parts);
    }

    /** How many arguments it takes. */
    int arguments() {
        return arguments;
    }

    /**
     * The message with its arguments.
     *
     * @throws IllegalArgumentException if there are more or fewer than it takes
     */
    String with(Object... given) {
        if (given.length != arguments) {
            throw new IllegalArgumentException(
                    "\"" + pattern + "\" takes " + arguments + " arguments and was given " + given.length);
        }
        return put(parts, given, new StringBuilder()).toString();
    }

    private static StringBuilder put(List<Part> parts, Object[] given, StringBuilder said) {
        for (Part part : parts) {
            if (part instanceof Text text) {
                said.append(text.text());
            } else if (part instanceof Argument argument) {
                said.append(written(given[argument.index()]));
            } else if (part instanceof Choice choice) {
                put(written(given[choice.index()]).equals("1") ? choice.one() : choice.other(), given, said);
            }
        }
        return said;
    }

    /** Text, or a whole number; a number with digits after the marker is to be rounded and written before it comes here. */
    private static String written(Object argument) {
        if (argument instanceof String || argument instanceof Integer || argument instanceof Long) {
            return argument.toString();
        }
        throw new IllegalArgumentException("neither text nor a whole number: " + argument);
    }

    private List<Part> parts(boolean within) {
        List<Part> read = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        while (at < pattern.length() && !(within && (pattern.charAt(at) == '|' || pattern.charAt(at) == '}'))) {
            if (!opensArgument()) {
                text.append(pattern.charAt(at++));
                continue;
            }
            if (!text.isEmpty()) read.add(new Text(text.toString()));
            text.setLength(0);
            read.add(argument());
        }
        if (!text.isEmpty()) read.add(new Text(text.toString()));
        return List.copyOf(read);
    }

    private boolean opensArgument() {
        return pattern.charAt(at) == '{' && at + 1 < pattern.length() && isDigit(pattern.charAt(at + 1));
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private Part argument() {
        int index = pattern.charAt(at + 1) - '0';
        at += 2;
        if (is('}')) {
            at++;
            return new Argument(index);
        }
        expect('|');
        List<Part> one = parts(true);
        expect('|');
        List<Part> other = parts(true);
        expect('}');
        return new Choice(index, one, other);
    }

    private boolean is(char expected) {
        return at < pattern.length() && pattern.charAt(at) == expected;
    }

    private void expect(char expected) {
        if (!is(expected)) {
            throw new IllegalArgumentException("'" + expected + "' expected at " + at + " of \"" + pattern + "\"");
        }
        at++;
    }

    private static int count(List<Part> parts) {
        int most = 0;
        for (Part part : parts) {
            if (part instanceof Argument argument) {
                most = Math.max(most, argument.index() + 1);
            } else if (part instanceof Choice choice) {
                most = Math.max(
                        most, Math.max(choice.index() + 1, Math.max(count(choice.one()), count(choice.other()))));
            }
        }
        return most;
    }
}
