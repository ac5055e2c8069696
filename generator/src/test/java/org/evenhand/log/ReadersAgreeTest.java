package org.evenhand.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Random;
import org.evenhand.model.ColumnMapping;
import org.evenhand.model.LogSource;
import org.evenhand.model.Method;
import org.evenhand.model.Subject;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The fast parser is held against the one that rests on a CSV library: same samples, same findings, to the letter. */
class ReadersAgreeTest {

    private static final Method METHOD = Methods.with(
            Optional.empty(),
            List.of(Methods.mean("temperature", "°C")),
            "temperature",
            "°C",
            "power",
            "W",
            "flag",
            "1");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void both_parsers_give_the_same_samples_and_findings(long seed) throws IOException {
        Random random = new Random(seed);
        for (int round = 0; round < 120; round++) {
            char separator = ",;\t".charAt(random.nextInt(3));
            char decimal = separator != ',' && random.nextBoolean() ? ',' : '.';
            // From quite plain files to wild ones.
            int wildness = random.nextInt(4);
            compare(log(random, separator, decimal, wildness), separator, decimal);
        }
    }

    private void compare(String text, char separator, char decimal) throws IOException {
        Files.writeString(folder.resolve("log.csv"), text);
        Map<String, ColumnMapping> columns =
                Map.of("flag", new ColumnMapping("status", Optional.empty(), OptionalInt.of(3)));
        LogSource source = new LogSource("log.csv", columns, separator, decimal);
        Subject run = Subject.run("s", "r");
        Sampled fast = new Sampled();
        Sampled general = new Sampled();
        LogOutcome fastOutcome = LogReader.read(folder, source, METHOD, run, fast);
        LogOutcome generalOutcome = LogReader.readGenerally(folder, source, METHOD, run, general);
        assertEquals(general.toString(), fast.toString(), text);
        assertEquals(generalOutcome, withoutNumbersFrom(fastOutcome), text);
    }

    /** Only the one of the two knows at once that lines hold nothing but numbers. */
    private static LogOutcome withoutNumbersFrom(LogOutcome of) {
        return new LogOutcome(
                of.usable(), of.columns(), of.samples(), of.sha256(), OptionalLong.empty(), of.findings());
    }

    private static String log(Random random, char separator, char decimal, int wildness) {
        boolean stamps = random.nextInt(4) == 0;
        String end = random.nextBoolean() ? "\n" : "\r\n";
        StringBuilder text = new StringBuilder();
        text.append(String.join(
                        "" + separator,
                        stamps ? "time" : "time [s]",
                        "temperature [°C]",
                        "note",
                        "power [mW]",
                        "status"))
                .append(end);
        int lines = random.nextInt(30);
        for (int i = 0; i < lines; i++) {
            StringBuilder line = new StringBuilder();
            line.append(stamps ? "2026-03-02T09:" + (10 + i) + ":0" + random.nextInt(10) + "Z" : "" + i);
            line.append(separator).append(number(random, decimal, wildness));
            line.append(separator).append(note(random, separator, wildness));
            line.append(separator).append(number(random, decimal, wildness));
            line.append(separator).append(random.nextInt(100));
            if (wildness > 1 && random.nextInt(20) == 0) {
                line.setLength(random.nextInt(line.length() + 1));
            }
            if (wildness > 1 && random.nextInt(20) == 0) {
                line.append(separator).append('7');
            }
            text.append(line).append(i < lines - 1 || random.nextBoolean() ? end : "");
            if (random.nextInt(30) == 0) {
                text.append(end);
            }
        }
        return text.toString();
    }

    private static String number(Random random, char decimal, int wildness) {
        String plain = switch (random.nextInt(9)) {
            case 0 -> "" + random.nextInt(1000);
            case 1 -> "" + random.nextLong();
            case 2 -> Double.toString(random.nextGaussian() * 1e-9);
            case 3 ->
                new java.math.BigDecimal(random.nextDouble() * 100)
                        .setScale(random.nextInt(30), java.math.RoundingMode.HALF_EVEN)
                        .toPlainString();
            case 4 -> "";
            case 5 -> " " + random.nextInt(9) + " ";
            case 6 -> ("" + random.nextLong(10_000_000_000L)).substring(0, 1) + "." + random.nextInt(100_000_000);
            default -> random.nextInt(100) + "." + random.nextInt(1_000_000);
        };
        String written = plain.replace('.', decimal);
        if (wildness < 2 || random.nextInt(12) > 0) {
            return written;
        }
        String[] odd = {
            "NaN",
            "x",
            "1.2.3",
            "5" + decimal,
            decimal + "5",
            "-",
            "+",
            "1e5",
            "1e",
            "1e9999",
            "\"7\"",
            "−3",
            "0x1f",
            "\"a\"\"b\"",
            "°",
            "\u0001",
            "9007199254740993",
            "1,5",
            "1.5",
            "--1",
            "\t3",
            "1 2",
            "\u00a04"
        };
        return odd[random.nextInt(odd.length)];
    }

    private static String note(Random random, char separator, int wildness) {
        if (wildness < 3) {
            return "ok";
        }
        String[] notes = {"", "ok", "héllo", "\"a" + separator + "b\"", "\"two\nlines\"", "a b", "\"\"\"\"", "tab\there"
        };
        String note = notes[random.nextInt(notes.length)];
        return note.indexOf(separator) >= 0 && !note.startsWith("\"") ? "ok" : note;
    }
}
