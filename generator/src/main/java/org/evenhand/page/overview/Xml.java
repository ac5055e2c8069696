package org.evenhand.page.overview;

/** Text as XML takes it. Source: Extensible Markup Language 1.0, fifth edition, 2.2 and 2.4. */
final class Xml {

    private Xml() {}

    /** Text with markup escaped, and without the characters that XML has no way to write. */
    static String text(String plain) {
        StringBuilder text = new StringBuilder();
        plain.codePoints().filter(Xml::isCharacter).forEach(c -> {
            switch (c) {
                case '&' -> text.append("&amp;");
                case '<' -> text.append("&lt;");
                case '>' -> text.append("&gt;");
                case '"' -> text.append("&quot;");
                default -> text.appendCodePoint(c);
            }
        });
        return text.toString();
    }

    /** An element of text on a line of its own. */
    static String element(String indent, String name, String plain) {
        return indent + "<" + name + ">" + text(plain) + "</" + name + ">\n";
    }

    private static boolean isCharacter(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || c >= 0x20 && c <= 0xD7FF
                || c >= 0xE000 && c <= 0xFFFD
                || c >= 0x10000;
    }
}
