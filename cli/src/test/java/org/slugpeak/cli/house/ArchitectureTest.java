package org.slugpeak.cli.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;
import org.jspecify.annotations.NullMarked;

/** Who may know whom, and what a room must not do. */
@AnalyzeClasses(
        packages = "org.slugpeak",
        importOptions = {ImportOption.DoNotIncludeTests.class, ArchitectureTest.NoTestJars.class})
final class ArchitectureTest {

    /** The test helpers of another module come in a jar of their own. */
    static final class NoTestJars implements ImportOption {
        @Override
        public boolean includes(Location location) {
            return !location.contains("-tests.jar");
        }
    }

    private static final int FEWEST_CLASSES = 200;

    @ArchTest
    static void allThreeModulesAreSeen(JavaClasses all) {
        assertTrue(all.size() >= FEWEST_CLASSES, "only " + all.size() + " classes were looked at");
        for (String module : new String[] {"core", "bridge", "cli"}) {
            assertTrue(
                    all.stream().anyMatch(each -> each.getPackageName().startsWith("org.slugpeak." + module)),
                    "nothing of " + module + " was looked at");
        }
    }

    @ArchTest
    static final ArchRule arrowsPointOneWay = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("cli")
            .definedBy("org.slugpeak.cli..")
            .layer("bridge")
            .definedBy("org.slugpeak.bridge..")
            .layer("core")
            .definedBy("org.slugpeak.core..")
            .whereLayer("cli")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("bridge")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("core")
            .mayOnlyBeAccessedByLayers("bridge", "cli");

    /** What a command puts together knows nothing of the commands; what is opened knows nothing of who runs it. */
    @ArchTest
    static final ArchRule roomsOfTheCommandLineLookOneWay = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("start")
            .definedBy("org.slugpeak.cli")
            .layer("commands")
            .definedBy("org.slugpeak.cli.command")
            .layer("opening")
            .definedBy(
                    "org.slugpeak.cli.open",
                    "org.slugpeak.cli.check",
                    "org.slugpeak.cli.safety",
                    "org.slugpeak.cli.sessions")
            .layer("options")
            .definedBy("org.slugpeak.cli.option")
            .layer("session")
            .definedBy(
                    "org.slugpeak.cli.run",
                    "org.slugpeak.cli.align",
                    "org.slugpeak.cli.curve",
                    "org.slugpeak.cli.sheet")
            .layer("outputs")
            .definedBy(
                    "org.slugpeak.cli.moment",
                    "org.slugpeak.cli.display",
                    "org.slugpeak.cli.cue",
                    "org.slugpeak.cli.voice",
                    "org.slugpeak.cli.page",
                    "org.slugpeak.cli.report")
            .whereLayer("start")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("commands")
            .mayOnlyBeAccessedByLayers("start")
            .whereLayer("opening")
            .mayOnlyBeAccessedByLayers("commands")
            .whereLayer("options")
            .mayOnlyBeAccessedByLayers("commands", "opening")
            .whereLayer("session")
            .mayOnlyBeAccessedByLayers("start", "commands", "opening", "options")
            .whereLayer("outputs")
            .mayOnlyBeAccessedByLayers("commands", "opening", "options", "session");

    @ArchTest
    static final ArchRule packagesAreFreeOfCycles =
            slices().matching("org.slugpeak.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule onlyTheTickerReadsTheClock = noClasses()
            .that()
            .resideOutsideOfPackages("org.slugpeak.bridge.time..")
            .should()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(Instant.class, "now");

    @ArchTest
    static final ArchRule nothingSleepsWhereItCouldWait = noClasses()
            .should()
            .callMethodWhere(target(owner(assignableTo(Thread.class))).and(target(name("sleep"))))
            .orShould()
            .callMethodWhere(target(owner(assignableTo(TimeUnit.class))).and(target(name("sleep"))));

    @ArchTest
    static final ArchRule onlyWhatWaitsForHardwareOrPacesParks = noClasses()
            .that()
            .resideOutsideOfPackages(
                    "org.slugpeak.bridge.serial..", "org.slugpeak.bridge.sound..", "org.slugpeak.bridge.sim..")
            .should()
            .dependOnClassesThat()
            .areAssignableTo(LockSupport.class);

    /** But for what must not be guessed. */
    @ArchTest
    static final ArchRule chanceIsSeeded = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("org.slugpeak.cli.page.PageToken")
            .should()
            .callConstructor(Random.class)
            .orShould()
            .callConstructor(SplittableRandom.class)
            .orShould()
            .callMethod(Math.class, "random")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(ThreadLocalRandom.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(SecureRandom.class);

    @ArchTest
    static final ArchRule coreComputesOnly = noClasses()
            .that()
            .resideInAPackage("org.slugpeak.core..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.io..", "java.nio..", "java.net..", "org.slf4j..")
                    .or(describe("threads", each -> each.isEquivalentTo(Thread.class))));

    @ArchTest
    static final ArchRule oneRoomTalksToTheSerialLibrary = noClasses()
            .that()
            .resideOutsideOfPackage("org.slugpeak.bridge.serial..")
            .should()
            .dependOnClassesThat(resideInAPackage("com.fazecast.."));

    @ArchTest
    static final ArchRule jsonStaysInBridgeReportPageAndSessions = noClasses()
            .that()
            .resideOutsideOfPackages(
                    "org.slugpeak.bridge..",
                    "org.slugpeak.cli.report..",
                    "org.slugpeak.cli.page..",
                    "org.slugpeak.cli.sessions..")
            .should()
            .dependOnClassesThat(resideInAPackage("com.fasterxml.jackson.."));

    /** No other command pays for a database. */
    @ArchTest
    static final ArchRule sqlStaysInTheRoomOfSessions = noClasses()
            .that()
            .resideOutsideOfPackage("org.slugpeak.cli.sessions..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.sql..", "org.h2..", "org.postgresql.."));

    /** A browser shows the same state as a terminal. */
    @ArchTest
    static final ArchRule theMomentKnowsNoDisplay = noClasses()
            .that()
            .resideInAPackage("org.slugpeak.cli.moment..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("org.slugpeak.cli..", "org.jline..", "javax.sound..", "java.io..")
                    .and(not(resideInAnyPackage("org.slugpeak.cli.moment..", "org.slugpeak.cli.words.."))));

    @ArchTest
    static final ArchRule waysInDoNotKnowTheirSiblings = slices().matching(
                    "org.slugpeak.bridge.(serial|file|sound|sim)..")
            .should()
            .notDependOnEachOther();

    @ArchTest
    static final ArchRule onlyTheCliPrints = noClasses()
            .that()
            .resideOutsideOfPackage("org.slugpeak.cli..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err");

    @ArchTest
    static final ArchRule sealedValuesAreRecords = classes()
            .that(describe("implement a sealed interface of ours", ArchitectureTest::implementsSealed))
            .should()
            .beRecords()
            .orShould()
            .beEnums();

    private static boolean implementsSealed(JavaClass each) {
        return !each.isInterface()
                && each.getAllRawInterfaces().stream()
                        .filter(type -> type.getPackageName().startsWith("org.slugpeak."))
                        .anyMatch(type -> type.reflect().isSealed());
    }

    /** One word, one meaning; what lies inside a class is told apart by the class. */
    @ArchTest
    static void noTwoClassesShareAName(JavaClasses all) {
        Map<String, List<String>> named = all.stream()
                .filter(each -> each.isTopLevelClass() && !each.getSimpleName().equals("package-info"))
                .collect(Collectors.groupingBy(
                        JavaClass::getSimpleName,
                        TreeMap::new,
                        Collectors.mapping(JavaClass::getName, Collectors.toList())));
        named.values().removeIf(names -> names.size() == 1);
        assertEquals(Map.of(), named);
    }

    @ArchTest
    static final ArchRule nothingIsStaticAndMutable =
            fields().that().areStatic().should().beFinal();

    @ArchTest
    static final ArchRule nothingThrowsGenericExceptions = NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;

    @ArchTest
    static void everyPackageIsNullMarked(JavaClasses all) {
        for (JavaClass each : all) {
            assertTrue(
                    each.getPackage().isAnnotatedWith(NullMarked.class),
                    each.getPackageName() + " has no package-info with @NullMarked");
        }
    }
}
