package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each broken file is refused with just the text that stands in the file beside it: every fault, each at its line and column, with what was expected
 * and what most likely puts it right.
 */
class BrokenFilesTest {
    private static final Path FOLDER = SampleFiles.at("broken");

    static Stream<String> names() {
        return SampleFiles.in(FOLDER).stream().map(file -> file.getFileName().toString());
    }

    @ParameterizedTest
    @MethodSource("names")
    void saysEverythingThatIsWrong(String name) {
        String expected = SampleFiles.text(FOLDER.resolve(name.replaceFirst("\\.\\w+$", ".txt")));

        String said = refusal(name).getMessage().replace(System.lineSeparator(), "\n");

        assertThat(said.replace(FOLDER + System.getProperty("file.separator"), "") + "\n")
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @MethodSource("names")
    void placesEachFaultWithinItsFile(String name) {
        for (InputProblem problem : refusal(name).problems()) {
            List<String> lines =
                    SampleFiles.text(Path.of(problem.file())).lines().toList();
            assertThat(problem.line()).as(problem.render()).isBetween(1, lines.size() + 1);
            String line = problem.line() <= lines.size() ? lines.get(problem.line() - 1) : "";
            assertThat(problem.column()).as(problem.render()).isBetween(1, line.length() + 1);
            assertThat(problem.fix()).as(problem.render()).isNotEmpty();
        }
    }

    @Test
    void thereAreManyKindsOfFault() {
        assertThat(names()).hasSizeGreaterThan(40);
        Set<String> tellings = Set.copyOf(names().flatMap(name -> refusal(name).problems().stream())
                .map(InputProblem::fault)
                .toList());
        assertThat(tellings).hasSizeGreaterThan(60);
    }

    @Test
    void aVehicleThatIsNotThereIsSaidOnce() {
        Path absent = FOLDER.resolve("tabb.yaml");

        InputException refusal = catchThrowableOfType(InputException.class, () -> VehicleFile.read(absent));

        assertThat(refusal.problems()).hasSize(1);
        assertThat(refusal).hasMessageContaining("there is no such file").hasMessageContaining("write tab.yaml");
    }

    @Test
    void aFolderIsNoFile() {
        InputException refusal = catchThrowableOfType(InputException.class, () -> VehicleFile.read(FOLDER));

        assertThat(refusal).hasMessageContaining("is a folder");
    }

    private static InputException refusal(String name) {
        Path file = FOLDER.resolve(name);
        InputException refusal = catchThrowableOfType(InputException.class, () -> {
            if (name.startsWith("kind-")) {
                FileKind.of(file);
            } else if (name.startsWith("scenario-")) {
                ScenarioFile.read(file);
            } else {
                VehicleFile.read(file);
            }
        });
        assertThat(refusal).as(name).isNotNull();
        return refusal;
    }
}
