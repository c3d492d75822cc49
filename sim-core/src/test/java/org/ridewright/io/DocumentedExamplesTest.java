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
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.Vehicle;

/** The examples in the descriptions of the two languages are files that can be read, and no key goes undescribed. */
class DocumentedExamplesTest {
    private static final String VEHICLES = SampleFiles.text(Path.of("..", "docs", "vehicle-file.md"));
    private static final String SCENARIOS = SampleFiles.text(Path.of("..", "docs", "scenario-file.md"));
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
        assertThat(examples(SCENARIOS)).hasSize(2);
        assertThat(examples(SCENARIOS).keySet())
                .allSatisfy(name -> assertThat(ScenarioFile.read(folder.resolve(name)).entrants())
                        .isNotEmpty());
    }

    @Test
    void everyKeyIsDescribed() {
        assertThat(keys("whole/every-key.yaml")).hasSizeGreaterThan(100).allSatisfy(key -> assertThat(VEHICLES)
                .contains(key));
        assertThat(keys("whole/every-key-scenario.yaml")).allSatisfy(key -> assertThat(SCENARIOS + VEHICLES)
                .contains(key));
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
