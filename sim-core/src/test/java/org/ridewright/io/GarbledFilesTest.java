package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.fieldwork.Findings;
import org.ridewright.road.RoadProfile;
import org.ridewright.vehicle.BodyFigures;

/**
 * Whatever a slip of the hand does to one line, the file is refused with a place and a reason, or it is read, and then the body's figures
 * can be worked out and the roads laid.
 */
class GarbledFilesTest {
    private static final List<String> LINES =
            SampleFiles.text(SampleFiles.at("whole/every-key.yaml")).lines().toList();
    private static final List<String> SCENARIO = SampleFiles.text(SampleFiles.at("whole/every-key-scenario.yaml"))
            .lines()
            .toList();
    private static final String JUNK = "{}[]:,-#&*!|>'\"%@`\t\0\u0001\u00e9 0.e±";

    /** Lines from one garbled line to the next, to keep the test short. */
    private static final int STRIDE = 7;

    @TempDir
    Path folder;

    static Stream<Named<UnaryOperator<String>>> slips() {
        Random random = new Random(20240229);
        return Stream.of(
                Named.of("line left out", line -> null),
                Named.of("line written twice", line -> line + "\n" + line),
                Named.of("value left out", line -> line.replaceFirst(":.*", ":")),
                Named.of("value is a list", line -> line.replaceFirst(": .*", ": [a, 1 m, [2]]")),
                Named.of("value is a group", line -> line.replaceFirst(": .*", ": {a: {b: c}, mass: 1 kg}")),
                Named.of("value is zero", line -> line.replaceFirst(": .*", ": 0")),
                Named.of("figures are zero", line -> line.replaceAll("\\d+", "0")),
                Named.of("figures are negative", line -> line.replaceAll("(?<![\\w.])(\\d)", "-$1")),
                Named.of("figures are huge", line -> line.replaceAll("(?<![\\w.])\\d+", "1e300")),
                Named.of("figures overflow", line -> line.replaceAll("(?<![\\w.])\\d+", "9e999")),
                Named.of("words are mixed up", line -> line.replaceAll("[a-z]{4,}", "front")),
                Named.of("indented further", line -> "   " + line),
                Named.of("indented less", line -> line.strip()),
                Named.of("cut off", line -> line.substring(0, line.length() / 2)),
                Named.of("stray character", line -> stray(line, random)),
                Named.of("another stray character", line -> stray(line, random)));
    }

    @ParameterizedTest
    @MethodSource("slips")
    void aGarbledVehicleIsReadOrRefused(UnaryOperator<String> slip) throws IOException {
        int refused = 0;
        for (int i = 0; i < LINES.size(); i += STRIDE) {
            Path file = folder.resolve("garbled.yaml");
            Files.writeString(file, garbled(LINES, i, slip));
            refused += refusals(() -> BodyFigures.of(VehicleFile.read(file)));
        }
        assertThat(refused).isPositive();
    }

    @ParameterizedTest
    @MethodSource("slips")
    void garbledMeasurementsAreReadOrRefused(UnaryOperator<String> slip) throws IOException {
        // logs are garbled in tests of their own
        String whole = SampleFiles.text(SampleFiles.at("measurements/every-fact.yaml"))
                .replaceAll("(?s)  - bounce log:.*?(?=  - words:)", "");
        List<String> lines = whole.lines().toList();
        int refused = 0;
        for (int i = 0; i < lines.size(); i += 2) {
            Path file = MeasurementsSample.in(folder, garbled(lines, i, slip));
            refused += refusals(() -> Findings.of(MeasurementsFile.read(file)).forEach(found -> {
                assertThat(found.value().value()).isFinite();
                assertThat(found.fact().label()).isNotEmpty();
            }));
        }
        assertThat(refused).isPositive();
    }

    @ParameterizedTest
    @MethodSource("slips")
    void aGarbledScenarioIsReadOrRefused(UnaryOperator<String> slip) throws IOException {
        Files.writeString(folder.resolve("every-key.yaml"), String.join("\n", LINES));
        Files.copy(SampleFiles.at("whole/wheel.yaml"), folder.resolve("wheel.yaml"));
        int refused = 0;
        for (int i = 0; i < SCENARIO.size(); i += STRIDE) {
            Path file = folder.resolve("scenario.yaml");
            Files.writeString(file, garbled(SCENARIO, i, slip));
            refused += refusals(() -> ScenarioFile.read(file).roads().forEach(RoadProfile::alongEverySide));
        }
        assertThat(refused).isPositive();
    }

    @Test
    void aVehicleWithoutOneOfItsLinesIsReadOrRefused() throws IOException {
        for (int i = 0; i < LINES.size(); i++) {
            Path file = folder.resolve("garbled.yaml");
            Files.writeString(file, garbled(LINES, i, line -> null));
            refusals(() -> BodyFigures.of(VehicleFile.read(file)));
        }
    }

    private static String garbled(List<String> lines, int line, UnaryOperator<String> slip) {
        List<String> changed = new ArrayList<>(lines);
        changed.set(line, slip.apply(lines.get(line)));
        changed.removeAll(Collections.singleton(null));
        return String.join("\n", changed) + "\n";
    }

    private static String stray(String line, Random random) {
        int at = random.nextInt(line.length() + 1);
        return line.substring(0, at) + JUNK.charAt(random.nextInt(JUNK.length())) + line.substring(at);
    }

    /** 1 if refused; any exception but an {@link InputException} with a reason goes through. */
    private static int refusals(Runnable reading) {
        try {
            reading.run();
            return 0;
        } catch (InputException refusal) {
            assertThat(refusal.problems())
                    .isNotEmpty()
                    .allSatisfy(problem -> assertThat(problem.fault()).isNotEmpty());
            return 1;
        }
    }
}
