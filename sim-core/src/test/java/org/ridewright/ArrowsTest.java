package org.ridewright;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** All that each package may depend on; an arrow that is not drawn here is refused. */
class ArrowsTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.ridewright");

    static Stream<Arguments> arrows() {
        return Stream.of(
                arguments("math", ""),
                arguments("signal", "math"),
                arguments("quantity", ""),
                arguments("vehicle", "quantity"),
                arguments("road", "quantity signal math"),
                arguments("wheel", "vehicle road quantity math"),
                arguments("suspension", "vehicle quantity math"),
                arguments("roughness", "road quantity signal math"),
                arguments("dynamics", "suspension wheel vehicle road quantity math"),
                arguments("solver", "dynamics suspension signal math"),
                arguments("modal", "dynamics suspension vehicle quantity math"),
                arguments("standing", "dynamics suspension vehicle quantity"),
                arguments("comfort", "signal"),
                arguments("measurement", "comfort signal math"),
                arguments("ringdown", "measurement signal math"),
                arguments("fieldwork", "measurement vehicle quantity signal math"),
                arguments("ride", "comfort solver dynamics suspension wheel vehicle road quantity signal math"),
                arguments("uncertainty", "ride dynamics vehicle road quantity signal math"),
                arguments("study", "ride comfort dynamics road vehicle quantity signal math"),
                arguments("bounce", "modal solver dynamics suspension wheel vehicle road quantity signal math"),
                arguments(
                        "friction",
                        "bounce modal ride comfort solver dynamics suspension wheel vehicle road quantity signal math"),
                arguments(
                        "calibration",
                        "bounce ringdown fieldwork ride comfort measurement solver dynamics suspension wheel vehicle road quantity signal math"),
                arguments("narrowing", "modal ride comfort dynamics suspension wheel road vehicle quantity"),
                arguments("why", "study uncertainty ride standing comfort dynamics vehicle road quantity"),
                arguments(
                        "io", "why study uncertainty fieldwork comfort measurement ride road vehicle quantity signal"));
    }

    @ParameterizedTest(name = "{0} may see: {1}")
    @MethodSource("arrows")
    void aPackageSeesOnlyWhatLiesBelowIt(String from, String to) {
        String[] allowed = Stream.concat(Stream.of(from), Arrays.stream(to.split(" ")))
                .filter(name -> !name.isEmpty())
                .map(name -> "org.ridewright." + name + "..")
                .toArray(String[]::new);
        classes()
                .that()
                .resideInAPackage("org.ridewright." + from + "..")
                .should()
                .onlyDependOnClassesThat(
                        resideOutsideOfPackage("org.ridewright..").or(resideInAnyPackage(allowed)))
                .check(CLASSES);
    }

    @Test
    void everyPackageIsInTheTable() {
        Set<String> found = CLASSES.stream()
                .map(c -> c.getPackageName().replaceFirst("^org\\.ridewright\\.?", ""))
                .map(name -> name.replaceFirst("\\..*$", ""))
                .collect(Collectors.toCollection(TreeSet::new));
        List<String> drawn = arrows().map(a -> (String) a.get()[0]).sorted().toList();
        assertThat(found).containsExactlyElementsOf(drawn);
    }
}
