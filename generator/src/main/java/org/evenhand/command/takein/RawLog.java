package org.evenhand.command.takein;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPInputStream;
import org.evenhand.command.UnusableException;

/**
 * A foreign log as text.
 *
 * @param name of its file, without folders
 * @param lines without line ends
 * @param endsInLine whether the last line has its line end
 * @param letters how its bytes were read: "UTF-8", "UTF-16", "Windows-1252"
 * @param marked whether it begins with a byte order mark
 * @param carriageReturns whether its lines end in CR LF
 */
record RawLog(
        String name, List<String> lines, boolean endsInLine, String letters, boolean marked, boolean carriageReturns) {

    /** A longer log is no export that somebody takes in by hand. */
    private static final int MOST_BYTES = 256 << 20;

    RawLog {
        lines = List.copyOf(lines);
    }

    /** Reads a file, compressed if its name ends in ".gz". */
    static RawLog read(Path path) {
        if (!Files.exists(path)) {
            throw new UnusableException("there is no file " + path + "; check the path, capitals included");
        }
        if (!Files.isRegularFile(path)) {
            throw new UnusableException(path + " is no file; name the log itself");
        }
        String name = path.getFileName().toString();
        try (InputStream file = Files.newInputStream(path);
                InputStream in = name.toLowerCase(Locale.ROOT).endsWith(".gz") ? new GZIPInputStream(file) : file) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new UnusableException(
                        path + " is larger than " + (MOST_BYTES >> 20) + " MiB; write its run file by hand");
            }
            return of(name, bytes);
        } catch (IOException e) {
            throw new UnusableException(path + " cannot be read, or is not what its name says");
        }
    }

    static RawLog of(String name, byte[] bytes) {
        boolean utf8Mark = starts(bytes, 0xEF, 0xBB, 0xBF);
        boolean little = starts(bytes, 0xFF, 0xFE);
        boolean big = starts(bytes, 0xFE, 0xFF);
        int from = utf8Mark ? 3 : little || big ? 2 : 0;
        String letters = little || big ? "UTF-16" : "UTF-8";
        String text;
        try {
            Charset charset =
                    little ? StandardCharsets.UTF_16LE : big ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_8;
            text = charset.newDecoder()
                    .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
                    .toString();
        } catch (CharacterCodingException e) {
            letters = "Windows-1252";
            text = new String(bytes, from, bytes.length - from, Charset.forName("windows-1252"));
        }
        if (text.indexOf('\0') >= 0) {
            throw new UnusableException(name + " is no text; export it as CSV");
        }
        boolean ends = text.endsWith("\n") || text.endsWith("\r");
        List<String> lines = new ArrayList<>(text.lines().toList());
        return new RawLog(name, lines, ends, letters, from > 0, text.contains("\r\n"));
    }

    /** Whether the log reader can take the letters as they are. */
    boolean isUtf8() {
        return letters.equals("UTF-8");
    }

    private static boolean starts(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }
}
