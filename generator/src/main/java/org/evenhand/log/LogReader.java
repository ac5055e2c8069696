package org.evenhand.log;

import java.io.EOFException;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;
import org.evenhand.model.Limits;
import org.evenhand.model.LogSource;
import org.evenhand.model.Method;
import org.evenhand.model.Quota;
import org.evenhand.model.Subject;
import org.evenhand.read.Sha256;
import org.evenhand.words.Words;

/**
 * Reads the log of a run.
 *
 * <p>Logs are CSV after RFC 4180 in UTF-8, plain or compressed by gzip (known by the ending ".gz"), with a header of
 * names and units, {@code time [s],temperature [°C]}. The run may say otherwise: other names and units, another
 * separator or decimal marker. Times are elapsed ({@code time [s]}) or dates with an offset ({@code time}); those of a
 * clock that may start anywhere, that is dates and mapped columns, count from the first sample.
 */
public final class LogReader {

    private final Path root;
    private final LogSource source;
    private final Method method;
    private final SampleSink sink;
    private final boolean fast;
    private final Faults faults;
    private RowAssembler rows;
    private OptionalLong numbersFrom = OptionalLong.empty();

    private LogReader(
            Path root, LogSource source, Method method, Subject subject, SampleSink sink, Words words, boolean fast) {
        this.root = root;
        this.source = source;
        this.method = method;
        this.sink = sink;
        this.fast = fast;
        this.faults = new Faults(source.file(), subject, words);
    }

    /**
     * Reads a log from front to back, and tells in English what is wrong with it.
     *
     * @param root the results folder
     * @param source the file, and how to read it
     * @param method whose columns and units are wanted
     * @param subject the run, for the findings
     * @param sink takes the samples, if the header is in order
     * @return how it went; what is wrong with the file is told there and never thrown
     */
    public static LogOutcome read(Path root, LogSource source, Method method, Subject subject, SampleSink sink) {
        return read(root, source, method, subject, sink, Words.english());
    }

    /** As {@link #read(Path, LogSource, Method, Subject, SampleSink)}, in the words of another language. */
    public static LogOutcome read(
            Path root, LogSource source, Method method, Subject subject, SampleSink sink, Words words) {
        return new LogReader(root, source, method, subject, sink, words, true).read();
    }

    /** As {@link #read}, by the slower of the two parsers alone, so that tests can hold one against the other. */
    static LogOutcome readGenerally(Path root, LogSource source, Method method, Subject subject, SampleSink sink) {
        return new LogReader(root, source, method, subject, sink, Words.english(), false).read();
    }

    private LogOutcome read() {
        String sha256 = "";
        try (InputStream file = open();
                DigestInputStream digested = new DigestInputStream(file, Sha256.begun())) {
            boolean compressed = source.file().toLowerCase(Locale.ROOT).endsWith(".gz");
            lines(new Bounded(compressed ? new GZIPInputStream(digested, 1 << 16) : digested, source.limits()));
            byte[] rest = new byte[1 << 16];
            while (digested.read(rest) >= 0) {
                continue; // what was not read belongs to the digest all the same
            }
            sha256 = HexFormat.of().formatHex(digested.getMessageDigest().digest());
        } catch (IOException e) {
            failed(e);
        } catch (UncheckedIOException e) {
            failed(e.getCause());
        }
        if (rows == null) {
            return new LogOutcome(false, List.of(), 0, sha256, OptionalLong.empty(), faults.findings());
        }
        rows.finish();
        return new LogOutcome(
                rows.samples() >= 2,
                present(rows.layout()),
                rows.samples(),
                sha256,
                sha256.isEmpty() ? OptionalLong.empty() : numbersFrom,
                faults.findings());
    }

    private InputStream open() throws IOException {
        Path path;
        try {
            path = root.resolve(source.file());
        } catch (InvalidPathException e) {
            throw new NoSuchFileException(source.file());
        }
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw new IOException("a folder, or a device that might never end");
        }
        return Files.newInputStream(path);
    }

    private void lines(InputStream in) throws IOException {
        Limits limits = source.limits();
        LineBuffer lines = new LineBuffer(in, limits.asInt(Quota.LINE_BYTES));
        if (!lines.more()) {
            if (lines.isTooLong()) {
                faults.add(GeneralRows.tooLong(1, limits, faults.words()));
            } else {
                faults.ofFile("file-unreadable", "empty");
            }
            return;
        }
        HeaderText text = HeaderText.of(lines);
        List<Header.Title> titles = GeneralRows.header(text.text(), source.separator(), limits, faults);
        if (faults.any()) {
            return;
        }
        Optional<Layout> layout = new Header(titles, source, method, faults).layout();
        if (layout.isEmpty()) {
            return;
        }
        rows = new RowAssembler(layout.get(), source.decimal(), faults, sink, limits);
        sink.begin(layout.get().columns(), mask(layout.get()));
        lines.consumeTo(text.end());
        long consumed = text.lines();
        boolean ascii = source.separator() < 128 && source.decimal() < 128;
        if (fast && ascii) {
            FastRows plain = new FastRows(lines, rows, source.separator(), source.decimal());
            consumed = plain.read(consumed);
            boolean all = plain.onlyNumbers() && lines.isAtEnd() && partsNumbers(source.separator());
            numbersFrom = all ? OptionalLong.of(text.end()) : OptionalLong.empty();
        }
        if (lines.isTooLong()) {
            faults.add(GeneralRows.tooLong(consumed + 1, limits, faults.words()));
        } else {
            GeneralRows.read(lines.rest(), consumed, source.separator(), rows, limits, faults);
        }
    }

    /** Whether two numbers with the separator between them are not one word of digits and marks, as an address is. */
    private static boolean partsNumbers(char separator) {
        return ",;\t| ".indexOf(separator) >= 0;
    }

    private static boolean[] mask(Layout layout) {
        boolean[] present = new boolean[layout.columns().size()];
        for (Layout.Use[] uses : layout.uses()) {
            for (Layout.Use use : uses) {
                present[use.column()] = true;
            }
        }
        return present;
    }

    private static List<String> present(Layout layout) {
        boolean[] mask = mask(layout);
        List<String> present = new ArrayList<>();
        for (int i = 0; i < mask.length; i++) {
            if (mask[i]) {
                present.add(layout.columns().get(i));
            }
        }
        return present;
    }

    private void failed(IOException e) {
        if (e instanceof NoSuchFileException || e instanceof FileNotFoundException) {
            faults.ofFile("file-unreadable", "no-file");
        } else if (e instanceof AccessDeniedException) {
            faults.ofFile("file-unreadable", "forbidden");
        } else if (e instanceof TooMuchException much) {
            faults.add(new Faults.Fault("size-limit", 0, 0, 1, much.why(faults.words()), much.remedy(faults.words())));
        } else if (e instanceof ZipException) {
            faults.ofFile("file-unreadable", "not-gzip");
        } else if (e instanceof EOFException) {
            faults.ofFile("file-unreadable", "gzip-short");
        } else {
            faults.ofFile("file-unreadable", "unreadable");
        }
    }

    /** The header's record. */
    private record HeaderText(String text, int end, long lines) {

        static HeaderText of(LineBuffer buffer) {
            byte[] bytes = buffer.bytes();
            int start = buffer.start();
            if (buffer.end() - start >= 3 && bytes[start] == (byte) 0xef && bytes[start + 1] == (byte) 0xbb) {
                start += bytes[start + 2] == (byte) 0xbf ? 3 : 0; // a byte order mark
            }
            boolean quoted = false;
            long lines = 0;
            int at = start;
            while (at < buffer.end()) {
                byte c = bytes[at++];
                quoted ^= c == '"';
                boolean carriageReturn = c == '\r' && bytes[at] != '\n';
                lines += c == '\n' || carriageReturn ? 1 : 0;
                if (!quoted && (c == '\n' || carriageReturn)) {
                    break;
                }
            }
            return new HeaderText(new String(bytes, start, at - start, StandardCharsets.UTF_8), at, lines);
        }
    }
}
