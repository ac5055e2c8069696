import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The least that any program could do with an archive: sums every number of its logs, on all cores.
 *
 * <p>{@code java Sum.java FOLDER [SITE OUT]}. With SITE and OUT it also writes a file into OUT for each file of SITE, as
 * long as that one, but of nothing. It checks nothing: a row that is broken gives a wrong sum.
 */
public final class Sum {

    private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12};

    private Sum() {}

    public static void main(String[] arguments) throws IOException {
        List<Path> logs = files(Path.of(arguments[0])).stream()
                .filter(file -> file.toString().endsWith(".csv"))
                .toList();
        double[] sums = new double[logs.size()];
        IntStream.range(0, sums.length).parallel().forEach(i -> sums[i] = sum(logs.get(i)));
        double all = 0;
        for (double sum : sums) {
            all += sum;
        }
        System.out.println(all);
        if (arguments.length > 1) {
            write(files(Path.of(arguments[1])), Path.of(arguments[2]));
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(Files::isRegularFile).toList();
        }
    }

    private static double sum(Path log) {
        double sum = 0;
        long mantissa = 0;
        int fraction = -1; // digits behind the point so far; -1 before there is one
        int sign = 1;
        boolean header = true;
        byte[] bytes = new byte[1 << 17];
        try (InputStream in = Files.newInputStream(log)) {
            for (int read = in.read(bytes); read >= 0; read = in.read(bytes)) {
                for (int i = 0; i < read; i++) {
                    byte c = bytes[i];
                    if (header) {
                        header = c != '\n';
                    } else if (c >= '0' && c <= '9') {
                        mantissa = mantissa * 10 + c - '0';
                        fraction += fraction >= 0 ? 1 : 0;
                    } else if (c == '.') {
                        fraction = 0;
                    } else if (c == '-') {
                        sign = -1;
                    } else {
                        sum += sign * (fraction > 0 ? mantissa / POWERS[fraction] : mantissa);
                        mantissa = 0;
                        fraction = -1;
                        sign = 1;
                    }
                }
            }
            return sum;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(List<Path> like, Path out) throws IOException {
        Files.createDirectories(out);
        byte[] bytes = new byte[1 << 17];
        IntStream.range(0, like.size()).parallel().forEach(i -> {
            try (OutputStream to = Files.newOutputStream(out.resolve(String.valueOf(i)))) {
                for (long left = Files.size(like.get(i)); left > 0; left -= bytes.length) {
                    to.write(bytes, 0, (int) Math.min(left, bytes.length));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }
}
