package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.study.Method;
import org.ridewright.study.RideMeasure;

/** What the page on studies shows can be read, and every measure is on it. */
class DocumentedStudiesTest {
    private static final String PAGE = SampleFiles.text(Path.of("..", "docs", "studies.md"));
    private static final Pattern WHOLE = Pattern.compile("```yaml\n# (\\S+\\.yaml)\n(.*?)```", Pattern.DOTALL);

    @TempDir
    Path folder;

    private final Map<String, String> examples = new LinkedHashMap<>();

    @BeforeEach
    void writeExamples() throws IOException {
        Path studies = Files.createDirectories(folder.resolve("scenarios/studies"));
        Path vehicles = Files.createDirectories(folder.resolve("scenarios/vehicles"));
        for (String vehicle : new String[] {"dray.yaml", "saloon.yaml"}) {
            Files.copy(Path.of("../scenarios/vehicles", vehicle), vehicles.resolve(vehicle));
        }
        Files.copy(Path.of("../scenarios/studies/kerb.yaml"), studies.resolve("kerb.yaml"));
        Matcher matcher = WHOLE.matcher(PAGE);
        while (matcher.find()) {
            examples.put(matcher.group(1), matcher.group(2));
            Files.writeString(folder.resolve(matcher.group(1)), matcher.group(2));
        }
    }

    @Test
    void thereIsAnExampleOfEachMethodAndItCanBeRead() {
        assertThat(examples.keySet())
                .extracting(name -> StudyFile.read(folder.resolve(name), "test").method())
                .extracting(Method::word)
                .containsExactlyInAnyOrder(
                        "sweep", "compare", "compare", "uncertainty", "sensitivity", "search", "search");
    }

    @Test
    void everyMeasureIsDescribedWithItsUnit() {
        for (RideMeasure measure : RideMeasure.values()) {
            assertThat(PAGE)
                    .containsPattern("\\| `" + Pattern.quote(measure.word()) + "` \\| [^|]+ \\| "
                            + Pattern.quote(measure.unit()) + " \\| " + Pattern.quote(measure.title()));
        }
    }

    @Test
    void everyShippedStudyCanBeRead() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("../scenarios/studies"))) {
            assertThat(files.filter(file -> FileKind.of(file) == FileKind.STUDY))
                    .isNotEmpty()
                    .allSatisfy(file ->
                            assertThat(StudyFile.read(file, "test").questions()).isNotEmpty());
        }
    }
}
