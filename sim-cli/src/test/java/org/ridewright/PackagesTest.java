package org.ridewright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** The arrows between packages of both modules. */
class PackagesTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.ridewright");

    @Test
    void packagesFormNoCycle() {
        slices().matching("org.ridewright.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void onlyFiguresKnowTheChartLibrary() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.ridewright.figure..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.knowm..")
                .check(CLASSES);
    }

    @Test
    void figuresKnowNothingOfRides() {
        noClasses()
                .that()
                .resideInAPackage("org.ridewright.figure..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.ridewright.ride..", "org.ridewright.report..", "org.ridewright.cli..")
                .check(CLASSES);
    }
}
