package org.evenhand.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples that the help of each command shows do what they say; and a name that is nearly right is understood. */
class HelpExamplesTest {

    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final Pattern OF_A_FOLDER =
            Pattern.compile("my-results|sample-results|site-out|[\\w-]+\\.(csv|md|html|zip)");

    @TempDir
    private Path place;

    static Stream<String> examples() {
        return CommandTexts.commands().stream().flatMap(command -> CommandTexts.examples(command).stream());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void anExampleRuns(String example) throws Exception {
        assertTrue(example.startsWith("evenhand "), example);
        String[] words = words(example.substring("evenhand ".length()));
        prepare(example);
        if (words[0].equals("preview")) {
            servesUntilItIsEnded(words);
            return;
        }
        Called called = Called.with(words).ended(0);
        assertTrue(called.out().length() + called.err().length() > 20, "it says something");
    }

    /** What a call needs is there: a folder, a site that was made of it, a log. */
    private void prepare(String example) throws IOException {
        if (!example.startsWith("evenhand start")) {
            Given.soundFolderIn(place.resolve("my-results"));
        }
        Given sample = Given.soundFolderIn(place.resolve("sample-results"));
        if (!example.startsWith("evenhand publish") && example.contains("site-out")) {
            Called.with(
                            "publish",
                            sample.root().toString(),
                            "--to",
                            place.resolve("site-out").toString())
                    .ended(0);
        }
        Path log = sample.root().resolve("studies/plate/logs/plate-1.csv");
        Files.copy(log, place.resolve("plate-A1.csv"));
    }

    private void servesUntilItIsEnded(String[] words) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);
        FutureTask<Integer> call = new FutureTask<>(() -> Main.run(to, to, words));
        Thread thread = new Thread(call);
        thread.start();
        while (!out.toString(StandardCharsets.UTF_8).contains("read in") && thread.isAlive()) {
            Thread.sleep(20);
        }
        String said = out.toString(StandardCharsets.UTF_8);
        Browsing browser = new Browsing(said.lines().findFirst().orElse(""));
        assertEquals(200, browser.get("/").statusCode(), said);
        thread.interrupt();
        assertEquals(0, call.get(20, TimeUnit.SECONDS));
    }

    private String[] words(String call) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(call);
        while (word.find()) {
            String text = word.group(1) != null ? word.group(1) : word.group(2);
            words.add(OF_A_FOLDER.matcher(text).matches() ? place.resolve(text).toString() : text);
        }
        return words.toArray(String[]::new);
    }

    @ParameterizedTest
    @ValueSource(strings = {"publsh", "previw", "chek", "take-inn", "audti", "pak", "explian", "completoin", "strat"})
    void aCommandThatIsNearlyRightIsNamed(String wrong) {
        Called called = Called.with(wrong).ended(2);
        List<String> near =
                List.of("publish", "preview", "check", "take-in", "audit", "pack", "explain", "completion", "start");
        assertTrue(
                near.stream().anyMatch(n -> called.err().lines().skip(1).anyMatch(l -> l.contains(n))), called.err());
        assertTrue(called.err().lines().count() <= 6, called.err());
    }

    @ParameterizedTest
    @CsvSource({
        "check x --formt json, --format",
        "check x --formt=json, --format",
        "publish x --too y, --to",
        "preview x --prot 1, --port",
        "pack x --sites y --to z.zip, --site"
    })
    void anOptionThatIsNearlyRightIsNamed(String call, String meant) {
        Called.with(call.split(" ")).ended(2).says("did you mean “" + meant + "”?");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plan --from my-results --study plat --runs 5",
                "take-in plate-A1.csv --to my-results --study plaet"
            })
    void aStudyThatIsNearlyRightIsNamed(String call) throws IOException {
        prepare(call);
        Called.with(words(call)).ended(2).says("did you mean “plate”?");
    }

    @ParameterizedTest
    @ValueSource(strings = {"explain ambient-spred", "check my-results --only ambient-spraed"})
    void aRuleThatIsNearlyRightIsNamed(String call) throws IOException {
        prepare(call);
        Called.with(words(call)).ended(2).says("did you mean “ambient-spread”?");
    }
}
