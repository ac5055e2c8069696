package org.evenhand.page;

import java.nio.charset.StandardCharsets;

/** Writes paths as addresses. Source: RFC 3986, 3.3. */
public final class Href {

    private static final String KEPT = "-._~!$&'()*+,;=@/";

    private Href() {}

    /** A path with "/" between its parts, each character that an address does not take percent-encoded. */
    public static String of(String path) {
        StringBuilder href = new StringBuilder();
        for (byte b : path.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (b & 0xFF);
            boolean plain = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9';
            if (plain || KEPT.indexOf(c) >= 0) {
                href.append(c);
            } else {
                href.append('%')
                        .append(Character.toUpperCase(Character.forDigit(c >> 4, 16)))
                        .append(Character.toUpperCase(Character.forDigit(c & 15, 16)));
            }
        }
        return href.toString();
    }
}
