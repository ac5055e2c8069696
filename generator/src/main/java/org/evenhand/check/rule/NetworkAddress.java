package org.evenhand.check.rule;

import java.util.Locale;

/** Tells addresses that lead to a device or a household from those that lead nowhere. */
final class NetworkAddress {

    private NetworkAddress() {}

    /** Six pairs of hexadecimal digits, not all alike. */
    static boolean isHardware(String word) {
        if (word.length() != 17) {
            return false;
        }
        char mark = word.charAt(2);
        boolean varied = false;
        for (int i = 0; i < 17; i++) {
            char c = word.charAt(i);
            boolean digit = c != ':' && c != '-' && c != '.';
            if (i % 3 == 2 ? c != mark || digit : !digit) {
                return false;
            }
            varied |= digit && c != word.charAt(0);
        }
        return varied && mark != '.';
    }

    /** An address of IPv4 or IPv6 that is routed in public. */
    static boolean isPublic(String word) {
        return word.indexOf(':') < 0 ? isPublic4(word) : isPublic6(word.toLowerCase(Locale.ROOT));
    }

    private static boolean isPublic4(String word) {
        if (word.length() < 7 || word.length() > 15) {
            return false;
        }
        String[] parts = word.split("\\.", -1);
        if (parts.length != 4) {
            return false;
        }
        int[] n = new int[4];
        for (int i = 0; i < 4; i++) {
            boolean isNumber = parts[i].length() >= 1
                    && parts[i].length() <= 3
                    && parts[i].chars().allMatch(c -> c >= '0' && c <= '9');
            n[i] = isNumber ? Integer.parseInt(parts[i]) : 256;
            if (n[i] > 255) {
                return false;
            }
        }
        boolean special = n[0] == 0 || n[0] == 10 || n[0] == 127 || n[0] >= 224;
        boolean local = n[0] == 192 && n[1] == 168
                || n[0] == 169 && n[1] == 254
                || n[0] == 172 && n[1] >= 16 && n[1] < 32
                || n[0] == 100 && n[1] >= 64 && n[1] < 128;
        boolean documentation = n[0] == 192 && n[1] == 0 && n[2] == 2
                || n[0] == 198 && n[1] == 51 && n[2] == 100
                || n[0] == 203 && n[1] == 0 && n[2] == 113;
        return !special && !local && !documentation;
    }

    /** Of the block 2000::/3, from which all public addresses come. */
    private static boolean isPublic6(String word) {
        String[] groups = word.split(":", -1);
        boolean shortened = word.contains("::");
        boolean counts = groups.length == 8 || shortened && groups.length >= 4 && groups.length <= 8;
        boolean first = groups[0].length() == 4 && (groups[0].charAt(0) == '2' || groups[0].charAt(0) == '3');
        if (!counts || !first || word.startsWith("2001:db8:") || word.startsWith("2001:0db8:")) {
            return false;
        }
        for (String group : groups) {
            if (group.length() > 4 || group.indexOf('.') >= 0 || group.indexOf('-') >= 0) {
                return false;
            }
        }
        return true;
    }
}
