package org.ridewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RoadCommandTest {
    private static final String VEHICLE = """
            vehicle: Test quarter
            layout: quarter
            body: {mass: 300 kg}
            axles:
              - name: wheel
                behind front axle: 0 m
                unsprung mass: 40 kg
                wheels: {diameter: 0.6 m, tyre: pneumatic, path: disc, contact rate: 180 kN/m, contact damping ratio: 0.1}
                springs: [{name: coil, kind: coil, rate: 20 kN/m}]
            load cases: [{name: empty, aboard: []}]
            """;

    private static final String SCENARIO = """
            scenario: Two roads
            vehicles: [{file: quarter.yaml, speeds: [10 km/h]}]
            roads:
              - name: flat
              - name: planks
                obstacles: [{plank: {at: 2 m, height: 30 mm, length: 150 mm, side: left, count: 30, every: 1.7 m}}]
            """;

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void writeFiles() throws IOException {
        Files.writeString(folder.resolve("quarter.yaml"), VEHICLE);
        Files.writeString(folder.resolve("roads.yaml"), SCENARIO);
    }

    private int road(String... arguments) {
        String[] all = new String[arguments.length + 1];
        all[0] = "road";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(all);
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    @Test
    void everyRoadOfAScenarioThatIsNotLevelIsSurveyed() throws IOException {
        assertThat(road(file("roads"), "--into", file("results"))).isZero();
        assertThat(out.toString()).contains("planks", "left track", "right track", "IRI", "rigid, 0.9 m", "Report: ");
        Path results = folder.resolve("results");
        assertThat(results.resolve("report.html")).exists();
        assertThat(results.resolve("metrics.json")).exists();
        assertThat(results.resolve("figures/planks-wheels.svg")).exists();
        assertThat(results.resolve("figures/planks-heights.pdf")).exists();
        assertThat(results.resolve("figures/planks-spectrum.png")).exists();
        // once more, in place of the first
        assertThat(road(file("roads"), "--into", file("results"))).isZero();
    }

    @Test
    void aFolderWithResultsOfSomethingElseIsLeftAlone() throws IOException {
        Path mine = Files.createDirectory(folder.resolve("mine"));
        Files.writeString(mine.resolve("letter.txt"), "keep me");
        assertThat(road(file("roads.yaml"), "--into", mine.toString())).isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(mine.resolve("report.html")).doesNotExist();
        assertThat(mine.resolve("letter.txt")).exists();
    }

    @Test
    void levelGroundHasNoRoughness() throws IOException {
        Files.writeString(folder.resolve("flat.yaml"), SCENARIO.substring(0, SCENARIO.indexOf("  - name: planks")));
        assertThat(road(file("flat.yaml"), "--into", file("results"))).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("flat.yaml", "level ground alone");
        assertThat(folder.resolve("results")).doesNotExist();
    }

    @Test
    void lengthsAreWrittenAsPeopleWriteThem() {
        assertThat(road(
                        file("roads"),
                        "--into",
                        file("a"),
                        "--spacing",
                        "1/4 in",
                        "--length",
                        "20 yd",
                        "--track",
                        "5 ft"))
                .isZero();
        assertThat(road(file("roads"), "--into", file("b"), "--spacing", "5")).isEqualTo(2);
        assertThat(err.toString()).contains("--spacing", "unit");
        assertThat(road(file("roads"), "--into", file("b"), "--length", "-3 m")).isEqualTo(2);
        assertThat(road(file("roads"), "--into", file("b"), "--track", "0 m")).isEqualTo(2);
    }

    @Test
    void aFaultyFileIsExplainedAndNothingIsWritten() throws IOException {
        Files.writeString(folder.resolve("bad.yaml"), SCENARIO.replace("height: 30 mm", "height: 30 kg"));
        assertThat(road(file("bad.yaml"), "--into", file("results"))).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("bad.yaml:", "height");
        assertThat(road(file("nowhere.yaml"))).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(folder.resolve("results")).doesNotExist();
    }
}
