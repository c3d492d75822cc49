package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.Vehicle;

/** The examples in the descriptions of the two languages are files that can be read, and no key goes undescribed. */
class DocumentedExamplesTest {
    private static final String VEHICLES = SampleFiles.text(Path.of("..", "docs", "vehicle-file.md"));
    private static final String SCENARIOS = SampleFiles.text(Path.of("..", "docs", "scenario-file.md"));
    private static final String MEASUREMENTS = SampleFiles.text(Path.of("..", "docs", "measurements-file.md"));
    /** An example that begins with the name of its file in a comment is a whole file. */
    private static final Pattern WHOLE = Pattern.compile("```yaml\n# (\\S+\\.yaml)\n(.*?)```", Pattern.DOTALL);

    @TempDir
    Path folder;

    @BeforeEach
    void writeExamples() throws IOException {
        for (var example : examples(VEHICLES + SCENARIOS).entrySet()) {
            Files.writeString(folder.resolve(example.getKey()), example.getValue());
        }
    }

    private static Map<String, String> examples(String text) {
        Map<String, String> examples = new LinkedHashMap<>();
        Matcher matcher = WHOLE.matcher(text);
        while (matcher.find()) {
            examples.put(matcher.group(1), matcher.group(2));
        }
        return examples;
    }

    @Test
    void thereIsAWholeVehicleOfEachLayout() {
        assertThat(examples(VEHICLES).keySet())
                .extracting(name -> VehicleFile.read(folder.resolve(name)))
                .extracting(Vehicle::layout)
                .containsExactlyInAnyOrder(Layout.values());
    }

    @Test
    void everyScenarioCanBeRead() {
        assertThat(examples(SCENARIOS)).hasSize(3);
        assertThat(examples(SCENARIOS).keySet())
                .allSatisfy(name -> assertThat(
                                ScenarioFile.read(folder.resolve(name)).entrants())
                        .isNotEmpty());
    }

    @Test
    void everyKeyIsDescribed() {
        assertThat(keys("whole/every-key.yaml"))
                .hasSizeGreaterThan(100)
                .allSatisfy(key -> assertThat(VEHICLES).containsPattern(asKey(key)));
        assertThat(keys("whole/every-key-scenario.yaml"))
                .allSatisfy(key -> assertThat(SCENARIOS + VEHICLES).containsPattern(asKey(key)));
    }

    @Test
    void everyKeyOfMeasurementsIsDescribed() {
        assertThat(keys("measurements/every-fact.yaml"))
                .hasSizeGreaterThan(60)
                .allSatisfy(key -> assertThat(MEASUREMENTS + VEHICLES).containsPattern(asKey(key)));
    }

    @Test
    void theExampleOfMeasurementsCanBeRead() throws IOException {
        String example = examples(MEASUREMENTS).get("measured.yaml");
        Path vehicle = Path.of("..", "scenarios", "vehicles", "phaeton.yaml");
        Files.copy(vehicle, folder.resolve("phaeton.yaml"));
        Path file = folder.resolve("measured.yaml");
        Files.writeString(file, example);
        assertThat(MeasurementsFile.read(file).facts()).hasSize(3);
    }

    /** The key as it stands in running text or in an example. */
    private static String asKey(String key) {
        return "(?<![a-z ])" + key + ":|`" + key + "(`|: )|[{] ?" + key + ":|, " + key + ": ";
    }

    @Test
    void everyPieceOfAFileCanBeTakenApart() throws IOException {
        Matcher piece = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL).matcher(VEHICLES + SCENARIOS);
        int pieces = 0;
        for (; piece.find(); pieces++) {
            Path file = folder.resolve("piece.yaml");
            Files.writeString(file, piece.group(1));
            Reading reading = new Reading("piece");
            TreeFile.read(file, reading);
            assertThat(reading.problems()).isEmpty();
        }
        assertThat(pieces).isGreaterThan(examples(VEHICLES + SCENARIOS).size());
    }

    @Test
    void everyValueInTheTableOfValuesCanBeRead() {
        int values = 0;
        for (QuantityKind kind : QuantityKind.values()) {
            Matcher row = Pattern.compile("\n\\| " + kind.label() + "(?: \\([^)]*\\))? \\|(.*)")
                    .matcher(VEHICLES);
            if (row.find()) {
                Matcher value = Pattern.compile("`(\\d[^`]*)`").matcher(row.group(1));
                for (; value.find(); values++) {
                    assertThat(Measures.parse(value.group(1), kind).value()).isPositive();
                }
            }
        }
        assertThat(values).isGreaterThan(30);
    }

    private static Set<String> keys(String name) {
        Set<String> keys = new LinkedHashSet<>();
        Path file = SampleFiles.at(name);
        collect(TreeFile.read(file, new Reading(name)), keys);
        return keys;
    }

    private static void collect(Node node, Set<String> keys) {
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((key, entry) -> {
                keys.add(key);
                collect(entry.value(), keys);
            });
        } else if (node instanceof Node.Sequence sequence) {
            sequence.items().forEach(item -> collect(item, keys));
        }
    }
}
