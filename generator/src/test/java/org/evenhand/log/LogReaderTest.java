package org.evenhand.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import java.util.zip.GZIPOutputStream;
import org.evenhand.model.ColumnMapping;
import org.evenhand.model.Finding;
import org.evenhand.model.LogSource;
import org.evenhand.model.Method;
import org.evenhand.model.Quota;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LogReaderTest {

    private static final Subject RUN = Subject.run("study", "run-1");
    private static final Method TEMPERATURE =
            Methods.with(Optional.empty(), List.of(Methods.mean("temperature", "°C")), "temperature", "°C");

    @TempDir
    private Path folder;

    private final Sampled sampled = new Sampled();

    private LogOutcome read(String text) throws IOException {
        return read(TEMPERATURE, text, Map.of(), ',', '.');
    }

    private LogOutcome read(
            Method method, String text, Map<String, ColumnMapping> columns, char separator, char decimal)
            throws IOException {
        Files.writeString(folder.resolve("log.csv"), text);
        return LogReader.read(folder, new LogSource("log.csv", columns, separator, decimal), method, RUN, sampled);
    }

    private static ColumnMapping mapping(String from, String unit) {
        return new ColumnMapping(from, Optional.ofNullable(unit).map(Unit::of), OptionalInt.empty());
    }

    private static ColumnMapping bit(String from, int bit) {
        return new ColumnMapping(from, Optional.empty(), OptionalInt.of(bit));
    }

    private static String faults(LogOutcome outcome) {
        return outcome.findings().stream().map(f -> f.place() + " " + f.rule()).collect(Collectors.joining("; "));
    }

    @Test
    void samples_come_in_order_with_their_times() throws IOException {
        LogOutcome outcome = read("time [s],temperature [°C]\n0,21.4\n1.5,21.6\n");
        assertEquals("0.0 [21.4]; 1.5 [21.6]", sampled.toString());
        assertEquals(List.of(), outcome.findings());
        assertEquals(List.of("temperature"), outcome.columns());
        assertEquals(2, outcome.samples());
        assertTrue(outcome.usable());
    }

    @ParameterizedTest
    @CsvSource({
        "'0,21.4\n1.5,21.6\n', true",
        "'0,21.4\n1.5,\n', true",
        "'0,-21.4\r\n\r\n1.5,+21.6', true",
        "'0,21.4\n1.5,2e1\n', false",
        "'0,21.4\n1.5,\"21.6\"\n', false",
        "'0,21.4\n1.5,9.9.9.9\n', false",
        "'0,21.4\n1.5,21.6,robin@fernhollow.org\n', false"
    })
    void lines_of_plain_numbers_are_known_to_hold_nothing_else(String lines, boolean numbers) throws IOException {
        String header = "time [s],temperature [°C]\n";
        LogOutcome outcome = read(header + lines.replace("\\n", "\n").replace("\\r", "\r"));
        long before = header.getBytes(StandardCharsets.UTF_8).length;
        assertEquals(numbers ? OptionalLong.of(before) : OptionalLong.empty(), outcome.numbersFrom());
    }

    @Test
    void numbers_that_a_separator_joins_to_a_word_are_not_told_from_an_address() throws IOException {
        LogOutcome outcome = read(TEMPERATURE, "time [s]:temperature [°C]\n0:21.4\n1:21.6\n", Map.of(), ':', '.');
        assertEquals(2, outcome.samples());
        assertEquals(OptionalLong.empty(), outcome.numbersFrom());
    }

    // RFC 4180, section 2, allows each of these; the byte order mark and bare line feeds are common practice, no
    // source.
    @ParameterizedTest
    @ValueSource(
            strings = {
                "time [s],temperature [°C]\r\n0,21.4\r\n1,21.5\r\n",
                "time [s],temperature [°C]\n0,21.4\n1,21.5",
                "\uFEFFtime [s],temperature [°C]\n0,21.4\n1,21.5\n\n",
                "\"time [s]\",\"temperature [°C]\"\n\"0\",\"21.4\"\n\"1\",\"21.5\"\n",
                "time [s] , temperature [°C]\n0, 21.4\n1 ,21.5 \n",
                "remark,time [s],temperature [°C]\nfine,0,21.4\n\"two\nlines, one \"\"field\"\"\",1,21.5\n",
                "time [s],temperature [°C]\r0,21.4\r1,21.5\r",
                "time [min],temperature [m°C]\n0,21400\n0.016666666666666666,2.15e4\n",
                "time [s],temperature [Cel]\n+0,+21.4\n1,0021.50\n",
            })
    void any_form_of_rfc_4180_gives_the_same_samples(String text) throws IOException {
        LogOutcome outcome = read(text);
        assertEquals(List.of(), outcome.findings());
        assertEquals("0.0 [21.4]; 1.0 [21.5]", sampled.toString());
    }

    @Test
    void decimal_commas_and_other_separators_are_read_where_the_run_says_so() throws IOException {
        LogOutcome outcome = read(TEMPERATURE, "time [s];temperature [°C]\n0;21,4\n1;−3,5\n", Map.of(), ';', ',');
        assertEquals(List.of(), outcome.findings());
        assertEquals("0.0 [21.4]; 1.0 [-3.5]", sampled.toString());
    }

    @Test
    void an_empty_field_is_no_sample() throws IOException {
        LogOutcome outcome = read("time [s],temperature [°C]\n0,21.4\n1,\n2,21.6\n");
        assertEquals(List.of(), outcome.findings());
        assertEquals("0.0 [21.4]; 1.0 [NaN]; 2.0 [21.6]", sampled.toString());
    }

    @Test
    void foreign_columns_flags_and_bits_are_mapped() throws IOException {
        Method method = Methods.recording("temperature", "°C", "fan", "1", "throttled", "1", "undervoltage", "1");
        LogOutcome outcome = read(
                method,
                "ms,t_soc,fan,status\n5000,48312,1,4\n6000,48400,0,0x50001\n",
                Map.of(
                        "time", mapping("ms", "ms"),
                        "temperature", mapping("t_soc", "m°C"),
                        "throttled", bit("status", 2),
                        "undervoltage", bit("status", 0)),
                ',',
                '.');
        assertEquals(List.of(), outcome.findings());
        assertEquals("0.0 [48.312, 1.0, 1.0, 0.0]; 1.0 [48.4, 0.0, 0.0, 1.0]", sampled.toString());
    }

    @Test
    void dates_count_from_the_first_across_offsets() throws IOException {
        LogOutcome outcome = read("time,temperature [°C]\n"
                + "2026-03-02T09:14:00Z,21.4\n2026-03-02T11:14:00.250+02:00,21.5\n2026-03-02 23:59:59.5-00:30,22\n");
        assertEquals(List.of(), outcome.findings());
        // From memory: 00:29:59.5 of the next day is 15 h 15 min 59.5 s after 09:14.
        assertEquals("0.0 [21.4]; 0.25 [21.5]; 54959.5 [22.0]", sampled.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // text of the log, with / for a line end | place and rule
                "time [s],temp [°C]/0,1/1,2/|log.csv:1 field-missing",
                "time [s],temperature/0,1/1,2/|log.csv:1:10 unit-missing",
                "time [s],temperature [degC]/0,1/1,2/|log.csv:1:10 unit-unknown",
                "time [s],temperature [W]/0,1/1,2/|log.csv:1:10 unit-dimension",
                "time [s],temperature [K]/0,1/1,2/|log.csv:1:10 unit-dimension",
                "time [s],temperature [°C],temperature [°F]/0,1,1/1,2,1/|log.csv:1:27 field-duplicate",
                "time,temperature [°C]/0,1/1,2/|log.csv:2:1 unit-missing; log.csv:3:1 unit-missing",
                "time [s],temperature [°C]/0,21/1,NaN/2,22/|log.csv:3:3 number-ambiguous",
                "time [s],temperature [°C]/0,21/1,\"1,234\"/2,22/|log.csv:3:3 number-ambiguous",
                "time [s],temperature [°C]/0,21/1,1.234.5/2,22/|log.csv:3:3 number-ambiguous",
                "time [s],temperature [°C]/0,21/1,1e999/2,22/|log.csv:3:3 number-ambiguous",
                "time [s],temperature [°C]/0,21/1,5./2,22/|log.csv:3:3 number-ambiguous",
                "time [s],temperature [°C]/0,21/1,21 °C/2,22/|log.csv:3:3 number-ambiguous",
                "time [s],temperature [°C]/0,21/1,22/1,23/2,22/|log.csv:4:1 log-time-broken",
                "time [s],temperature [°C]/0,21/1,22/0.5,23/2,22/|log.csv:4:1 log-time-broken",
                "time [s],temperature [°C]/0,21/,22/2,22/|log.csv:3:1 log-time-broken",
                "time,temperature [°C]/2026-03-02T09:14:00,21/2026-03-02T09:14:01Z,22/2026-03-02T09:14:02Z,22/"
                        + "|log.csv:2:1 log-time-broken",
                "time,temperature [°C]/2026-02-29T09:14:00Z,21/2026-03-02T09:14:01Z,22/2026-03-02T09:14:02Z,22/"
                        + "|log.csv:2:1 log-time-broken",
                "time [s],temperature [°C]/0,21/1,21,5/2,22/|log.csv:3 field-unknown",
                "time [s],temperature [°C]/0,21/1,21/2|log.csv:4 field-missing",
                "time [s],temperature [°C]/|log.csv file-unreadable",
                "time [s],temperature [°C]/0,21/|log.csv file-unreadable",
                "time [s],temperature [°C]/0,21/1,\"2\"1/2,22/|log.csv:3 file-unreadable",
            })
    void faults_are_found_where_they_stand(String text, String expected) throws IOException {
        LogOutcome outcome = read(text.replace('/', '\n'));
        assertEquals(expected, faults(outcome));
        for (Finding finding : outcome.findings()) {
            assertEquals(Severity.WITHHOLD, finding.severity());
            assertEquals(RUN, finding.subject());
            assertFalse(finding.remedy().isEmpty());
        }
    }

    @Test
    void a_missing_column_lists_those_present_and_suggests_a_near_name() throws IOException {
        Finding finding =
                read("time [s],Temperatur [°C]\n0,1\n1,2\n").findings().get(0);
        assertEquals("the log has no column “temperature”; it has time, Temperatur", finding.message());
        assertTrue(finding.remedy().startsWith("did you mean “Temperatur”?"), finding.remedy());
    }

    @Test
    void a_column_that_no_measurand_needs_may_be_absent() throws IOException {
        Method method = Methods.with(
                Optional.empty(),
                List.of(Methods.mean("temperature", "°C")),
                "power",
                "W",
                "temperature",
                "°C",
                "ambient",
                "°C");
        LogOutcome outcome = read(method, "time [s],temperature [°C]\n0,21.4\n1,21.5\n", Map.of(), ',', '.');
        assertEquals(List.of(), outcome.findings());
        assertEquals("0.0 [NaN, 21.4, NaN]; 1.0 [NaN, 21.5, NaN]", sampled.toString());
        assertEquals(List.of("temperature"), outcome.columns());
    }

    @Test
    void many_faults_are_capped_and_the_rest_is_counted() throws IOException {
        LogOutcome outcome = read("time [s],temperature [°C]\n" + "x,y\n".repeat(50));
        assertEquals(Faults.MOST + 1, outcome.findings().size());
        assertEquals(
                "80 more faults from here on in this file",
                outcome.findings().get(Faults.MOST).message());
    }

    @Test
    void a_compressed_log_is_read_and_its_digest_is_of_the_stored_bytes() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (OutputStream gzip = new GZIPOutputStream(bytes)) {
            gzip.write("time [s],temperature [°C]\n0,21.4\n1,21.5\n".getBytes(StandardCharsets.UTF_8));
        }
        Files.write(folder.resolve("log.csv.gz"), bytes.toByteArray());
        LogOutcome outcome =
                LogReader.read(folder, new LogSource("log.csv.gz", Map.of(), ',', '.'), TEMPERATURE, RUN, sampled);
        assertEquals(List.of(), outcome.findings());
        assertEquals("0.0 [21.4]; 1.0 [21.5]", sampled.toString());
        assertEquals(64, outcome.sha256().length());
    }

    @Test
    void the_digest_is_sha_256() throws IOException {
        // FIPS 180-4: SHA-256 of "abc", a file that is no log but is read to its end.
        assertEquals(
                "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                read("abc").sha256());
    }

    @ParameterizedTest
    @ValueSource(strings = {"plain.csv.gz", "cut.csv.gz", "none.csv", "folder", "latin.csv", "wide.csv", "long.csv"})
    void unreadable_files_are_findings_and_no_exceptions(String name) throws IOException {
        String header = "time [s],temperature [°C]\n";
        Files.writeString(folder.resolve("plain.csv.gz"), header);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (OutputStream gzip = new GZIPOutputStream(bytes)) {
            gzip.write((header + "0,1\n1,2\n").getBytes(StandardCharsets.UTF_8));
        }
        Files.write(folder.resolve("cut.csv.gz"), java.util.Arrays.copyOf(bytes.toByteArray(), bytes.size() - 12));
        Files.createDirectories(folder.resolve("folder"));
        Files.write(
                folder.resolve("latin.csv"),
                "time [s],temperature [°C]\n0,1\n1,2\n".getBytes(StandardCharsets.ISO_8859_1));
        Files.writeString(folder.resolve("wide.csv"), "time [s]" + ",x".repeat(1500) + "\n");
        Files.writeString(
                folder.resolve("long.csv"), header + "0,1\n1," + "2".repeat((int) Quota.LINE_BYTES.usual()) + "\n");

        LogOutcome outcome = LogReader.read(folder, new LogSource(name, Map.of(), ',', '.'), TEMPERATURE, RUN, sampled);

        assertEquals(1, outcome.findings().size(), outcome.findings().toString());
        Finding finding = outcome.findings().get(0);
        boolean size = name.equals("wide.csv") || name.equals("long.csv");
        assertEquals(size ? "size-limit" : "file-unreadable", finding.rule());
        assertFalse(finding.message().contains(folder.toString()), finding.message());
        assertFalse(outcome.usable());
    }

    @Test
    void a_quote_that_is_never_closed_does_not_take_the_memory() throws IOException {
        LogOutcome outcome =
                read("time [s],temperature [°C]\n0,\"" + "21.4\n".repeat((int) Quota.LINE_BYTES.usual() / 2) + "\n");
        assertEquals("log.csv:2 size-limit", faults(outcome));
    }
}
