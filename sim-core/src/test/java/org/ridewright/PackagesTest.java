package org.ridewright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** No cycles, no console; which package may see which is told by {@link ArrowsTest}. */
class PackagesTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.ridewright");

    @Test
    void packagesFormNoCycle() {
        slices().matching("org.ridewright.(*)..").should().beFreeOfCycles().check(CLASSES);
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
}
