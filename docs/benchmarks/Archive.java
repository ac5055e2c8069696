import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Makes a results folder as large as wanted: the same arguments give the same bytes.
 *
 * <p>{@code java Archive.java FOLDER STUDIES RUNS ROWS COLUMNS [FIRST]}: so many studies, each with so many runs (an
 * even number, half at each of two levels) of so many rows and columns (2 to 8, time among them). With FIRST, nothing
 * but that study and the following are written, so that an archive can be made to grow. All of it is invented.
 */
public final class Archive {

    private static final String[] COLUMNS = {"temperature", "clock", "power", "ambient", "voltage", "current", "fan"};
    private static final String[] UNITS = {"°C", "MHz", "W", "°C", "V", "A", "rpm"};
    private static final double LENGTH_S = 2700;

    private final Path folder;
    private final int runs;
    private final int rows;
    private final int columns;

    private Archive(Path folder, int runs, int rows, int columns) {
        this.folder = folder;
        this.runs = runs;
        this.rows = rows;
        this.columns = columns - 1;
    }

    public static void main(String[] arguments) throws IOException {
        int studies = Integer.parseInt(arguments[1]);
        int first = arguments.length > 5 ? Integer.parseInt(arguments[5]) : 0;
        Archive archive = new Archive(
                Path.of(arguments[0]),
                Integer.parseInt(arguments[2]),
                Integer.parseInt(arguments[3]),
                Integer.parseInt(arguments[4]));
        archive.common();
        IntStream.range(first, studies).parallel().forEach(archive::study);
    }

    private void common() throws IOException {
        text("publication.yaml", """
                title: Trials of a bench
                publisher: Fernhollow Community Radio
                base-url: https://results.example.org/bench/
                licence: CC-BY-4.0
                invented: true
                """);
        text("items/quillet-3.yaml", """
                item: quillet-3
                name: Quillet 3 encoder
                kind: small computer
                specimens: [A1, A2, A3, A4, A5]
                obtained: bought
                limits: { temperature: 85 °C, clock: 1800 MHz }
                """);
        String[] accuracies = {"1 K", "1 MHz", "0.5 % of reading + 10 mW", "0.3 K", "20 mV", "10 mA", "20 rpm"};
        String[] resolutions = {"0.1 K", "1 MHz", "1 mW", "0.1 K", "1 mV", "1 mA", "10 rpm"};
        StringBuilder records = new StringBuilder();
        for (int i = 0; i < columns; i++) {
            String boundary = COLUMNS[i].equals("power") ? "boundary: dc-input\n" : "";
            text("instruments/" + COLUMNS[i] + "-meter.yaml", """
                    instrument: %s-meter
                    reads: %s
                    %sresolution: %s
                    accuracy: %s
                    calibrated: 2026-01-15
                    calibration-valid: 12 months
                    """.formatted(COLUMNS[i], COLUMNS[i], boundary, resolutions[i], accuracies[i]));
            records.append(i == 0 ? "" : ", ").append(COLUMNS[i]).append(": ").append(UNITS[i]);
        }
        text("methods/soak.md", """
                ---
                method: soak
                version: 1
                title: Thermal soak
                run-length: 45 min
                hazards: [hot-surface]
                records: { %s }
                cooling: fixed
                measurands:
                  settled-temperature:
                    title: Settled temperature
                    reduce: settled
                    column: temperature
                    window: 10 min
                    settled-below: 1 K
                    unit: °C
                    better: lower
                  peak: { title: Highest temperature, reduce: maximum, column: temperature, unit: °C, better: lower }
                %s---

                The item rests until it is within 1 K of ambient, then works at full load for the whole run.
                """.formatted(records, columns < 3 ? "" : """
                  mean-power: { title: Mean power, reduce: mean, column: power, unit: W, better: lower }
                  energy: { title: Energy, reduce: integral, column: power, unit: mWh, better: lower }
                  time-to-throttle:
                    title: Time until the clock first drops
                    reduce: time-until
                    column: clock
                    below: { of: settings/clock, times: 0.95 }
                    for: 2 s
                    unit: min
                    better: higher
                """.indent(2).replaceAll("(?m)^  ", "")));
    }

    private void study(int number) {
        String id = "plate-" + number;
        String folderOfStudy = "studies/" + id + "/";
        try {
            text(folderOfStudy + "study.md", """
                    ---
                    study: %s
                    question: Does plate number %d keep it cooler?
                    short-answer: Yes.
                    method: soak
                    factor: cooling
                    levels: [none, plate]
                    planned-runs: %d
                    measurands: [settled-temperature, peak]
                    comparisons:
                      cooler: { as: difference, measurand: settled-temperature, level: plate, against: none }
                    answered: 2026-12-20
                    status: final
                    authors: [R. Ambrose]
                    ---

                    The plate was tried against none. It is [](evidence:cooler).
                    """.formatted(id, number, runs / 2));
            Files.createDirectories(folder.resolve(folderOfStudy + "logs"));
            for (int run = 0; run < runs; run++) {
                run(folderOfStudy, number, run);
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private void run(String folderOfStudy, int study, int number) throws IOException {
        boolean plate = (number + number / 2) % 2 == 1; // none, plate, plate, none, ...
        String id = (plate ? "plate-" : "none-") + (number / 2 + 1);
        SplittableRandom random = new SplittableRandom(1_000_003L * study + number);
        double ambient = 21.4 + 0.1 * bell(random);
        StringBuilder instruments = new StringBuilder();
        for (int i = 0; i < columns; i++) {
            instruments.append(i == 0 ? "" : ", ").append('"').append(COLUMNS[i]).append("\": \"");
            instruments.append(COLUMNS[i]).append("-meter\"");
        }
        int day = number / 8;
        text(folderOfStudy + "runs/" + id + ".json", """
                {
                  "run": "%s",
                  "method": "soak",
                  "item": "quillet-3",
                  "specimen": "A%d",
                  "settings": { "cooling": "%s", "clock": "1800 MHz", "firmware": "2026-02-11" },
                  "started": "2026-%02d-%02dT%02d:14:00Z",
                  "length": "45 min",
                  "ambient": "%.1f ± 0.5 °C",
                  "instruments": { %s },
                  "log": "../logs/%s.csv"
                }
                """.formatted(
                        id,
                        number / 2 % 5 + 1,
                        plate ? "plate" : "none",
                        2 + day / 28,
                        1 + day % 28,
                        6 + number % 8 * 2,
                        ambient,
                        instruments,
                        id));
        double rise = (plate ? 31 : 46) + 0.3 * bell(random);
        try (OutputStream out = Files.newOutputStream(folder.resolve(folderOfStudy + "logs/" + id + ".csv"))) {
            log(out, random, ambient, rise);
        }
    }

    private void log(OutputStream out, SplittableRandom random, double ambient, double rise) throws IOException {
        Line line = new Line(out);
        line.text("time [s]");
        for (int i = 0; i < columns; i++) {
            line.text("," + COLUMNS[i] + " [" + UNITS[i] + "]");
        }
        line.end();
        double stepS = LENGTH_S / (rows - 1);
        double left = rise; // what is left to rise, falling off with a time constant of 380 s
        double fall = Math.exp(-stepS / 380);
        for (int row = 0; row < rows; row++) {
            double risen = rise - left;
            double power = 6.2 + 0.12 * risen / 46 + 0.02 * bell(random);
            double voltage = 12.1 + 0.01 * bell(random);
            double[] values = {
                ambient + 0.5 + risen + 0.1 * bell(random),
                1800 - random.nextInt(3),
                power,
                ambient + 0.02 * bell(random),
                voltage,
                power / voltage,
                1200 + 10 * random.nextInt(20)
            };
            int[] decimals = {1, 0, 3, 2, 3, 3, 0};
            line.number(row * stepS, 3);
            for (int i = 0; i < columns; i++) {
                line.separator();
                line.number(values[i], decimals[i]);
            }
            line.end();
            left *= fall;
        }
        line.flush();
    }

    /** About normal, with a standard deviation of 1. */
    private static double bell(SplittableRandom random) {
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            sum += random.nextDouble() - 0.5;
        }
        return sum * Math.sqrt(3);
    }

    private void text(String file, String text) throws IOException {
        Path path = folder.resolve(file);
        Files.createDirectories(path.getParent());
        Files.writeString(path, text);
    }

    /** Bytes on their way out; {@code Formatter} would take most of the time. */
    private static final class Line {

        private final OutputStream out;
        private final byte[] bytes = new byte[1 << 16];
        private int filled;

        Line(OutputStream out) {
            this.out = out;
        }

        void text(String text) {
            byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
            System.arraycopy(utf8, 0, bytes, filled, utf8.length);
            filled += utf8.length;
        }

        void separator() {
            bytes[filled++] = ',';
        }

        void end() throws IOException {
            bytes[filled++] = '\n';
            if (filled > bytes.length - 1024) {
                flush();
            }
        }

        void flush() throws IOException {
            out.write(bytes, 0, filled);
            filled = 0;
        }

        /** A number that is not negative. */
        void number(double value, int decimals) {
            long scale = 1;
            for (int i = 0; i < decimals; i++) {
                scale *= 10;
            }
            long scaled = Math.round(value * scale);
            digits(scaled / scale, 1);
            if (decimals > 0) {
                bytes[filled++] = '.';
                digits(scaled % scale, decimals);
            }
        }

        private void digits(long number, int least) {
            int length = least;
            for (long rest = number; rest >= Math.round(Math.pow(10, length)); ) {
                length++;
            }
            for (int i = length - 1; i >= 0; i--) {
                bytes[filled + i] = (byte) ('0' + number % 10);
                number /= 10;
            }
            filled += length;
        }
    }
}
