package org.ridewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FieldSheetCommandTest {
    private static final String QUARTER = """
            vehicle: One wheel
            layout: quarter
            body: {mass: 300 kg ± 5 kg (weighed)}
            axles:
              - name: wheel
                unsprung mass: 40 kg (estimated)
                wheels: {diameter: 0.6 m, tyre: pneumatic}
                springs: [{name: coil, kind: coil, rate: %s}]
                dampers: [{name: damper, bump: 1 kN s/m, rebound: 2 kN s/m}]
            """;

    private static final String ROLL = """
            vehicle: Rear end
            layout: half in roll
            body:
              mass: 520 kg
              centre of mass: {above ground: 0.58 m}
              roll inertia: 190 kg m² (estimated)
            axles:
              - kind: beam
                track: 1.32 m
                unsprung mass: 98 kg
                wheels: {diameter: 0.6 m, tyre: pneumatic, contact rate: 190 N/mm}
                springs: [{kind: coil, apart: 0.94 m, rate: 19 N/mm}]
                dampers: [{apart: 0.9 m, damping: 1.4 kN s/m}]
            """;

    private static final String PITCH = """
            vehicle: One side of a wagon
            layout: half in pitch
            body:
              mass: 400 kg
              centre of mass: {behind front axle: 1.1 m, above ground: 1.2 m}
              pitch radius of gyration: 0.9 m (estimated)
            axles:
              - name: front
                unsprung mass: 55 kg
                wheel: {diameter: 36 in, tyre: iron}
                springs: [{kind: half-elliptic leaf, rate: 90 N/mm, friction: {share of load: 8 %}}]
              - name: rear
                behind front axle: 2 m
                unsprung mass: 65 kg
                wheel: {diameter: 44 in, tyre: iron}
                springs: [{kind: half-elliptic leaf, rate: 90 N/mm, friction: {share of load: 8 %}}]
            seats:
              - {name: driver, at: {ahead of front axle: 0.1 m, above ground: 1.7 m}}
            load cases:
              - {name: driver alone, aboard: [{person: driver, mass: 75 kg, seat: driver}]}
            """;

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int fieldsheet(String... arguments) {
        String[] all = new String[arguments.length + 1];
        all[0] = "fieldsheet";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(all);
    }

    @Test
    void withoutAVehicleABlankSheetIsMade() {
        Path into = folder.resolve("blank");
        assertThat(fieldsheet("--into", into.toString())).isZero();
        assertThat(into.resolve("fieldsheet.pdf")).isNotEmptyFile();
        assertThat(into.resolve("report.html")).isNotEmptyFile();
        assertThat(into.resolve("metrics.json")).doesNotExist();
        assertThat(out.toString()).endsWith("report.html" + System.lineSeparator());
    }

    @ParameterizedTest
    @ValueSource(strings = {QUARTER, ROLL, PITCH})
    void everyLayoutGetsASheetThatSaysWhatToMeasureFirst(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("vehicle.yaml"), text.replace("%s", "20 kN/m ± 10 %"));
        Path into = folder.resolve("sheet");
        assertThat(fieldsheet(file.toString(), "--into", into.toString())).isZero();
        assertThat(into.resolve("fieldsheet.pdf")).isNotEmptyFile();
        assertThat(Files.readString(into.resolve("metrics.json"))).contains("uncertain values", "\"mean share\"");
        assertThat(Files.readString(into.resolve("report.html"))).contains("What to measure first");
        assertThat(out.toString()).contains("not yet measured", "% of variance");
    }

    @Test
    void aDamagedVehicleFileIsRefusedAtItsPlaceAndNothingIsWritten() throws IOException {
        Path file = Files.writeString(folder.resolve("vehicle.yaml"), QUARTER.formatted("20 kN"));
        Path into = folder.resolve("sheet");
        assertThat(fieldsheet(file.toString(), "--into", into.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("vehicle.yaml:8", "rate");
        assertThat(into).doesNotExist();
    }

    @Test
    void aScenarioIsNoVehicle() throws IOException {
        Path file = Files.writeString(folder.resolve("scenario.yaml"), "scenario: A ride\n");
        assertThat(fieldsheet(file.toString(), "--into", folder.resolve("sheet").toString()))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("scenario file");
    }
}
