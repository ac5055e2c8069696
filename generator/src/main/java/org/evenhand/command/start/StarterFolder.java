package org.evenhand.command.start;

import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.evenhand.command.UnusableException;

/** The files of a first results folder. */
final class StarterFolder {

    private static final String STUDY = "first-question";
    private static final String METHOD = "soak";

    private final Answers answers;
    private final Schemas schemas = new Schemas();
    private final SortedMap<String, String> files = new TreeMap<>();

    StarterFolder(Answers answers) {
        this.answers = answers;
        schemas.texts().forEach((name, text) -> files.put(Schemas.FOLDER + "/" + name, text));
        files.put("README.md", StarterTexts.readme(answers.itemId(), STUDY, METHOD));
        files.put("publication.yaml", yaml("publication", 0) + publication());
        files.put("items/" + answers.itemId() + ".yaml", yaml("item", 1) + item());
        StarterTexts.INSTRUMENTS.forEach(
                (id, text) -> files.put("instruments/" + id + ".yaml", yaml("instrument", 1) + text));
        files.put("methods/" + METHOD + ".md", "---\n" + yaml("method", 1) + StarterTexts.METHOD);
        files.put("studies/" + STUDY + "/study.md", "---\n" + yaml("study", 2) + study());
        List<String> ids = answers.levelIds();
        for (int level = 0; level < ids.size(); level++) {
            for (int repeat = 0; repeat < ExampleRuns.REPEATS; repeat++) {
                String run = ids.get(level) + "-" + (repeat + 1);
                files.put("studies/" + STUDY + "/runs/" + run + ".json", run(run, level, repeat));
                files.put("studies/" + STUDY + "/logs/" + run + ".csv", ExampleRuns.log(level, repeat));
            }
        }
    }

    Map<String, String> files() {
        return files;
    }

    /** Writes them; returns how many. */
    int write(Path folder) {
        try {
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path path = folder.resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.write(path, file.getValue().getBytes(StandardCharsets.UTF_8));
            }
            return files.size();
        } catch (IOException e) {
            throw new UnusableException("cannot write to " + folder + "; check that you may, and that there is room");
        }
    }

    private String yaml(String kind, int depth) {
        return schemas.from(kind, depth)
                .map(path -> "# yaml-language-server: $schema=" + path + "\n")
                .orElse("");
    }

    private String publication() {
        return """
                # What the whole site says of itself.
                title: %s
                publisher: %s
                # The address at which the site will stand. Change it before you publish to the public.
                base-url: https://results.example.org/
                licence: CC-BY-4.0
                # The example runs are made up, and every page says so. Set this to false when the last of them is gone.
                invented: true
                """.formatted(quoted(answers.title()), quoted(answers.publisher()));
    }

    private String item() {
        return """
                # What is tested: a kind of thing, and each example of it that you have.
                item: %s
                name: %s
                kind: small computer
                # One name for each physical example. Three examples say more than three runs of one.
                specimens: [A1, A2, A3]
                # How you came by them: bought, lent by the maker, a gift.
                obtained: bought
                # What the maker states. These values are made up: take yours from the data sheet.
                limits: { temperature: 85 °C, supply-voltage: 12.6 V, supply-current: 3 A }
                """.formatted(answers.itemId(), quoted(answers.item()));
    }

    private String study() {
        List<String> ids = answers.levelIds();
        StringBuilder comparisons = new StringBuilder();
        for (int i = 1; i < ids.size(); i++) {
            String sides = "level: " + quoted(answers.levels().get(i)) + ", against: "
                    + quoted(answers.levels().get(0));
            comparisons.append("  ").append(ids.get(i)).append("-rise: ");
            comparisons
                    .append("{ as: difference, measurand: settled-rise, ")
                    .append(sides)
                    .append(" }\n");
        }
        String power = ids.get(1) + "-power: { as: ratio, measurand: mean-power, level: "
                + quoted(answers.levels().get(1)) + ", against: "
                + quoted(answers.levels().get(0))
                + ", same-within: 5 % }";
        return StarterTexts.STUDY.formatted(
                STUDY,
                quoted(answers.question()),
                ids.get(1),
                METHOD,
                answers.factor(),
                answers.levels().stream().map(StarterFolder::quoted).collect(Collectors.joining(", ")),
                ExampleRuns.REPEATS,
                comparisons + "  # The same within 5 % is claimed only if the runs show it.\n  " + power,
                quoted(answers.publisher()),
                ids.get(1));
    }

    private String run(String id, int level, int repeat) {
        String schema = schemas.from("run", 3)
                .map(path -> "  \"$schema\": \"" + path + "\",\n")
                .orElse("");
        return "{\n" + schema
                + """
                  "run": "%s",
                  "method": "%s",
                  "item": "%s", "specimen": "A%d",
                  "settings": { "%s": %s, "firmware": "1.0" },
                  "started": "%s",
                  "length": "30 min",
                  "ambient": "%s ± 0.3 °C",
                  "instruments": { "temperature": "die-sensor", "power": "power-meter", "ambient": "room-probe" },
                  "log": "../logs/%s.csv",
                  "outcome": "completed",
                  "notes": "A made-up example. Replace it by a run of your own."
                }
                """.formatted(
                        id,
                        METHOD,
                        answers.itemId(),
                        repeat + 1,
                        answers.factor(),
                        TextNode.valueOf(answers.levels().get(level)),
                        ExampleRuns.started(level, repeat, answers.levels().size()),
                        ExampleRuns.number(ExampleRuns.ambient(level, repeat), 1),
                        id);
    }

    /** A scalar for YAML: plain where nothing can be mistaken, else in double quotes as in JSON. */
    private static String quoted(String text) {
        boolean plain =
                text.matches("[A-Za-z][A-Za-z0-9 ]*[A-Za-z0-9?]") && !text.matches("(?i)yes|no|on|off|true|false|null");
        return plain ? text : TextNode.valueOf(text).toString();
    }
}
