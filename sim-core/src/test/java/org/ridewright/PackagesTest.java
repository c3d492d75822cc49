package org.ridewright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** The arrows between packages, as DEVELOPERS.md describes them. */
class PackagesTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.ridewright");

    @Test
    void packagesFormNoCycle() {
        slices().matching("org.ridewright.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void theSolverKnowsNeitherVehicleNorRoad() {
        refuse("solver", "vehicle", "road", "wheel", "ride", "io", "comfort");
    }

    @Test
    void comfortKnowsChannelsAlone() {
        refuse("comfort", "vehicle", "road", "wheel", "suspension", "dynamics", "solver", "ride", "io", "quantity");
    }

    @Test
    void descriptionsKnowNoEquations() {
        refuse("vehicle", "road", "wheel", "suspension", "dynamics", "solver", "ride", "io");
        refuse("quantity", "vehicle", "road", "wheel", "suspension", "dynamics", "solver", "ride", "io");
    }

    @Test
    void mathematicsKnowsNothingElse() {
        refuse(
                "math",
                "quantity",
                "vehicle",
                "road",
                "wheel",
                "suspension",
                "dynamics",
                "solver",
                "ride",
                "io",
                "signal");
    }

    @Test
    void theLibraryWritesNothingToTheConsole() {
        noClasses()
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .check(CLASSES);
    }

    private static void refuse(String from, String... to) {
        for (String target : to) {
            noClasses()
                    .that()
                    .resideInAPackage("org.ridewright." + from + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("org.ridewright." + target + "..")
                    .check(CLASSES);
        }
    }
}
