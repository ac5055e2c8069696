package org.evenhand.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import org.evenhand.model.Limits;
import org.evenhand.model.Place;
import org.evenhand.model.Quota;
import org.evenhand.words.QuotaWords;
import org.evenhand.words.Words;

/** Turns the bytes of a structured file into text, and refuses what is none or means to deceive. */
final class SourceText {

    private SourceText() {}

    /**
     * A file as it was read.
     *
     * @param text with LF between lines
     * @param sha256 of its bytes
     */
    record Whole(String text, String sha256) {}

    /** @throws UnreadableException if there is no file, it is too large, or it is not text in UTF-8 */
    static Whole read(Path root, String file, Limits limits) throws UnreadableException {
        byte[] bytes;
        try {
            Path path = root.resolve(file);
            long size = Files.size(path);
            if (size > limits.asInt(Quota.FILE_BYTES)) {
                throw tooLarge(file, "has " + size + " bytes", limits);
            }
            bytes = read(path, limits.asInt(Quota.FILE_BYTES));
            if (bytes.length > limits.asInt(Quota.FILE_BYTES)) {
                throw tooLarge(file, "grows while it is read", limits);
            }
        } catch (NoSuchFileException e) {
            throw new UnreadableException(
                    Rules.FILE_UNREADABLE,
                    Place.of(file),
                    "there is no such file",
                    "check the name, capitals included");
        } catch (IOException e) {
            throw new UnreadableException(
                    Rules.FILE_UNREADABLE,
                    Place.of(file),
                    "the file cannot be read",
                    "check that it is a file and that you may read it");
        }
        return new Whole(decode(file, bytes), Sha256.of(bytes));
    }

    /** Never more than one byte beyond the limit, whatever size the file claims to have. */
    private static byte[] read(Path path, int most) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(most + 1);
        }
    }

    private static UnreadableException tooLarge(String file, String how, Limits limits) {
        return UnreadableException.tooMuch(
                Place.of(file),
                "the file " + how,
                limits,
                Quota.FILE_BYTES,
                "split it, or move long series into a log");
    }

    private static String decode(String file, byte[] bytes) throws UnreadableException {
        int start = bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF
                ? 3
                : 0;
        ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
        out.flip();
        if (result.isError()) {
            Place place = placeAtEnd(file, out);
            throw new UnreadableException(
                    Rules.FILE_UNREADABLE,
                    place,
                    "this is not text in UTF-8",
                    "if it is a text, save it as UTF-8; if it is not, it does not belong here");
        }
        int nul = indexOfControl(out);
        if (nul >= 0) {
            throw new UnreadableException(
                    Rules.FILE_UNREADABLE,
                    placeAtEnd(file, CharBuffer.wrap(out, 0, nul)),
                    String.format(Locale.ROOT, "the control character U+%04X stands here: this is no text file", (int)
                            out.charAt(nul)),
                    "if it is a text, save it as plain text; if it is not, it does not belong here");
        }
        return out.toString().replace("\r\n", "\n").replace('\r', '\n');
    }

    private static int indexOfControl(CharSequence text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' && c != '\n' && c != '\r' && c != '\t') {
                return i;
            }
        }
        return -1;
    }

    /** Reports characters that make a text look other than it reads. */
    static void reportDeceptive(String file, String text, Faults faults) {
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                line++;
                lineStart = i + 1;
            } else if (isDirectional(c)) {
                faults.add(
                        Rules.TEXT_DECEPTIVE,
                        new Place(file, line, i - lineStart + 1, 1),
                        String.format(
                                Locale.ROOT,
                                "the invisible character U+%04X changes the order in which the text is seen",
                                (int) c),
                        "delete it");
            }
        }
    }

    /**
     * Reports brackets within each other, in one paragraph, that no text has: what reads Markdown spends time on them
     * that grows with the square of their number.
     */
    static void reportNested(String file, String text, Limits limits, Faults faults) {
        int most = 2 * limits.asInt(Quota.FILE_DEPTH);
        int line = 1;
        int lineStart = 0;
        int open = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                open = i == lineStart ? 0 : open;
                line++;
                lineStart = i + 1;
            } else if (c == ']' && open > 0) {
                open--;
            } else if (c == '[' && ++open > most) {
                faults.add(
                        Rules.SIZE_LIMIT,
                        new Place(file, line, i - lineStart + 1, 1),
                        "more than " + most + " brackets are open here",
                        "close them, or put a blank line between, "
                                + QuotaWords.raising(Quota.FILE_DEPTH, Words.english()));
                return;
            }
        }
    }

    /** @throws UnreadableException for a number that no instrument gives: the time to read it grows with its square */
    static void checkNumbers(String file, String text, Limits limits) throws UnreadableException {
        long most = limits.of(Quota.NUMBER_DIGITS);
        int line = 1;
        int lineStart = 0;
        int digits = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                line++;
                lineStart = i + 1;
            }
            digits = c >= '0' && c <= '9' ? digits + 1 : 0;
            if (digits > most) {
                throw UnreadableException.tooMuch(
                        new Place(file, line, i - lineStart + 2 - digits, digits),
                        "a number is too long",
                        limits,
                        Quota.NUMBER_DIGITS,
                        "write as many digits as were measured");
            }
        }
    }

    /** The embeddings, overrides and isolates of UAX #9. */
    private static boolean isDirectional(char c) {
        return (c >= '\u202A' && c <= '\u202E') || (c >= '\u2066' && c <= '\u2069');
    }

    private static Place placeAtEnd(String file, CharSequence text) {
        int line = 1;
        int column = 1;
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == '\n') {
                line++;
                column = 1;
            } else {
                column++;
            }
        }
        return new Place(file, line, column, 1);
    }
}
