package org.ridewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalibrateCommandTest {
    private static final String SCALES = """
            measurements: Scales <only>
            vehicle: vehicle.yaml
            facts:
              - weights:
                  with: empty
                  scales: [{axle: front, shows: 158 kg ± 1 kg}, {axle: rear, shows: 171 kg ± 1 kg}]
              - weights:
                  with: two aboard
                  keep back: yes
                  scales: [{axle: front, shows: 229 kg ± 1 kg}, {axle: rear, shows: 243 kg ± 1 kg}]
            """;

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int calibrate(String measurements) throws IOException {
        Path vehicle = folder.resolve("vehicle.yaml");
        Files.copy(Path.of("..", "scenarios", "vehicles", "phaeton.yaml"), vehicle);
        Path measured = folder.resolve("yard.yaml");
        Files.writeString(measured, measurements);
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(
                        "calibrate",
                        vehicle.toString(),
                        measured.toString(),
                        "--into",
                        results().toString());
    }

    private Path results() {
        return folder.resolve("results");
    }

    @Test
    void theCalibratedFileStandsBesideReportFiguresAndNumbers() throws IOException {
        assertThat(calibrate(SCALES)).as(err::toString).isZero();
        Path file = results().resolve("vehicle-calibrated.yaml");
        assertThat(Files.readString(file))
                .contains("# A light carriage, invented")
                .contains("(calibrated)")
                .contains("calibration:");
        assertThat(results().resolve("figures/measured-predicted.png")).exists();
        assertThat(results().resolve("figures/values.svg")).exists();
        assertThat(results().resolve("figures/correlation.pdf")).exists();
        String page = Files.readString(results().resolve("report.html"));
        assertThat(page)
                .contains("Scales &lt;only&gt;")
                .contains("Kept back and predicted")
                .contains("What the measurements cannot tell")
                .contains("nobody beneath a vehicle");
        JsonNode root =
                new ObjectMapper().readTree(results().resolve("metrics.json").toFile());
        assertThat(root.get("data")).hasSize(4);
        assertThat(root.get("unknowns").get(0).get("path").asText()).isEqualTo("body.mass");
        assertThat(root.get("unknowns").get(0).get("standard error").asDouble()).isBetween(1.0, 5.0);
        assertThat(Files.readAllLines(results().resolve("data.csv"))).hasSize(5);
        assertThat(out.toString()).contains("narrower by", "kept back", "Report: ");
        // the file that was written can be taken further
        StringWriter checked = new StringWriter();
        assertThat(Main.commandLine(new PrintWriter(checked, true), new PrintWriter(err, true))
                        .execute("check", file.toString()))
                .isZero();
    }

    @Test
    void measurementsThatTellNothingAreRefusedAndNothingIsWritten() throws IOException {
        int code =
                calibrate(SCALES.replace("facts:", "unknowns: [\"axles[front].springs[0].bump stop.rate\"]\nfacts:"));
        assertThat(code).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("tell nothing of what is sought");
        assertThat(results()).doesNotExist();
    }

    @Test
    void everythingKeptBackIsRefused() throws IOException {
        assertThat(calibrate(SCALES.replace("with: empty", "with: empty\n      keep back: yes")))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("nothing was measured that could be fitted");
    }

    @Test
    void damagedMeasurementsAreRefusedWithTheirPlace() throws IOException {
        assertThat(calibrate(SCALES.replace("158 kg ± 1 kg", "158 stone-ish"))).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("yard.yaml:6").contains("158 stone-ish");
        assertThat(results()).doesNotExist();
    }

    @Test
    void aLoadCaseThatTheVehicleLacksIsRefused() throws IOException {
        assertThat(calibrate(SCALES.replace("with: two aboard", "with: three aboard")))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("three aboard");
    }

    @Test
    void anUnknownThatTheFileLacksIsRefused() throws IOException {
        assertThat(calibrate(SCALES.replace("facts:", "unknowns: [body.weight]\nfacts:")))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("body.weight");
    }
}
