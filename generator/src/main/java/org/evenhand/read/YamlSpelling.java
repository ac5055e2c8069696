package org.evenhand.read;

import java.util.Optional;
import java.util.stream.IntStream;
import org.evenhand.model.Spelling;
import org.yaml.snakeyaml.events.ScalarEvent;

/**
 * Finds where each character of a scalar is written, by going along the value and the file together. Where the two do not
 * agree, nothing is said: a wrong place would be worse than none.
 *
 * <p>Source: YAML 1.1, 5.6 (escapes), 9.1 (flow scalars and their folding), 9.2 (block scalars).
 */
final class YamlSpelling {

    private final String source;
    private final String value;
    private final ScalarEvent scalar;
    private final int firstLine;
    private final int[] lines;
    private final int[] columns;
    private final int[] lengths;
    /** From here on the value is line breaks only. */
    private final int tail;
    /** Up to here the file has no line break behind blanks; asked for at each character, it is sought only once. */
    private int noBreakBefore;

    private int at;
    private int done;
    private int line;
    private int lineStart;

    private YamlSpelling(String source, int[] lineStarts, ScalarEvent scalar, int before) {
        this.source = source;
        this.line = scalar.getStartMark().getLine();
        this.lineStart = line < lineStarts.length ? lineStarts[line] : source.length();
        this.scalar = scalar;
        this.value = scalar.getValue();
        this.firstLine = before + 1;
        this.lines = new int[value.length()];
        this.columns = new int[value.length()];
        this.lengths = new int[value.length()];
        this.tail = withoutBreaks(value);
    }

    /**
     * @param source the text of the document, with LF between lines
     * @param lineStarts the index at which each of its lines begins
     * @param before how many lines stand before it in its file
     */
    static Optional<Spelling> of(String source, int[] lineStarts, ScalarEvent scalar, int before) {
        return new YamlSpelling(source, lineStarts, scalar, before).spelling();
    }

    /** The index at which each line begins. */
    static int[] lineStarts(String source) {
        return IntStream.concat(
                        IntStream.of(0),
                        IntStream.range(0, source.length())
                                .filter(i -> source.charAt(i) == '\n')
                                .map(i -> i + 1))
                .toArray();
    }

    private Optional<Spelling> spelling() {
        int column = scalar.getStartMark().getColumn();
        if (lineStart + column >= source.length()) {
            return Optional.empty();
        }
        at = source.offsetByCodePoints(lineStart, column);
        boolean found = scalar.isLiteral() || scalar.isFolded() ? block() : flow();
        return found ? Optional.of(new Spelling(lines, columns, lengths)) : Optional.empty();
    }

    // ---- Plain and quoted ----

    private boolean flow() {
        char quote = scalar.isPlain() ? 0 : source.charAt(at);
        at += scalar.isPlain() ? 0 : 1;
        while (done < value.length()) {
            if (at >= source.length()) {
                return false;
            }
            char c = source.charAt(at);
            if (quote == '"' && c == '\\') {
                if (!escape()) {
                    return false;
                }
            } else if (quote == '\'' && source.startsWith("''", at)) {
                if (!take('\'', 2)) {
                    return false;
                }
            } else if (isBreakNext()) {
                if (!foldedBreak()) {
                    return false;
                }
            } else if (!take(c, 1)) {
                return false;
            }
        }
        return true;
    }

    /** An escaped line break stands for nothing, and neither does the indentation behind it. */
    private boolean escape() {
        char kind = at + 1 < source.length() ? source.charAt(at + 1) : 0;
        if (kind == '\n') {
            at++;
            nextLine();
            skipBlanks();
            return true;
        }
        int length = kind == 'x' ? 4 : kind == 'u' ? 6 : kind == 'U' ? 10 : 2;
        if (at + length > source.length()) {
            return false;
        }
        int characters = Character.charCount(value.codePointAt(done));
        boolean first = take(value.charAt(done), length);
        // What needs two characters here is one escape there.
        return first && (characters == 1 || put(0));
    }

    private boolean isBreakNext() {
        if (at < noBreakBefore) {
            return false;
        }
        int next = behindBlanks(at);
        if (isBreak(next)) {
            return true;
        }
        noBreakBefore = next;
        return false;
    }

    private boolean isBreak(int index) {
        return index < source.length() && source.charAt(index) == '\n';
    }

    private int behindBlanks(int from) {
        int next = from;
        while (next < source.length() && (source.charAt(next) == ' ' || source.charAt(next) == '\t')) {
            next++;
        }
        return next;
    }

    /** One line break is a blank; of more, each but the first is one. */
    private boolean foldedBreak() {
        int fromLine = line;
        int atLine = line;
        int atColumn = column();
        while (isBreakNext()) {
            skipBlanks();
            nextLine();
        }
        skipBlanks();
        int breaks = line - fromLine;
        String written = breaks == 1 ? " " : "\n".repeat(breaks - 1);
        return put(written, atLine, atColumn);
    }

    // ---- Literal and folded ----

    private boolean block() {
        int end = source.indexOf('\n', at);
        if (end < 0) {
            return false;
        }
        at = end;
        nextLine();
        int indent = indent();
        int emptyLines = 0;
        boolean begun = false;
        while (done < value.length()) {
            int behind = behindBlanks(at);
            if (isBreak(behind) && behind - at <= indent) {
                // An empty line; what it stands for is decided where the next text begins.
                skipBlanks();
                nextLine();
                emptyLines++;
                continue;
            }
            if (begun && !blockBreak(emptyLines + 1)) {
                return false;
            }
            if (!begun && !put("\n".repeat(emptyLines), line, 1)) {
                return false;
            }
            begun = true;
            emptyLines = 0;
            at += indent;
            while (done < value.length() && at < source.length() && source.charAt(at) != '\n') {
                if (!take(source.charAt(at), 1)) {
                    return false;
                }
            }
            if (at >= source.length()) {
                return rest();
            }
            nextLine();
            if (done >= tail) {
                return rest();
            }
        }
        return true;
    }

    /** A literal scalar keeps each break; a folded one folds them between lines that are not indented further. */
    private boolean blockBreak(int breaks) {
        int atLine = line - 1;
        if (scalar.isLiteral() || !value.startsWith(" ", done) && value.startsWith("\n".repeat(breaks), done)) {
            return put("\n".repeat(breaks), atLine, 1);
        }
        return put(breaks == 1 ? " " : "\n".repeat(breaks - 1), atLine, 1);
    }

    /** The indentation that is no part of the value: that of the first line with text, less what the value begins with. */
    private int indent() {
        int first = at;
        for (int behind = behindBlanks(first); isBreak(behind); behind = behindBlanks(first)) {
            first = behind + 1;
        }
        int blanks = 0;
        while (first + blanks < source.length() && source.charAt(first + blanks) == ' ') {
            blanks++;
        }
        int text = 0;
        while (text < value.length() && value.charAt(text) == '\n') {
            text++;
        }
        int own = 0;
        while (text + own < value.length() && value.charAt(text + own) == ' ') {
            own++;
        }
        return Math.max(0, blanks - own);
    }

    private static int withoutBreaks(String value) {
        int end = value.length();
        while (end > 0 && value.charAt(end - 1) == '\n') {
            end--;
        }
        return end;
    }

    /** Line breaks at the end, which a chomping indicator keeps or not. */
    private boolean rest() {
        return done >= tail && put(value.substring(done), line, 1);
    }

    // ---- One by one ----

    private int column() {
        return at - lineStart + 1;
    }

    private void skipBlanks() {
        at = behindBlanks(at);
    }

    /** Goes behind the line break that stands here. */
    private void nextLine() {
        at++;
        line++;
        lineStart = at;
    }

    /** The next character of the value, which must be this one, for so many of the file. */
    private boolean take(char expected, int length) {
        if (done >= value.length() || value.charAt(done) != expected) {
            return false;
        }
        put(length);
        at += length;
        return true;
    }

    private boolean put(int length) {
        lines[done] = firstLine + line;
        columns[done] = column();
        lengths[done] = length;
        done++;
        return true;
    }

    private boolean put(String written, int atLine, int atColumn) {
        if (!value.startsWith(written, done)) {
            return false;
        }
        for (int i = 0; i < written.length(); i++) {
            lines[done] = firstLine + atLine;
            columns[done] = atColumn;
            lengths[done] = 0;
            done++;
        }
        return true;
    }
}
