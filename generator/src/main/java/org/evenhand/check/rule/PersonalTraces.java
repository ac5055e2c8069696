package org.evenhand.check.rule;

import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.evenhand.words.Words;

/**
 * Finds traces of people in bytes, in one pass: each byte starts at most one attempt of bounded length.
 *
 * <p>Addresses that are set aside for documentation and private networks are no traces: RFC 1918, RFC 2606, RFC 3849,
 * RFC 5737, RFC 6598.
 */
final class PersonalTraces {

    /** What a trace is of. */
    enum Kind {
        HOME_FOLDER,
        HARDWARE_ADDRESS,
        NETWORK_ADDRESS,
        WIRELESS_NETWORK,
        MAIL_ADDRESS;

        String said(Words words) {
            return words.say(
                    "rules-reading.trace-" + name().toLowerCase(Locale.ROOT).replace('_', '-'));
        }
    }

    /**
     * The first of a kind.
     *
     * @param line from 1
     * @param column from 1, in bytes
     * @param length in bytes
     * @param count how many of the kind there are
     */
    record Trace(int line, int column, int length, int count) {}

    private static final int LONGEST = 80;
    private static final List<String> INVENTED =
            List.of(".example.com", ".example.net", ".example.org", ".example", ".invalid", ".test");
    private static final String[] HOMES = {"/home/", "/Users/", "\\Users\\", "\\\\Users\\\\"};

    private final String text;
    private final String contact;
    private final Map<Kind, Trace> traces = new EnumMap<>(Kind.class);

    private PersonalTraces(byte[] bytes, String contact) {
        this.text = new String(bytes, StandardCharsets.ISO_8859_1); // one character a byte
        this.contact = contact.toLowerCase(Locale.ROOT);
    }

    /** @param contact the address that is meant to be published; empty if there is none */
    static Map<Kind, Trace> in(byte[] bytes, String contact) {
        PersonalTraces traces = new PersonalTraces(bytes, contact);
        traces.scan();
        return traces.traces;
    }

    private void scan() {
        int line = 1;
        int lineStart = 0;
        int hexUntil = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                line++;
                lineStart = i + 1;
            } else if (c == '/' || c == '\\') {
                put(Kind.HOME_FOLDER, i, homeEnd(i), line, lineStart);
            } else if (c == '@') {
                int start = mailStart(i);
                put(Kind.MAIL_ADDRESS, start, mailEnd(start, i), line, lineStart);
            } else if ((c == 's' || c == 'S') && text.regionMatches(true, i, "ssid", 0, 4)) {
                put(Kind.WIRELESS_NETWORK, i, ssidEnd(i), line, lineStart);
            } else if (i >= hexUntil && isHex(c) && (i == 0 || !isWord(text.charAt(i - 1)))) {
                hexUntil = hexEnd(i);
                address(i, withoutMarks(i, hexUntil), line, lineStart);
            }
        }
    }

    private void address(int start, int end, int line, int lineStart) {
        String word = text.substring(start, end);
        if (NetworkAddress.isHardware(word)) {
            put(Kind.HARDWARE_ADDRESS, start, end, line, lineStart);
        } else if (NetworkAddress.isPublic(word) && !isVersion(start)) {
            put(Kind.NETWORK_ADDRESS, start, end, line, lineStart);
        }
    }

    private void put(Kind kind, int start, int end, int line, int lineStart) {
        if (end > start) {
            Trace first = new Trace(line, start - lineStart + 1, end - start, 1);
            traces.merge(kind, first, (a, b) -> new Trace(a.line, a.column, a.length, a.count + 1));
        }
    }

    /** The end of a home folder's path that begins here; the start itself if none does. */
    private int homeEnd(int start) {
        boolean withinPath = start > 0 && (isWord(text.charAt(start - 1)) || text.charAt(start - 1) == '/');
        for (String home : HOMES) {
            int end = start + home.length();
            if (!withinPath && text.startsWith(home, start)) {
                while (end < text.length() && end - start < LONGEST && isNamePart(text.charAt(end))) {
                    end++;
                }
                return end > start + home.length() ? end : start;
            }
        }
        return start;
    }

    private int mailStart(int at) {
        int start = at;
        while (start > 0 && at - start < LONGEST && isMailPart(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private int mailEnd(int start, int at) {
        int end = at + 1;
        while (end < text.length() && end - at < LONGEST && (isNamePart(text.charAt(end)))) {
            end++;
        }
        while (end > at && (text.charAt(end - 1) == '.' || text.charAt(end - 1) == '-')) {
            end--; // the full stop of the sentence
        }
        String domain = text.substring(Math.min(at + 1, end), end).toLowerCase(Locale.ROOT);
        int dot = domain.lastIndexOf('.');
        boolean isDomain = dot > 0
                && domain.length() - dot > 2
                && domain.substring(dot + 1).chars().allMatch(c -> c >= 'a' && c <= 'z');
        boolean invented = INVENTED.stream().anyMatch(("." + domain)::endsWith);
        boolean meant =
                contact.contains(text.substring(start, Math.max(start, end)).toLowerCase(Locale.ROOT));
        return start < at && isDomain && !invented && !meant ? end : start;
    }

    /** "ssid", a mark, and a name that is not empty. */
    private int ssidEnd(int start) {
        int at = start + 4;
        boolean marked = false;
        while (at < text.length() && at - start < 12 && "\"': =\t".indexOf(text.charAt(at)) >= 0) {
            marked |= text.charAt(at) == ':' || text.charAt(at) == '=';
            at++;
        }
        int end = at;
        while (end < text.length() && end - start < LONGEST && "\"'\n\r,;}".indexOf(text.charAt(end)) < 0) {
            end++;
        }
        return marked && end > at ? end : start;
    }

    /** The end of digits and marks that may be an address. */
    private int hexEnd(int start) {
        int end = start;
        while (end < text.length() && end - start < 45 && (isHex(text.charAt(end)) || isMark(text.charAt(end)))) {
            end++;
        }
        return end;
    }

    /** Without the marks of the sentence around it, or a port; nothing if a word goes on behind. */
    private int withoutMarks(int start, int end) {
        if (end < text.length() && isWord(text.charAt(end))) {
            return start;
        }
        int shorter = end;
        while (shorter > start && isMark(text.charAt(shorter - 1))) {
            shorter--;
        }
        String word = text.substring(start, shorter);
        int colon = word.lastIndexOf(':');
        boolean port = colon > word.indexOf('.') && word.indexOf('.') > 0;
        return port ? start + colon : shorter;
    }

    private static boolean isMark(char c) {
        return c == ':' || c == '.' || c == '-';
    }

    /** Firmware has versions of four numbers too. */
    private boolean isVersion(int start) {
        String before = text.substring(Math.max(0, start - 24), start).toLowerCase(Locale.ROOT);
        return before.contains("version") || before.contains("firmware") || before.contains("release");
    }

    private static boolean isHex(char c) {
        return c >= '0' && c <= '9' || c >= 'a' && c <= 'f' || c >= 'A' && c <= 'F';
    }

    private static boolean isWord(char c) {
        return c >= '0' && c <= '9' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c == '_' || c == '.' || c >= 128;
    }

    private static boolean isNamePart(char c) {
        return isWord(c) || c == '-';
    }

    private static boolean isMailPart(char c) {
        return isNamePart(c) || c == '+' || c == '%';
    }
}
