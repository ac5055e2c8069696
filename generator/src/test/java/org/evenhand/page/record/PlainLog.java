package org.evenhand.page.record;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPInputStream;

/** A log of the sample, read by nothing but the splitting of lines. */
record PlainLog(String study, String run, List<String> heads, List<double[]> rows) {

    /** The names that the logger of the cable study gives its columns, and how much of the method's unit one of its own is. */
    private static final Map<String, String> FOREIGN =
            Map.of("temperature", "t_soc", "clock", "f_cpu", "power", "p_in", "voltage", "u_in");

    private static final Map<String, Double> FACTORS = Map.of("t_soc", 0.001);

    static PlainLog of(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        boolean packed = file.toString().endsWith(".gz");
        try (InputStream in = new ByteArrayInputStream(bytes);
                InputStream plain = packed ? new GZIPInputStream(in) : in) {
            List<String> lines = new String(plain.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            String separator = lines.get(0).contains(";") ? ";" : ",";
            List<String> heads = new ArrayList<>();
            for (String head : lines.get(0).split(separator)) {
                heads.add(head.replaceAll(" \\[.*", ""));
            }
            List<double[]> rows = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = line.split(separator);
                double[] row = new double[cells.length];
                for (int i = 0; i < cells.length; i++) {
                    row[i] = Double.parseDouble(cells[i].replace(',', '.'));
                }
                rows.add(row);
            }
            String study = file.getParent().getParent().getFileName().toString();
            String run = file.getFileName().toString().replaceAll("\\.csv(\\.gz)?$", "");
            return new PlainLog(study, run, heads, rows);
        }
    }

    double[] timesS() {
        return column("time");
    }

    /** In the method's unit. */
    double[] column(String name) {
        if (name.equals("undervoltage")) {
            return rows.stream()
                    .mapToDouble(row -> ((int) row[heads.indexOf("status")] >> 2) & 1)
                    .toArray();
        }
        String head = heads.contains(name) ? name : FOREIGN.get(name);
        double factor = FACTORS.getOrDefault(head, 1.0);
        return rows.stream()
                .mapToDouble(row -> row[heads.indexOf(head)] * factor)
                .toArray();
    }
}
