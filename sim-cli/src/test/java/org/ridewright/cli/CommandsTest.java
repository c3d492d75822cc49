package org.ridewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandsTest {
    private static final String QUARTER = """
            vehicle: Test quarter
            layout: quarter
            body: {mass: 300 kg}
            axles:
              - name: wheel
                behind front axle: 0 m
                unsprung mass: 40 kg
                wheels: {diameter: 0.6 m, tyre: pneumatic, path: disc, contact rate: 180 kN/m, contact damping ratio: 0.1}
                springs: [{name: coil, kind: coil, rate: %s}]
                dampers: [{name: damper, bump: 1 kN s/m, rebound: 2 kN s/m}]
            seats: [{name: seat <b>, at: {behind front axle: 0 m, above ground: 0.8 m}}]
            load cases: [{name: driver, aboard: [{person: driver, mass: 75 kg, seat: seat <b>}]}]
            """;

    private static final String SCENARIO = """
            scenario: Test plank
            vehicles: [{file: quarter.yaml, load cases: [driver], speeds: [10 km/h]}]
            roads:
              - name: plank
                obstacles: [{plank: {at: 2 m, height: 30 mm, length: 150 mm}}]
            """;

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int ridewright(String... arguments) {
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(arguments);
    }

    private Path written(String rate) throws IOException {
        Files.writeString(folder.resolve("quarter.yaml"), QUARTER.formatted(rate));
        return Files.writeString(folder.resolve("plank.yaml"), SCENARIO);
    }

    @ParameterizedTest
    @ValueSource(strings = {"run x --uncertain", "why x --draws", "friction x --draws", "study x --threads"})
    void whatIsNoWholeNumberIsToldInPlainWords(String line) {
        String[] command = (line + " many").split(" ", -1);
        assertThat(ridewright(command)).isEqualTo(ExitCode.MISUNDERSTOOD);
        assertThat(err.toString()).contains("'many' is not a whole number").doesNotContain("int\n");
    }

    @Test
    void aRunWritesReportFiguresTracesAndNumbers() throws IOException {
        Path scenario = written("20 kN/m");
        Path into = folder.resolve("results");
        assertThat(ridewright("run", scenario.toString(), "--into", into.toString()))
                .isZero();
        assertThat(out.toString()).contains("Test quarter", "MTVV", "Report: ");
        assertThat(into.resolve("report.html")).exists();
        assertThat(into.resolve("metrics.json")).exists();
        assertThat(Files.readString(into.resolve("report.html"))).doesNotContain("seat <b>");
        assertThat(count(into.resolve("figures"), ".svg"))
                .isPositive()
                .isEqualTo(count(into.resolve("figures"), ".pdf"));
        assertThat(count(into.resolve("traces"), ".csv")).isEqualTo(1);
        assertThat(ridewright("run", scenario.toString(), "--into", into.toString()))
                .isZero();
    }

    @Test
    void anUncertainRunGivesEveryNumberItsIntervalAndEveryTraceItsBand() throws IOException {
        Path scenario = written("20 kN/m ± 10 %");
        Path into = folder.resolve("results");
        assertThat(ridewright("run", "--uncertain", "20", scenario.toString(), "--into", into.toString()))
                .isZero();
        assertThat(out.toString()).contains("nine tenths of the rides, with 1 values drawn");
        assertThat(Files.readString(into.resolve("metrics.json"))).contains("\"5 %\"", "\"95 %\"", "\"draws\" : 20");
        assertThat(Files.readString(into.resolve("report.html"))).contains("How sure the numbers are");
        assertThat(count(into.resolve("traces"), "-bands.csv")).isEqualTo(1);
        assertThat(ridewright("run", "--uncertain", "3", scenario.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("--uncertain takes from 20 to 10000 draws, got 3");
    }

    @Test
    void hostileNamesOfVehicleRoadAndPersonAreShownAsText() throws IOException {
        Path scenario = written("20 kN/m");
        String image = "<img src=x onerror=alert(1)>";
        Files.writeString(
                folder.resolve("quarter.yaml"),
                QUARTER.formatted("20 kN/m")
                        .replace("vehicle: Test quarter", "vehicle: '" + image + "'")
                        .replace("name: coil", "name: '<script>alert(2)</script>'"));
        Files.writeString(scenario, SCENARIO.replace("name: plank", "name: '</svg><script>alert(3)</script>'"));
        Path into = folder.resolve("results");
        assertThat(ridewright("run", scenario.toString(), "--into", into.toString()))
                .isZero();
        assertThat(Files.readString(into.resolve("report.html")))
                .contains("&lt;img src=x onerror=alert(1)&gt;")
                .doesNotContain("<img", "<script", "</svg><script");
        try (Stream<Path> files = Files.list(into.resolve("figures"))) {
            assertThat(files.filter(f -> f.toString().endsWith(".svg")))
                    .allSatisfy(svg -> assertThat(Files.readString(svg)).doesNotContain("<img", "<script"));
        }
    }

    @Test
    void aVehicleThatSurgesIsNotSaidToLackSurge() throws IOException {
        Path scenario = written("20 kN/m");
        Path into = folder.resolve("results");
        ridewright("run", scenario.toString(), "--into", into.toString());
        assertThat(Files.readString(into.resolve("report.html"))).contains("<li>surge, to and fro");
        Files.writeString(folder.resolve("quarter.yaml"), QUARTER.formatted("20 kN/m") + "coordinates: [surge]\n");
        assertThat(ridewright("run", scenario.toString(), "--into", into.toString()))
                .isZero();
        assertThat(Files.readString(into.resolve("report.html"))).doesNotContain("<li>surge, to and fro");
    }

    @Test
    void aWrongCommandLineIsAnsweredInALineOrTwo() {
        for (String[] wrong : new String[][] {
            {"run", "--nowhere", "x"},
            {"run"},
            {"road", "x", "--length", "long"},
            {"comfort", "x.csv", "--at", "roof"},
            {"check"},
            {"rum", "x"}
        }) {
            err.getBuffer().setLength(0);
            assertThat(ridewright(wrong)).isEqualTo(2);
            assertThat(err.toString().lines().count()).as(err.toString()).isBetween(2L, 3L);
            assertThat(err.toString()).contains("See ridewright", " --help");
        }
    }

    @Test
    void theSizeOfALargeReportIsSaid() throws IOException {
        Files.write(folder.resolve("report.html"), new byte[9_000_000]);
        assertThat(ReportLine.of(folder)).endsWith("report.html");
        Files.write(folder.resolve("report.html"), new byte[12_400_000]);
        assertThat(ReportLine.of(folder)).contains("report.html (12 MB");
    }

    private static long count(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(ending)).count();
        }
    }

    @Test
    void aFolderOfSomethingElseIsLeftAlone() throws IOException {
        Path scenario = written("20 kN/m");
        Path into = Files.createDirectory(folder.resolve("mine"));
        Files.writeString(into.resolve("letter.txt"), "keep me");
        assertThat(ridewright("run", scenario.toString(), "--into", into.toString()))
                .isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(into.resolve("letter.txt")).exists();
        assertThat(into.resolve("report.html")).doesNotExist();
    }

    @Test
    void aFaultyFileIsExplainedAndNothingIsWritten() throws IOException {
        Path scenario = written("20");
        Path into = folder.resolve("results");
        assertThat(ridewright("run", scenario.toString(), "--into", into.toString()))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("quarter.yaml", "rate", "N/mm").doesNotContain("at org.");
        assertThat(into).doesNotExist();
        assertThat(ridewright("check", scenario.toString())).isEqualTo(ExitCode.BAD_INPUT);
    }

    @Test
    void aVehicleThatFallsThroughItsSpringsIsToldByCheckAtTheirRate() throws IOException {
        written("2 kN/m");
        assertThat(ridewright("check", folder.resolve("quarter.yaml").toString()))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString())
                .contains("quarter.yaml:9:46  axles[0].springs[0].rate: 2 kN/m", "falls through its springs");
    }

    @Test
    void checkOfMeasurementsTellsWhatTheySayDirectly() {
        Path yard = Path.of("..", "scenarios", "measurements", "phaeton-yard.yaml");
        assertThat(ridewright("check", yard.toString())).isZero();
        assertThat(out.toString())
                .contains("phaeton-yard.yaml: in order", "facts, 2 kept back")
                .containsPattern("centre of mass of all, above ground +\\d+ ± \\d+ mm")
                .containsPattern("locked rate +[\\d.]+ ± [\\d.]+ N/mm");
    }

    @Test
    void aFaultOfAVehicleIsToldOnceThoughItsScenarioIsCheckedBesideIt() throws IOException {
        Path scenario = written("20");
        Path vehicle = folder.resolve("..").resolve(folder.getFileName()).resolve("quarter.yaml");
        assertThat(ridewright("check", vehicle.toString(), scenario.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString().split("has no unit", -1)).hasSize(2);
        assertThat(err.toString()).endsWith("1 fault." + System.lineSeparator());
        assertThat(out.toString()).contains("plank.yaml: in order itself; the faults above are in files that it names");
    }

    @Test
    void aVehicleFileCannotBeRunAndIsSaidToBeOne() throws IOException {
        written("20 kN/m");
        assertThat(ridewright("run", folder.resolve("quarter.yaml").toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString())
                .contains("this is a vehicle file", "name it in a scenario", "1 fault; nothing was run.");
    }

    @Test
    void theSpeedIsShownAsTheScenarioHasIt() throws IOException {
        Path scenario = written("20 kN/m");
        Files.writeString(scenario, SCENARIO.replace("10 km/h", "6 mph ± 1 mph (estimated)"));
        Path into = folder.resolve("results");
        assertThat(ridewright("run", scenario.toString(), "--into", into.toString()))
                .isZero();
        assertThat(out.toString()).contains("6 mph").doesNotContain("km/h");
        assertThat(into.resolve("traces").resolve("test-quarter-driver-plank-6-mph.csv"))
                .exists();
    }

    @Test
    void aCrossCheckNamesEachRideTest() throws IOException {
        Path scenario = written("20 kN/m");
        assertThat(ridewright("run", "--cross-check", scenario.toString())).isZero();
        assertThat(out.toString()).containsPattern("\\de-\\d\\d  Test quarter, driver, plank, 10 km/h");
    }

    @Test
    void aSoundFileIsInOrderWithOrWithoutItsEnding() throws IOException {
        written("20 kN/m");
        assertThat(ridewright("check", folder.resolve("quarter").toString())).isZero();
        assertThat(out.toString()).contains("in order");
    }

    @Test
    void aWrongCommandLineIsRefusedWithItsOwnCode() {
        assertThat(ridewright("fly")).isEqualTo(2);
        assertThat(ridewright("run")).isEqualTo(2);
        assertThat(ridewright("--help")).isZero();
    }

    @Test
    void aMissingFileIsAFaultOfTheInput() {
        assertThat(ridewright("run", folder.resolve("nowhere.yaml").toString())).isEqualTo(ExitCode.BAD_INPUT);
    }
}
