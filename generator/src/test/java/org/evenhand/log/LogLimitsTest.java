package org.evenhand.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.zip.GZIPOutputStream;
import org.evenhand.model.Limits;
import org.evenhand.model.LogSource;
import org.evenhand.model.Method;
import org.evenhand.model.Quota;
import org.evenhand.model.Subject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A log that is as large as its limits is read, one that is larger by one is not, and the finding names the limit. */
class LogLimitsTest {

    private static final Method METHOD =
            Methods.with(Optional.empty(), List.of(Methods.mean("temperature", "°C")), "temperature", "°C");

    /** 25 bytes of header ("°" takes two) and four lines of seven; three columns; the longest line is the header. */
    private static final String LOG = "time [s],temperature [°C],x\n" + "0,1.5,3\n1,1.5,3\n2,1.5,3\n3,1.5,3\n";

    @TempDir
    private Path folder;

    @Test
    void samples() throws IOException {
        assertHolds(Quota.LOG_ROWS, 4, "plain.csv");
    }

    @Test
    void columns() throws IOException {
        assertHolds(Quota.LOG_COLUMNS, 3, "plain.csv");
    }

    @Test
    void bytesPlainAndDecompressed() throws IOException {
        int bytes = LOG.getBytes(StandardCharsets.UTF_8).length;
        assertEquals(29 + 4 * 8, bytes);
        assertHolds(Quota.LOG_BYTES, bytes, "plain.csv");
        assertHolds(Quota.LOG_BYTES, bytes, "packed.csv.gz");
    }

    @Test
    void bytesOfALine() throws IOException {
        String longLine = LOG + "4,1.5," + "9".repeat(2000) + "\n";
        assertEquals("", found(Limits.DEFAULT.with(Quota.LINE_BYTES, 1 << 18), "long.csv", longLine));
        String longer = LOG + "4,1.5,\"" + "9".repeat(300_000) + "\"\n";
        assertEquals(
                "size-limit line-bytes", found(Limits.DEFAULT.with(Quota.LINE_BYTES, 1 << 18), "long.csv", longer));
        assertEquals("", found(Limits.DEFAULT, "long.csv", longer));
    }

    @Test
    void time() throws IOException {
        AtomicLong seconds = new AtomicLong();
        Limits limits = Limits.DEFAULT.timedBy(() -> seconds.getAndIncrement() * 1_000_000_000L);
        assertEquals("size-limit file-seconds", found(limits.with(Quota.FILE_SECONDS, 1), "slow.csv", LOG.repeat(1)));
        assertEquals("", found(limits, "slow.csv", LOG));
    }

    private void assertHolds(Quota quota, long size, String file) throws IOException {
        assertEquals("", found(Limits.DEFAULT.with(quota, size), file, LOG));
        assertEquals("size-limit " + quota.id(), found(Limits.DEFAULT.with(quota, size - 1), file, LOG));
    }

    private String found(Limits limits, String file, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        if (file.endsWith(".gz")) {
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
                out.write(bytes);
            }
            bytes = packed.toByteArray();
        }
        Files.write(folder.resolve(file), bytes);
        LogSource source = new LogSource(file, Map.of(), ',', '.', limits);
        LogOutcome outcome = LogReader.read(folder, source, METHOD, Subject.run("s", "r"), new Sampled());
        return outcome.findings().stream()
                .map(f -> f.rule() + " " + f.remedy().replaceAll(".*--limit (\\S+)=NUMBER.*", "$1"))
                .findFirst()
                .orElse("");
    }
}
