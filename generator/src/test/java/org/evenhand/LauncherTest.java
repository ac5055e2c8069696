package org.evenhand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The launcher in a repository of its own whose name holds spaces, with a Maven and a Java that only note how they were
 * called. Expected behaviour of links, exit status and streams: POSIX.1-2017, Shell and Utilities.
 */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {

    /** The tools that the launcher may use beside a shell's own; nothing else is on its path. */
    private static final List<String> TOOLS = List.of(
            "cat", "dirname", "find", "head", "mkdir", "mv", "readlink", "rm", "rmdir", "sed", "sleep", "touch");

    private static final String MVN = """
            #!/bin/sh
            echo "$PWD: $*" >>"$CALLS"
            echo "Maven says something"
            [ -z "${MVN_TAKES:-}" ] || sleep "$MVN_TAKES"
            [ -z "${MVN_FAILS:-}" ] || exit 1
            mkdir -p generator/target && echo "a jar" >generator/target/evenhand.jar
            """;

    private static final String JAVA = """
            #!/bin/sh
            if [ "$1" = -version ]; then
              echo "openjdk version \\"${STUB_VERSION:-17.0.1}\\" 2021-10-19" >&2
              exit 0
            fi
            echo "in $PWD"
            for argument; do echo "<$argument>"; done
            exit "${JAVA_STATUS:-0}"
            """;

    @TempDir
    Path temporary;

    private Path home;
    private Path launcher;
    private Path jar;
    private Path tools;

    private record Ended(int status, String out, String err) {}

    @BeforeEach
    void layOutARepository() throws IOException {
        temporary = temporary.toRealPath();
        home = temporary.resolve("a house with  spaces");
        launcher = home.resolve("generator/evenhand");
        jar = home.resolve("generator/target/evenhand.jar");
        tools = temporary.resolve("bin");
        for (String folder : List.of("generator/src/main/java", "templates", "sample-results/studies/one")) {
            Files.createDirectories(home.resolve(folder));
        }
        for (String file : List.of(
                "pom.xml",
                "generator/pom.xml",
                "generator/src/main/java/A.java",
                "templates/page.ftlh",
                "sample-results/studies/one/study.md")) {
            Files.writeString(home.resolve(file), "as it was");
        }
        Files.copy(root().resolve("generator/evenhand"), launcher);
        makeRunnable(launcher);
        Files.createDirectory(tools);
        for (String tool : TOOLS) {
            putTool(tool, "#!/bin/sh\nexec " + find(tool) + " \"$@\"\n");
        }
        putTool("mvn", MVN);
        putTool("java", JAVA);
        age(home, Duration.ofHours(2));
    }

    @Test
    void theFirstStartBuildsAndTheNextDoesNot() throws Exception {
        run(List.of("check", "my results"), Map.of());
        run(List.of("check", "my results"), Map.of());
        assertEquals(List.of(home + ": -B -ntp -q -DskipTests -Dspotless.check.skip=true package"), builds());
    }

    @Test
    void theProgramRunsInTheCallersFolderWithItsArgumentsUnchanged() throws Exception {
        Ended ended = run(List.of("check", "my  results", "*", ""), Map.of());
        assertEquals("in " + temporary + "\n<-jar>\n<" + jar + ">\n<check>\n<my  results>\n<*>\n<>\n", ended.out());
    }

    @Test
    void standardOutputHoldsNothingButTheProgramsEvenWhenItIsBuiltFirst() throws Exception {
        Ended ended = run(List.of("check"), Map.of());
        assertFalse(ended.out().contains("Maven"), ended.out());
        assertTrue(ended.err().contains("building the program"), ended.err());
        assertTrue(ended.err().contains("Maven says something"), ended.err());
        assertEquals("", run(List.of("check"), Map.of()).err());
    }

    @Test
    void theExitStatusIsTheProgramsOwn() throws Exception {
        for (int status : new int[] {0, 1, 2, 77}) {
            assertEquals(
                    status,
                    run(List.of("check"), Map.of("JAVA_STATUS", Integer.toString(status)))
                            .status());
        }
    }

    @Test
    void aChainOfLinksLeadsHomeThroughRelativeOnesAndLinkedFoldersToo() throws Exception {
        Path elsewhere = Files.createDirectories(temporary.resolve("else where"));
        Path absolute = Files.createSymbolicLink(elsewhere.resolve("absolute"), launcher);
        Path relative = Files.createSymbolicLink(elsewhere.resolve("relative"), Path.of("absolute"));
        Path folder = Files.createSymbolicLink(elsewhere.resolve("linked folder"), home.resolve("generator"));
        for (Path start : List.of(absolute, relative, folder.resolve("evenhand"))) {
            Ended ended = start(start, elsewhere, List.of("check"), Map.of());
            assertTrue(ended.out().contains("<" + jar + ">"), ended.toString());
        }
        assertEquals(1, builds().size());
    }

    @Test
    void aNewerSourceOfAnyKindBringsANewBuildAndATestDoesNot() throws Exception {
        run(List.of("check"), Map.of());
        int expected = 1;
        for (String source : List.of(
                "pom.xml",
                "generator/pom.xml",
                "generator/src/main/java/A.java",
                "templates/page.ftlh",
                "sample-results/studies/one/study.md")) {
            age(home, Duration.ofHours(1));
            touch(home.resolve(source), Duration.ofMinutes(30));
            run(List.of("check"), Map.of());
            expected++;
            assertEquals(expected, builds().size(), source);
        }
        age(home, Duration.ofHours(1));
        Files.createDirectories(home.resolve("generator/src/test"));
        Files.writeString(home.resolve("generator/src/test/T.java"), "a test");
        run(List.of("check"), Map.of());
        assertEquals(expected, builds().size());
    }

    @Test
    void aSourceTakenAwayBringsANewBuild() throws Exception {
        run(List.of("check"), Map.of());
        age(home, Duration.ofHours(1));
        Files.delete(home.resolve("templates/page.ftlh"));
        run(List.of("check"), Map.of());
        assertEquals(2, builds().size());
    }

    @Test
    void aSourceSavedWhileMavenWorksIsBuiltNextTime() throws Exception {
        Files.createDirectories(jar.getParent());
        putTool("mvn", MVN + "sleep 1\ntouch templates/page.ftlh\nsleep 1\ntouch generator/target/evenhand.jar\n");
        run(List.of("check"), Map.of());
        putTool("mvn", MVN);
        run(List.of("check"), Map.of());
        assertEquals(2, builds().size());
    }

    @Test
    void aFailedBuildSaysSoRunsNothingAndLeavesTheOldJar() throws Exception {
        run(List.of("check"), Map.of());
        age(home, Duration.ofHours(1));
        Files.writeString(jar, "the old jar");
        touch(jar, Duration.ofHours(1));
        touch(home.resolve("pom.xml"), Duration.ofMinutes(30));
        Ended ended = run(List.of("check"), Map.of("MVN_FAILS", "yes"));
        assertEquals(2, ended.status());
        assertEquals("", ended.out());
        assertTrue(ended.err().contains("the build failed"), ended.err());
        assertEquals("the old jar", Files.readString(jar));
        assertEquals(List.of("evenhand.jar"), namesIn(jar.getParent()));
    }

    @Test
    void twoStartedAtOnceBuildOnceAndBothRun() throws Exception {
        List<Process> both = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            both.add(begin(launcher, temporary, List.of("check"), Map.of("MVN_TAKES", "2"), "both-" + i));
        }
        for (int i = 0; i < 2; i++) {
            Ended ended = await(both.get(i), "both-" + i);
            assertEquals(0, ended.status(), ended.toString());
            assertTrue(ended.out().contains("<check>"), ended.toString());
        }
        assertEquals(1, builds().size());
        assertEquals(List.of("evenhand.jar"), namesIn(jar.getParent()));
    }

    @Test
    void aLockWhoseOwnerIsGoneIsBroken() throws Exception {
        Process gone = new ProcessBuilder("/bin/sh", "-c", "exit 0").start();
        gone.waitFor();
        Path lock = Files.createDirectories(jar.resolveSibling("evenhand.lock"));
        Files.writeString(lock.resolve("owner"), gone.pid() + "\n");
        assertEquals(0, run(List.of("check"), Map.of()).status());
        assertEquals(1, builds().size());
        assertEquals(List.of("evenhand.jar"), namesIn(jar.getParent()));
    }

    @Test
    void unpackedFromAReleaseItRunsTheJarThereAndNeedsNoMaven() throws Exception {
        Path release = temporary.resolve("a release/evenhand-1.2.3");
        Path unpacked = release.resolve("bin/evenhand");
        Files.createDirectories(unpacked.getParent());
        Files.copy(launcher, unpacked);
        makeRunnable(unpacked);
        Path packed = Files.createDirectories(release.resolve("lib")).resolve("evenhand.jar");
        Files.writeString(packed, "a jar");
        Files.delete(tools.resolve("mvn"));
        Ended ended = start(unpacked, temporary, List.of("check", "my results"), Map.of());
        assertEquals("in " + temporary + "\n<-jar>\n<" + packed + ">\n<check>\n<my results>\n", ended.out());
        assertEquals("", ended.err());
        assertEquals(List.of("bin", "lib"), namesIn(release), "nothing was made");
    }

    @Test
    void aMissingOrOldJavaAndAMissingMavenAreNamed() throws Exception {
        Ended old = run(List.of("check"), Map.of("STUB_VERSION", "1.8.0_292"));
        assertEquals(2, old.status());
        assertTrue(old.err().contains("Java 17 or newer is needed"), old.err());
        assertEquals(0, run(List.of("check"), Map.of("STUB_VERSION", "25")).status());

        Files.delete(jar);
        Files.delete(tools.resolve("mvn"));
        Ended withoutMaven = run(List.of("check"), Map.of());
        assertEquals(2, withoutMaven.status());
        assertTrue(withoutMaven.err().contains("Maven is missing"), withoutMaven.err());

        Files.delete(tools.resolve("java"));
        Ended withoutJava = run(List.of("check"), Map.of());
        assertEquals(2, withoutJava.status());
        assertTrue(withoutJava.err().contains("Java is missing"), withoutJava.err());
        assertEquals("", old.out() + withoutMaven.out() + withoutJava.out());
    }

    @Test
    void theVersionIsReadFromTheReleaseFileOfTheJdkThatJavaLinksTo() throws Exception {
        Path jdk = Files.createDirectories(temporary.resolve("a jdk/bin")).getParent();
        Files.move(tools.resolve("java"), jdk.resolve("bin/java"));
        Files.createSymbolicLink(tools.resolve("java"), jdk.resolve("bin/java"));
        Files.writeString(jdk.resolve("release"), "IMPLEMENTOR=\"Nobody\"\nJAVA_VERSION=\"11.0.2\"\n");
        assertTrue(run(List.of("check"), Map.of()).err().contains("is version 11.0.2"));
        Files.writeString(jdk.resolve("release"), "JAVA_VERSION=\"17.0.15\"\n");
        assertEquals(0, run(List.of("check"), Map.of()).status());
    }

    @Test
    void onlyShortCommandsGetTheQuickCompilerAndTheCallersOptionsComeAfter() throws Exception {
        String quick = "<-Djava.awt.headless=true>\n<-XX:TieredStopAtLevel=1>\n";
        for (List<String> arguments : List.of(
                List.of("--version"), List.of("--help"), List.of("explain", "not-settled"), List.<String>of())) {
            assertTrue(run(arguments, Map.of()).out().contains(quick), arguments.toString());
        }
        Map<String, String> options = Map.of("EVENHAND_JAVA_OPTS", "-Xmx1g -Dname=*");
        assertTrue(run(List.of("publish", "x"), options).out().contains("\n<-Xmx1g>\n<-Dname=*>\n<-jar>\n"));
        assertFalse(run(List.of("publish", "x"), Map.of()).out().contains("TieredStopAtLevel"));
        assertTrue(run(List.of("--help"), options).out().contains(quick + "<-Xmx1g>\n<-Dname=*>\n<-jar>\n"));
    }

    private Ended run(List<String> arguments, Map<String, String> environment) throws Exception {
        return start(launcher, temporary, arguments, environment);
    }

    private Ended start(Path start, Path folder, List<String> arguments, Map<String, String> environment)
            throws Exception {
        return await(begin(start, folder, arguments, environment, "one"), "one");
    }

    private Process begin(
            Path start, Path folder, List<String> arguments, Map<String, String> environment, String streams)
            throws IOException {
        List<String> command = new ArrayList<>(List.of(start.toString()));
        command.addAll(arguments);
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(temporary.resolve(streams + ".out").toFile())
                .redirectError(temporary.resolve(streams + ".err").toFile());
        builder.environment().clear();
        builder.environment().put("PATH", tools.toString());
        builder.environment().put("CALLS", temporary.resolve("calls").toString());
        builder.environment().putAll(environment);
        return builder.start();
    }

    private Ended await(Process process, String streams) throws Exception {
        assertTrue(process.waitFor(60, TimeUnit.SECONDS), "the launcher did not end");
        return new Ended(
                process.exitValue(),
                Files.readString(temporary.resolve(streams + ".out")),
                Files.readString(temporary.resolve(streams + ".err")));
    }

    /** Each call of Maven: its folder and arguments. */
    private List<String> builds() throws IOException {
        Path calls = temporary.resolve("calls");
        return Files.exists(calls) ? Files.readAllLines(calls) : List.of();
    }

    private void putTool(String name, String script) throws IOException {
        Files.writeString(tools.resolve(name), script);
        makeRunnable(tools.resolve(name));
    }

    private static void makeRunnable(Path file) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private static List<String> namesIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /** Dates everything in a folder to one instant. */
    private static void age(Path folder, Duration age) throws IOException {
        FileTime then = FileTime.from(Instant.now().minus(age));
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.toList()) {
                Files.setLastModifiedTime(each, then);
            }
        }
    }

    private static void touch(Path file, Duration age) throws IOException {
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(age)));
    }

    private static Path find(String tool) {
        return Stream.of("/usr/bin", "/bin")
                .map(folder -> Path.of(folder, tool))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("this system has no " + tool));
    }

    private static Path root() {
        return Path.of(System.getProperty("evenhand.root", ".."));
    }
}
