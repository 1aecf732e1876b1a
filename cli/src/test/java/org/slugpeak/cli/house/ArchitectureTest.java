package org.slugpeak.cli.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Random;
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
            .callMethod(System.class, "currentTimeMillis");

    @ArchTest
    static final ArchRule coreComputesOnly = noClasses()
            .that()
            .resideInAPackage("org.slugpeak.core..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.io..", "java.nio..", "java.net..", "org.slf4j..")
                    .or(describe("threads", each -> each.isEquivalentTo(Thread.class))))
            .orShould()
            .callConstructor(Random.class);

    @ArchTest
    static final ArchRule oneRoomTalksToTheSerialLibrary = noClasses()
            .that()
            .resideOutsideOfPackage("org.slugpeak.bridge.serial..")
            .should()
            .dependOnClassesThat(resideInAPackage("com.fazecast.."));

    @ArchTest
    static final ArchRule jsonStaysInBridgeAndReport = noClasses()
            .that()
            .resideOutsideOfPackages("org.slugpeak.bridge..", "org.slugpeak.cli.report..")
            .should()
            .dependOnClassesThat(resideInAPackage("com.fasterxml.jackson.."));

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
            .that()
            .areAssignableTo("org.slugpeak.core.session.SessionRecord")
            .and()
            .areNotInterfaces()
            .should()
            .beRecords();

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
