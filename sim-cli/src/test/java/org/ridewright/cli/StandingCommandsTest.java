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

/** The commands {@code modes} and {@code loads}. */
class StandingCommandsTest {
    private static final String QUARTER = """
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

    private static final String CART = """
            vehicle: Test <cart>
            body: {mass: 250 kg, centre of mass: {ahead of front axle: 0.05 m, above ground: 1 m}, outline: {length: 2 m, width: 1.2 m, height: 0.6 m}}
            axles:
              - kind: beam
                track: 1.4 m
                unsprung mass: 90 kg
                wheels: {diameter: 1.2 m, tyre: iron}
                springs:
                  - kind: half-elliptic leaf
                    apart: 0.9 m
                    leaves: {pack: [{number: 6, width: 45 mm, thickness: 6 mm}], length: 1 m, allowable stress: 200 MPa}
                    friction: {share of load: 0.05}
                    bump stop: {clearance: 30 mm, rate: 300 kN/m, measured with: empty}
            hitches:
              - {name: shafts, at: {ahead of front axle: 1.8 m, above ground: 1 m}, rate: 15 kN/m, damping: 300 N s/m, level with: empty}
            coordinates: [surge, sway]
            seats: [{name: box, at: {behind front axle: 0 m, above ground: 1.5 m}, cushion: in good condition}]
            load cases:
              - {name: empty, aboard: []}
              - {name: driver, aboard: [{person: driver, mass: 80 kg, seat: box}, {cargo: sacks, mass: 250 kg, at: {behind front axle: 0.3 m, above ground: 1.2 m}}]}
            """;

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int execute(String yaml, String command, String... more) throws IOException {
        Path file = folder.resolve("vehicle.yaml");
        Files.writeString(file, yaml);
        String[] fixed = {
            command, file.toString(), "--into", folder.resolve("out").toString()
        };
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(Stream.concat(Stream.of(fixed), Stream.of(more)).toArray(String[]::new));
    }

    private String written(String name) throws IOException {
        return Files.readString(folder.resolve("out").resolve(name));
    }

    @Test
    void modesOfAQuarterVehicleAreItsRideAndItsHop() throws IOException {
        assertThat(execute(QUARTER, "modes")).as(err.toString()).isEqualTo(ExitCode.DONE);
        assertThat(out.toString())
                .contains("bounce", "wheel hop", "no dry friction", "Report: ")
                .doesNotContain("springs locked");
        assertThat(written("report.html")).contains("<svg", "wheel hop");
        assertThat(written("metrics.json")).contains("\"natural frequency\"", "\"dry friction\" : false");
        assertThat(folder.resolve("out/figures/test-quarter-empty-shapes-sliding.png"))
                .isNotEmptyFile();
        assertThat(folder.resolve("out/figures/test-quarter-empty-swings.png")).doesNotExist();
    }

    @Test
    void modesOfACartInShaftsTellSlidingAndLockedAndItsRollingAlong() throws IOException {
        assertThat(execute(CART, "modes", "--speed", "5 mph", "--amplitude", "3 mm"))
                .as(err.toString())
                .isEqualTo(ExitCode.DONE);
        assertThat(out.toString())
                .contains("springs sliding", "springs locked", "wheels rolling freely", "rolling along");
        assertThat(written("report.html"))
                .contains("springs sliding, wheels rolling freely", "usually counts", "“pitch”");
        assertThat(written("report.html")).contains("Test &lt;cart&gt;").doesNotContain("Test <cart>");
        assertThat(written("metrics.json")).contains("by harmonic balance", "0.003");
        assertThat(folder.resolve("out/figures/test-cart-driver-swings.pdf")).isNotEmptyFile();
    }

    @Test
    void loadsTellWhatIsOverloadedAndWhatTipsUp() throws IOException {
        assertThat(execute(CART, "loads")).as(err.toString()).isEqualTo(ExitCode.DONE);
        assertThat(out.toString())
                .contains("shafts", "allowable MPa", "stands on its bump stop", "of its allowable stress")
                .contains("heavy at its tail");
        assertThat(written("report.html")).contains("nobody belongs beneath", "Leaf springs");
        assertThat(written("metrics.json")).contains("\"allowable stress\"", "\"travel left to bump stop\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 mm", "-2 mm", "5 kg", "much"})
    void amplitudesThatAreNoneAreRefused(String amplitude) throws IOException {
        assertThat(execute(QUARTER, "modes", "--amplitude=" + amplitude)).isEqualTo(2);
        assertThat(err.toString()).contains("--amplitude");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void aFileThatIsNoVehicleIsRefused() throws IOException {
        assertThat(execute("scenario: x\n", "loads")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(execute("vehicle: x\n", "modes")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(folder.resolve("out")).doesNotExist();
    }
}
