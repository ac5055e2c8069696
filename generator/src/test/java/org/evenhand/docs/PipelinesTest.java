package org.evenhand.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The shell of the pipelines in docs/pipelines is run as a host would run it: step by step in a fresh clone of the results, with
 * a program that is fetched from a repository.
 *
 * <p>What a host of code does beside running shell (fetching, caching, showing) is not tried here. That steps stop at the first
 * failure but for those that say {@code always()}, and that lines of a script share one shell, is from memory.
 */
@DisabledOnOs(OS.WINDOWS)
@Timeout(value = 10, unit = TimeUnit.MINUTES)
class PipelinesTest {

    private static final Path FILES = Path.of("../docs/pipelines");
    private static final Path SOUND = Path.of("src/test/resources/rules/bases/soak");

    @TempDir
    private Path place;

    private Path results;

    /** What a job came to: whether it succeeded, and what its steps printed. */
    private record Job(boolean succeeded, String printed, Path checkout) {

        Path beside(String name) {
            return checkout.resolveSibling(name);
        }
    }

    @BeforeEach
    void repositories() throws Exception {
        Path program = Files.createDirectories(place.resolve("evenhand.git/generator"));
        Path launcher = program.resolve("evenhand");
        Files.writeString(
                launcher,
                "#!/bin/sh\nexec '" + Path.of(System.getProperty("java.home"), "bin", "java")
                        + "' -XX:TieredStopAtLevel=1 -cp '" + System.getProperty("java.class.path")
                        + "' org.evenhand.command.Main \"$@\"\n");
        assertTrue(launcher.toFile().setExecutable(true));
        commit(program.getParent());
        sh(program.getParent(), "git tag v0.1.0");
        results = place.resolve("results");
        copy(SOUND, results);
        commit(results);
        sh(results, "git config receive.denyCurrentBranch ignore");
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
    }

    private void commit(Path repository) throws Exception {
        sh(
                repository,
                "[ -d .git ] || git init -q -b main; git add -A; git -c user.name=x -c user.email=x@invalid commit -q -m change");
    }

    /** Runs a script as hosts do: it stops at the first line that fails. */
    private Job sh(Path folder, String script) throws Exception {
        Path printed = Files.createTempFile(place, "printed", ".txt");
        ProcessBuilder builder = new ProcessBuilder("bash", "--noprofile", "--norc", "-eo", "pipefail", "-c", script)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(printed.toFile());
        builder.environment()
                .putAll(Map.of(
                        "EVENHAND_REPOSITORY",
                                place.resolve("evenhand.git").toUri().toString(),
                        "EVENHAND_VERSION", "v0.1.0",
                        "GIT_CONFIG_GLOBAL", "/dev/null",
                        "GIT_CONFIG_NOSYSTEM", "1",
                        "HOME", place.toString()));
        int status = builder.start().waitFor();
        return new Job(status == 0, Files.readString(printed), folder);
    }

    private Path clone(String name) throws Exception {
        Path around = Files.createDirectories(place.resolve(name));
        Job cloned = sh(around, "git clone -q '" + results.toUri() + "' results");
        assertTrue(cloned.succeeded, cloned.printed);
        return around.resolve("results");
    }

    /** The steps of a job that are shell; after a failure, only those that say so. */
    private Job workflow(String job, String name) throws Exception {
        JsonNode steps = yaml("workflow.yml").at("/jobs/" + job + "/steps");
        assertTrue(steps.size() > 3);
        Path checkout = clone(name);
        StringBuilder printed = new StringBuilder();
        boolean succeeded = true;
        for (JsonNode step : steps) {
            boolean runs =
                    step.has("run") && (succeeded || step.path("if").asText().equals("always()"));
            if (runs) {
                Job done = sh(checkout, step.path("run").asText());
                succeeded &= done.succeeded;
                printed.append(done.printed);
            }
        }
        return new Job(succeeded, printed.toString(), checkout);
    }

    private Job script(String job, Path checkout) throws Exception {
        JsonNode file = yaml("gitlab-ci.yml");
        List<String> lines = new ArrayList<>();
        file.path(file.path(job).path("extends").asText()).path("before_script").forEach(l -> lines.add(l.asText()));
        file.path(job).path("script").forEach(l -> lines.add(l.asText()));
        assertTrue(lines.size() > 4);
        return sh(checkout, String.join("\n", lines));
    }

    private static JsonNode yaml(String file) throws IOException {
        return new YAMLMapper().readTree(FILES.resolve(file).toFile());
    }

    private void spoil() throws Exception {
        Path study = results.resolve("studies/plate/study.md");
        Files.writeString(study, Files.readString(study).replace("answered: 2026-03-20", "answered: 2020-03-20"));
        commit(results);
    }

    private void addRevision() throws Exception {
        Path study = results.resolve("studies/plate/study.md");
        String revision = "status: final\nrevisions: [{ on: 2026-05-02, what: A word, why: It was wrong }]";
        Files.writeString(study, Files.readString(study).replace("status: final", revision));
        commit(results);
    }

    @Test
    void aSoundContributionPassesAndItsSiteIsKept() throws Exception {
        Job job = workflow("check", "contribution");
        assertTrue(job.succeeded, job.printed);
        assertTrue(job.printed.contains("0 things differ") && job.printed.contains("the folder gives the same site"));
        assertTrue(Files.exists(job.beside("site").resolve("answers/plate/index.html")));
        JsonNode sarif = new YAMLMapper().readTree(job.beside("findings.sarif").toFile());
        assertEquals("2.1.0", sarif.path("version").asText());
    }

    @Test
    void aContributionThatWithholdsAnAnswerFailsAndIsToldAndItsSiteIsKeptAllTheSame() throws Exception {
        spoil();
        Job job = workflow("check", "contribution");
        assertFalse(job.succeeded);
        assertTrue(job.printed.contains("[dates-out-of-order]"), job.printed);
        assertTrue(Files.readString(job.beside("findings.sarif")).contains("dates-out-of-order"));
        assertTrue(Files.exists(job.beside("site").resolve("index.html")));
    }

    @Test
    void whatIsTakenInIsPublishedOverTheFormerSite() throws Exception {
        Job first = workflow("publish", "first");
        assertTrue(first.succeeded, first.printed);
        addRevision();
        Job second = workflow("publish", "second");
        assertTrue(second.succeeded, second.printed);
        Job shown = sh(
                results, "git log --oneline site | wc -l; git show site:answers/plate/index.html; git status --short");
        assertTrue(shown.printed.strip().startsWith("2") && shown.printed.contains("revision.1"), shown.printed);
        Job whole = sh(
                results,
                "mkdir ../got; git archive site | tar -x -C ../got; cd ../got; sha256sum -c --quiet manifest-sha256.txt");
        assertTrue(whole.succeeded, whole.printed);
    }

    @Test
    void theOtherSyntaxChecksAndPublishesToo() throws Exception {
        Job sound = script("check", clone("contribution"));
        assertTrue(sound.succeeded, sound.printed);
        assertTrue(Files.exists(sound.checkout.resolve("site/answers/plate/index.html")));
        assertTrue(Files.exists(sound.checkout.resolve("findings.sarif")));
        Job first = script("pages", clone("first"));
        assertTrue(first.succeeded, first.printed);
        addRevision();
        Path checkout = clone("second");
        copy(first.checkout.resolve("public"), checkout.resolve("public")); // as the host's cache brings it back
        Job second = script("pages", checkout);
        assertTrue(second.succeeded, second.printed);
        assertTrue(Files.readString(checkout.resolve("public/answers/plate/index.html"))
                .contains("revision.1"));
    }

    @Test
    void aContributionHasNoRightButToReadAndToShowFindings() throws IOException {
        JsonNode workflow = yaml("workflow.yml");
        assertEquals("{\"contents\":\"read\"}", workflow.path("permissions").toString());
        assertEquals(
                "{\"contents\":\"read\",\"security-events\":\"write\"}",
                workflow.at("/jobs/check/permissions").toString());
        // That event would give a stranger's change the rights of the repository.
        assertFalse(Files.readString(FILES.resolve("workflow.yml")).contains("pull_request_target"));
        assertEquals(
                "github.event_name == 'push'", workflow.at("/jobs/publish/if").asText());
    }
}
