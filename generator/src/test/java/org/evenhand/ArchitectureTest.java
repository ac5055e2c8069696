package org.evenhand;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.EvaluationResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Holds the packages to their order, and each rule to a small set of classes that breaks it on purpose: a rule that
 * could not fail would prove nothing. The order and its reasons: docs/architecture.md.
 */
class ArchitectureTest {

    /** A package may lean on those before it in this list, and on no other of ours. */
    private static final List<String> ORDER = List.of(
            "quantity",
            "model",
            "words",
            "read",
            "log",
            "statistics",
            "cache",
            "measure",
            "compare",
            "prose",
            "picture",
            "check",
            "chart",
            "page",
            "site",
            "command");

    private static final String OURS = "org.evenhand";
    private static final String WRONG = "org.evenhand.architecture.wrong";

    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(OURS);
    private static final JavaClasses WRONG_ON_PURPOSE = new ClassFileImporter().importPackages(WRONG);

    @TestFactory
    Stream<DynamicTest> aPackageLeansOnlyOnThoseBeforeIt() {
        return ORDER.stream()
                .map(name -> DynamicTest.dynamicTest(
                        name, () -> leansOnlyOnThoseBefore(OURS, name).check(PROGRAM)));
    }

    @Test
    void everyClassIsInAPackageOfTheOrder() {
        hasAPlaceInTheOrder(OURS).check(PROGRAM);
    }

    @Test
    void noPackagesLeanOnEachOtherInARing() {
        slices().matching(OURS + ".(*)..").should().beFreeOfCycles().check(PROGRAM);
    }

    @Test
    void statisticsKnowsOnlyNumbers() {
        noClasses()
                .that()
                .resideInAPackage(OURS + ".statistics..")
                .should()
                .dependOnClassesThat(DescribedPredicate.describe(
                        "are ours and outside of statistics",
                        type -> type.getPackageName().startsWith(OURS)
                                && !type.getPackageName().startsWith(OURS + ".statistics")))
                .allowEmptyShould(true)
                .check(PROGRAM);
    }

    @Test
    void onlyTheCommandLinePrints() {
        onlyCommandPrints(OURS).check(PROGRAM);
    }

    @Test
    void onlyMainEndsTheProgram() {
        onlyMainEnds(OURS).check(PROGRAM);
    }

    @Test
    void onlyTheCommandLineAsksWhatTimeItIsOrWhereItRuns() {
        onlyCommandAsksTheMachine(OURS).check(PROGRAM);
    }

    @Test
    void everyPackageSaysWhatEntersAndWhatLeaves() throws IOException {
        assertEquals(List.of(), packagesWithoutDescription(root().resolve("generator/src/main/java")));
    }

    @Test
    void theProgramWasFoundAtAll() {
        assertTrue(PROGRAM.contain("org.evenhand.command.Main"));
        assertTrue(PROGRAM.stream().noneMatch(type -> type.getPackageName().startsWith(WRONG)));
    }

    @Test
    void theOrderIsTheOneThatTheArchitectureDescribes() throws IOException {
        List<String> described = Files.readAllLines(root().resolve("docs/architecture.md")).stream()
                .filter(line -> line.startsWith("| `"))
                .map(line -> line.substring(3, line.indexOf('`', 3)))
                .toList();
        assertEquals(ORDER, described);
    }

    // The proofs that the rules can fail, and that they name the culprit only.

    @Test
    void anArrowToTheLeftIsFound() {
        assertBroken(leansOnlyOnThoseBefore(WRONG, "quantity"), Set.of("Eager"));
        assertBroken(leansOnlyOnThoseBefore(WRONG, "site"), Set.of());
        assertBroken(leansOnlyOnThoseBefore(WRONG, "page"), Set.of());
    }

    @Test
    void aPackageOutsideTheOrderIsFound() {
        assertBroken(hasAPlaceInTheOrder(WRONG), Set.of("Things"));
    }

    @Test
    void printingIsFound() {
        assertBroken(onlyCommandPrints(WRONG), Set.of("Eager"));
    }

    @Test
    void anEndOfTheProgramIsFound() {
        assertBroken(onlyMainEnds(WRONG), Set.of("Hasty"));
    }

    @Test
    void aLookAtTheClockIsFound() {
        assertBroken(onlyCommandAsksTheMachine(WRONG), Set.of("Late"));
    }

    @Test
    void aPackageWithoutDescriptionIsFound() throws IOException {
        List<String> found = packagesWithoutDescription(root().resolve("generator/src/test/java"));
        assertTrue(found.contains("org/evenhand/architecture/wrong/drawer"), found.toString());
    }

    private static ArchRule leansOnlyOnThoseBefore(String root, String name) {
        String[] after = ORDER.stream()
                .skip(ORDER.indexOf(name) + 1L)
                .map(later -> root + "." + later + "..")
                .toArray(String[]::new);
        return noClasses()
                .that()
                .resideInAPackage(root + "." + name + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(after)
                .allowEmptyShould(true);
    }

    private static ArchRule hasAPlaceInTheOrder(String root) {
        return classes()
                .should()
                .resideInAnyPackage(
                        ORDER.stream().map(name -> root + "." + name + "..").toArray(String[]::new))
                .because("each package has its place in the order of docs/architecture.md");
    }

    private static ArchRule onlyCommandPrints(String root) {
        return noClasses()
                .that()
                .resideOutsideOfPackage(root + ".command..")
                .should(ACCESS_STANDARD_STREAMS)
                .because("a stage hands its findings on as data");
    }

    private static ArchRule onlyMainEnds(String root) {
        return noClasses()
                .that()
                .doNotHaveFullyQualifiedName(root + ".command.Main")
                .should()
                .callMethodWhere(
                        calls("end the program", Set.of("java.lang.System", "java.lang.Runtime"), "exit", "halt"))
                .because("a command returns its exit status");
    }

    private static ArchRule onlyCommandAsksTheMachine(String root) {
        Set<String> clocks = Set.of(
                "java.time.Instant",
                "java.time.LocalDate",
                "java.time.LocalDateTime",
                "java.time.OffsetDateTime",
                "java.time.ZonedDateTime",
                "java.time.Year",
                "java.time.Clock",
                "java.time.ZoneId",
                "java.lang.System",
                "java.util.Locale",
                "java.util.TimeZone",
                "java.net.InetAddress");
        return noClasses()
                .that()
                .resideOutsideOfPackage(root + ".command..")
                .should()
                .callMethodWhere(calls(
                        "ask for the time, the place or the name of the machine",
                        clocks,
                        "now",
                        "currentTimeMillis",
                        "systemUTC",
                        "systemDefaultZone",
                        "systemDefault",
                        "getDefault",
                        "getLocalHost"))
                .because("the same folder gives the same bytes, whenever and wherever");
    }

    private static DescribedPredicate<JavaCall<?>> calls(String what, Set<String> owners, String... methods) {
        Set<String> names = Set.of(methods);
        return DescribedPredicate.describe(what, call -> {
            CodeUnitCallTarget target = call.getTarget();
            return owners.contains(target.getOwner().getFullName()) && names.contains(target.getName());
        });
    }

    private static void assertBroken(ArchRule rule, Set<String> culprits) {
        EvaluationResult result = rule.evaluate(WRONG_ON_PURPOSE);
        String report = String.join("\n", result.getFailureReport().getDetails());
        assertEquals(!culprits.isEmpty(), result.hasViolation(), report);
        for (String name : List.of("Eager", "Late", "Hasty", "Things")) {
            boolean accused = result.getFailureReport().getDetails().stream()
                    .anyMatch(
                            line -> line.matches("(?s)(Class|Method|Field|Constructor) <[\\w.]*\\." + name + "\\b.*"));
            assertEquals(culprits.contains(name), accused, name + " in:\n" + report);
        }
    }

    /** Folders that hold Java files, none of them package-info.java; sorted. */
    private static List<String> packagesWithoutDescription(Path sources) throws IOException {
        try (Stream<Path> files = Files.walk(sources)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .map(Path::getParent)
                    .distinct()
                    .filter(folder -> !Files.exists(folder.resolve("package-info.java")))
                    .map(folder -> sources.relativize(folder).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    private static Path root() {
        return Path.of(System.getProperty("evenhand.root", ".."));
    }
}
