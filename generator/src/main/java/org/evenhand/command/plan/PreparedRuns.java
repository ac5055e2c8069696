package org.evenhand.command.plan;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.evenhand.model.Method;
import org.evenhand.model.Run;

/**
 * Run files to fill in. They lie in a folder of their own, planned/, where nothing reads them; moved to runs/ with a blank
 * left in them they are an error, so that nobody takes one for real.
 */
final class PreparedRuns {

    private PreparedRuns() {}

    /** The files, by path. */
    static Map<Path, String> files(RunSheet sheet, Earlier earlier, String item) {
        Map<Path, String> files = new TreeMap<>();
        Path study = earlier.root().resolve("studies").resolve(earlier.study().id());
        for (RunSheet.PlannedRun run : sheet.runs()) {
            files.put(study.resolve("planned").resolve(run.id() + ".json"), json(run, sheet, earlier, item));
        }
        return files;
    }

    private static String json(RunSheet.PlannedRun planned, RunSheet sheet, Earlier earlier, String item) {
        Method method = earlier.method();
        ObjectMapper mapper = new ObjectMapper();
        ObjectNode run = mapper.createObjectNode();
        for (String schema : List.of("run.schema.json", "run.json")) {
            if (Files.isRegularFile(earlier.root().resolve(".schema").resolve(schema))) {
                run.put("$schema", "../../../.schema/" + schema);
            }
        }
        run.put("run", planned.id());
        run.put("method", method.id());
        run.put("item", earlier.study().factor().equals("item") ? planned.slot().level() : item);
        boolean bySpecimen = earlier.study().factor().equals("specimen");
        run.put("specimen", bySpecimen ? planned.slot().level() : planned.slot().specimen());
        ObjectNode settings = run.putObject("settings");
        if (!bySpecimen && !earlier.study().factor().equals("item")) {
            settings.put(earlier.study().factor(), planned.slot().level());
        }
        sheet.common().forEach(settings::put);
        run.put("started", "");
        run.put("length", "");
        if (method.needsAmbient()) {
            run.put("ambient", "");
        }
        ObjectNode instruments = run.putObject("instruments");
        List<Run> runs = earlier.study().runs();
        Map<String, String> used = runs.isEmpty()
                ? Map.of()
                : new TreeMap<>(runs.get(runs.size() - 1).instruments());
        method.records().keySet().forEach(c -> instruments.put(c, used.getOrDefault(c, "")));
        if (!method.records().isEmpty()) {
            run.put("log", "../logs/" + planned.id() + ".csv");
        }
        List<String> readings = RunSheet.readings(method);
        if (!readings.isEmpty()) {
            ObjectNode values = run.putObject("readings");
            readings.forEach(r -> values.put(r, ""));
        }
        run.put("rested", "");
        run.put("outcome", "");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        try {
            return mapper.writer(printer).writeValueAsString(run) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
