package org.evenhand.log;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.evenhand.model.ColumnMapping;
import org.evenhand.model.LogSource;
import org.evenhand.model.Method;
import org.evenhand.model.Subject;

/**
 * Any bytes as a log. The first byte chooses separator and decimal marker, and whether a good header is put in front.
 *
 * <p>Both parsers give the same samples and findings; every sample is finite and none earlier than the one before.
 */
public final class LogFuzz {

    private static final Method METHOD = Methods.with(
            Optional.empty(), List.of(Methods.mean("temperature", "°C")), "temperature", "°C", "flag", "1");
    private static final Map<String, ColumnMapping> COLUMNS =
            Map.of("flag", new ColumnMapping("status", Optional.empty(), OptionalInt.of(3)));
    private static final Subject RUN = Subject.run("s", "r");
    private static final Path FOLDER = folder();

    private LogFuzz() {}

    public static void fuzzerTestOneInput(byte[] data) {
        if (data.length == 0) {
            return;
        }
        char separator = ",;\t|".charAt(data[0] & 3);
        char decimal = (data[0] & 4) != 0 && separator != ',' ? ',' : '.';
        byte[] header = (data[0] & 8) == 0
                ? new byte[0]
                : ((data[0] & 16) == 0 ? "time [s]" : "time")
                        .concat(separator + "temperature [\u00b0C]" + separator + "status\n")
                        .getBytes(java.nio.charset.StandardCharsets.UTF_8);
        byte[] log = Arrays.copyOf(header, header.length + data.length - 1);
        System.arraycopy(data, 1, log, header.length, data.length - 1);
        write(log);
        LogSource source = new LogSource("log.csv", COLUMNS, separator, decimal);
        Sampled fast = new Sampled();
        Sampled general = new Sampled();
        LogOutcome fastOutcome = LogReader.read(FOLDER, source, METHOD, RUN, fast);
        LogOutcome generalOutcome = LogReader.readGenerally(FOLDER, source, METHOD, RUN, general);
        if (!told(fastOutcome).equals(told(generalOutcome)) || !fast.toString().equals(general.toString())) {
            throw new IllegalStateException("the parsers disagree: " + fastOutcome + "; " + generalOutcome);
        }
        double before = Double.NEGATIVE_INFINITY;
        for (double timeS : fast.times) {
            if (!(timeS >= before) || Double.isInfinite(timeS)) {
                throw new IllegalStateException(timeS + " s comes after " + before + " s");
            }
            before = timeS;
        }
        if (fast.rows.stream().flatMapToDouble(Arrays::stream).anyMatch(Double::isInfinite)) {
            throw new IllegalStateException("an infinite value");
        }
    }

    /** All but where the numbers begin, which only the fast one tells. */
    private static String told(LogOutcome outcome) {
        return outcome.usable() + " " + outcome.columns() + " " + outcome.samples() + " " + outcome.sha256() + " "
                + outcome.findings();
    }

    private static void write(byte[] bytes) {
        try {
            Files.write(FOLDER.resolve("log.csv"), bytes);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory("evenhand-fuzz");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
