package org.ridewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FrictionCommandTest {
    private static final String CART = """
            vehicle: Test <cart>
            body: {mass: 250 kg, centre of mass: {behind front axle: 0.8 m, above ground: 1 m}, outline: {length: 2 m, width: 1.2 m, height: 0.6 m}}
            axles:
              - {name: front, kind: beam, track: 1.4 m, unsprung mass: 70 kg, wheels: {diameter: 1 m, tyre: iron}, springs: [{name: spring, kind: half-elliptic leaf, apart: 0.9 m, rate: 20 kN/m, %s}]}
              - {name: rear, behind front axle: 1.6 m, kind: beam, track: 1.4 m, unsprung mass: 70 kg, wheels: {diameter: 1.2 m, tyre: iron}, springs: [{name: spring, kind: half-elliptic leaf, apart: 0.9 m, rate: 22 kN/m, %s}]}
            seats: [{name: box, at: {behind front axle: 0.4 m, above ground: 1.5 m}, cushion: in good condition}]
            load cases:
              - {name: driver, aboard: [{person: driver, mass: 80 kg, seat: box}]}
            """;
    private static final String DRY =
            CART.formatted("friction: {share of load: 0.06}", "friction: {share of load: 0.06}");

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int execute(String yaml, String... more) throws IOException {
        Path file = folder.resolve("vehicle.yaml");
        Files.writeString(file, yaml);
        String[] fixed = {
            "friction", file.toString(), "--into", folder.resolve("out").toString()
        };
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(Stream.concat(Stream.of(fixed), Stream.of(more)).toArray(String[]::new));
    }

    @Test
    void aDryCartGetsLoopsRingDownsWavesAndItsBestFriction() throws IOException {
        assertThat(execute(DRY, "--draws", "1", "--speed", "9 km/h", "--amplitude", "3 mm"))
                .as(err.toString())
                .isEqualTo(ExitCode.DONE);
        assertThat(out.toString())
                .contains("Loops", "Let go from 25 mm", "Sinusoidal road", "Gravel, by", "Den Hartog", "Report: ")
                .contains("On gravel ", "Behind a plank at 9 km/h ");
        String page = Files.readString(folder.resolve("out/report.html"));
        assertThat(page)
                .contains("<svg", "Test &lt;cart&gt;", "oiled", "With one draw")
                .doesNotContain("Test <cart>");
        assertThat(Files.readString(folder.resolve("out/metrics.json")))
                .contains("\"ring-downs\"", "\"trade-off\"", "\"amplitude below which no spring slides (m)\"");
        assertThat(folder.resolve("out/figures/test-cart-friction-best.png")).isNotEmptyFile();
        JsonNode metrics =
                new ObjectMapper().readTree(folder.resolve("out/metrics.json").toFile());
        assertThat(metrics.get("answer")).hasSize(2);
        // below its locked travel a spring loses nothing, to the last bit
        assertThat(metrics.findValues("area, simulated (J)"))
                .allMatch(area -> area.asDouble() == 0 || area.asDouble() > 1e-9)
                .anyMatch(area -> area.asDouble() == 0);
        for (JsonNode place : metrics.get("ring-downs")) {
            for (JsonNode rung : place.get("let go")) {
                double cycles = rung.get("cycles").asDouble();
                String unit = place.get("pressed").asText().equals("roll") ? " (rad)" : " (m)";
                assertThat(rung.get("turning points" + unit)).hasSize((int) (2 * cycles) + 1);
                assertThat(rung.get("cycles with held springs, as far as the run goes")
                                .asDouble())
                        .isGreaterThanOrEqualTo(cycles);
                boolean few = cycles < 2;
                assertThat(rung.get("swings shrink").isNull()).isEqualTo(few);
                assertThat(rung.has("why not")).isEqualTo(few);
            }
        }
    }

    @Test
    void springsWithoutFrictionLeaveNothingToVary() throws IOException {
        assertThat(execute(CART.formatted("mount height: 0.7 m", "mount height: 0.7 m")))
                .isNotEqualTo(ExitCode.DONE);
        assertThat(err.toString()).contains("none of its springs has dry friction", "friction: {share of load: 0.05");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    private static final String WHEELS = "wheels: {diameter: 0.9 m, tyre: iron, path: disc}";

    static List<Arguments> otherVehicles() {
        return List.of(
                Arguments.of("quarter", """
                        vehicle: Test quarter
                        layout: quarter
                        body: {mass: 300 kg}
                        axles:
                          - name: wheel
                            unsprung mass: 40 kg
                            %s
                            springs: [{kind: half-elliptic leaf, rate: 40 N/mm, friction: {share of load: 0.06}}]
                        """.formatted(WHEELS), "  body "),
                Arguments.of(
                        "two springs to a wheel, one an envelope, rubber beside leaves",
                        """
                        vehicle: Test half
                        layout: half in pitch
                        body: {mass: 300 kg, centre of mass: {behind front axle: 1 m, above ground: 1 m}}
                        axles:
                          - name: front
                            unsprung mass: 30 kg
                            %1$s
                            springs:
                              - {name: front leaf, kind: half-elliptic leaf, rate: 14 N/mm, friction: {share of load: 0.06}}
                              - {name: front rubber, kind: rubber, rate: 6 N/mm}
                          - name: rear
                            behind front axle: 2 m
                            unsprung mass: 30 kg
                            %1$s
                            springs:
                              - {name: rear leaf, kind: half-elliptic leaf, rate: 12 N/mm, friction: {share of load: 0.06, envelope length: 2 mm}}
                              - {name: rear second leaf, kind: half-elliptic leaf, rate: 8 N/mm, friction: {constant: 60 N}}
                        """.formatted(WHEELS),
                        "rear second leaf"),
                Arguments.of("seen from behind", """
                        vehicle: Test roll
                        layout: half in roll
                        body: {mass: 300 kg, centre of mass: {above ground: 1 m}}
                        axles:
                          - name: axle
                            kind: beam
                            track: 1.4 m
                            unsprung mass: 90 kg
                            %s
                            springs: [{kind: half-elliptic leaf, apart: 0.9 m, rate: 30 kN/m, friction: {share of load: 0.08}}]
                        """.formatted(WHEELS), "side "));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("otherVehicles")
    void anyLayoutThatRubsGetsAWholeReportWithoutANumberThatIsNone(String name, String yaml, String says)
            throws IOException {
        assertThat(execute(yaml, "--draws", "2", "--speed", "9 km/h", "--amplitude", "3 mm"))
                .as(err.toString())
                .isEqualTo(ExitCode.DONE);
        assertThat(out.toString())
                .contains("Gravel, by weighted acceleration at the centre of mass", "of 2", says)
                .doesNotContain("NaN", "null", "∞");
        assertThat(Files.readString(folder.resolve("out/report.html"))).doesNotContain("NaN", "Infinity");
    }

    @Test
    void optionsThatCannotBeAreRefused() throws IOException {
        assertThat(execute(DRY, "--draws", "0")).isEqualTo(2);
        assertThat(execute(DRY, "--load", "nobody")).isEqualTo(2);
        assertThat(execute(DRY, "--depth", "−1 mm")).isEqualTo(2);
        assertThat(execute(DRY, "--speed", "0.001 km/h")).isEqualTo(2);
        assertThat(execute(DRY, "--amplitude", "5 m")).isEqualTo(2);
        assertThat(execute(DRY, "--depth", "2 m", "--speed", "9 km/h")).isEqualTo(ExitCode.FAILED_RUN);
        assertThat(err.toString()).contains("from 1 to 200 km/h", "up to 200 mm", "by 2000 mm");
        assertThat(err.toString()).contains("--draws must be from 1", "no load case 'nobody'", "--depth");
    }
}
