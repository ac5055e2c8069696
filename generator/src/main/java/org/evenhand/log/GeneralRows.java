package org.evenhand.log;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.reader.RecordType;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.evenhand.log.Faults.Fault;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;
import org.evenhand.words.QuotaWords;
import org.evenhand.words.Words;

/** Finds the fields of any lines after RFC 4180: quoted, over several lines, in any letters. */
final class GeneralRows {

    /** What the decoder puts where bytes are no UTF-8. */
    private static final char UNREADABLE = '\ufffd';

    private GeneralRows() {}

    /** Takes the fields of records as they are found. */
    private interface Fields {
        void begin();

        void field(int index, String text, long line, int column, int length);

        void end(int fields, long line);
    }

    /** The fields of the header, which may hold line breaks within quotes. */
    static List<Header.Title> header(String text, char separator, Limits limits, Faults faults) throws IOException {
        List<Header.Title> found = new ArrayList<>();
        List<Header.Title> titles = new ArrayList<>();
        Fields fields = new Fields() {
            @Override
            public void begin() {
                found.clear();
            }

            @Override
            public void field(int index, String field, long line, int column, int length) {
                found.add(Header.Title.of(field, line, column, length));
            }

            @Override
            public void end(int count, long line) {
                // The parser begins a record that does not come, so what is found counts only once it is ended.
                titles.addAll(found);
            }
        };
        read(new StringReader(text), 0, separator, fields, null, limits, faults);
        return titles;
    }

    /** The samples that follow, to the end of the stream. */
    static void read(InputStream in, long linesBefore, char separator, RowAssembler rows, Limits limits, Faults faults)
            throws IOException {
        Fields fields = new Fields() {
            @Override
            public void begin() {
                rows.begin();
            }

            @Override
            public void field(int index, String text, long line, int column, int length) {
                rows.text(index, text, line, column, length);
            }

            @Override
            public void end(int count, long line) {
                rows.end(count, line);
            }
        };
        try {
            Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8);
            read(reader, linesBefore, separator, fields, rows.layout(), limits, faults);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static void read(
            Reader reader, long linesBefore, char separator, Fields fields, Layout layout, Limits limits, Faults faults)
            throws IOException {
        Handler handler = new Handler(linesBefore, fields, layout, limits, faults.words());
        try (CsvReader<Boolean> csv = CsvReader.builder()
                        .fieldSeparator(separator)
                        .skipEmptyLines(true)
                        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .maxBufferSize(limits.asInt(Quota.LINE_BYTES))
                        .build(handler, reader);
                CloseableIterator<Boolean> records = csv.iterator()) {
            while (records.hasNext()) {
                records.next();
                if (handler.flaw != null) {
                    faults.add(handler.flaw);
                    return;
                }
            }
        } catch (CsvParseException e) {
            faults.add(handler.broken(e));
        }
    }

    /** Told of each field by the parser; works out in which column it stands. */
    private static final class Handler extends AbstractBaseCsvCallbackHandler<Boolean> {

        private final long linesBefore;
        private final Fields fields;
        private final Layout layout;
        private final Limits limits;
        private final Words words;
        private long line;
        private int column;
        private Fault flaw;

        Handler(long linesBefore, Fields fields, Layout layout, Limits limits, Words words) {
            this.linesBefore = linesBefore;
            this.fields = fields;
            this.layout = layout;
            this.limits = limits;
            this.words = words;
        }

        @Override
        protected void handleBegin(long startingLineNumber) {
            line = linesBefore + startingLineNumber;
            column = 1;
            fields.begin();
        }

        @Override
        protected void handleField(int index, char[] buffer, int offset, int length, boolean quoted) {
            int written = length + (quoted ? 2 : 0);
            long startLine = line;
            int startColumn = column;
            column += written;
            for (int i = offset; i < offset + length; i++) {
                char c = buffer[i];
                if (c == '"' && quoted) {
                    written++; // a quote within quotes is written twice
                    column++;
                } else if (c == '\n') {
                    line++;
                    column = offset + length - i + 1;
                } else if (c == UNREADABLE || c == 0) {
                    flaw = flaw == null ? notText(startLine, startColumn + i - offset) : flaw;
                }
            }
            column++;
            if (layout == null || index < layout.fields() && layout.isWanted(index)) {
                String text = new String(buffer, offset, length);
                fields.field(index, text, startLine, startColumn, Math.max(1, written));
            }
        }

        @Override
        protected Boolean buildRecord() {
            if (flaw == null && getRecordType() != RecordType.EMPTY) {
                fields.end(getFieldCount(), linesBefore + getStartingLineNumber());
            }
            return Boolean.TRUE;
        }

        private Fault notText(long line, int column) {
            return new Fault(
                    "file-unreadable",
                    line,
                    column,
                    1,
                    words.say("log-fault.not-text"),
                    words.say("log-fault.not-text.remedy"));
        }

        Fault broken(CsvParseException e) {
            // A field longer than the buffer and a quote out of place both end here.
            boolean tooLong = String.valueOf(e.getMessage()).contains("buffer");
            long at = Math.max(line, linesBefore + 1);
            return tooLong ? tooLong(at, limits, words) : badQuote(at);
        }

        private Fault badQuote(long line) {
            return new Fault(
                    "file-unreadable", line, 0, 1, words.say("log-fault.quote"), words.say("log-fault.quote.remedy"));
        }
    }

    static Fault tooLong(long line, Limits limits, Words words) {
        return new Fault(
                "size-limit",
                line,
                0,
                1,
                words.say("log-fault.long-line", limits.of(Quota.LINE_BYTES)),
                words.say("log-fault.long-line.remedy", QuotaWords.raising(Quota.LINE_BYTES, words)));
    }
}
