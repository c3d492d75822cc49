package org.ridewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.dynamics.RideException;

class FailuresTest {
    /** A mass on one wheel; its coil is far too soft at 1 kN/m. */
    private static final String CART = """
            vehicle: Cart
            layout: quarter
            body: {mass: 300 kg}
            axles:
              - name: wheel
                behind front axle: 0 m
                unsprung mass: 40 kg
                wheels: {diameter: 0.6 m, tyre: pneumatic, path: disc, contact rate: 180 kN/m, contact damping ratio: 0.1}
                springs: [{name: coil, kind: coil, rate: %s}]
                dampers: [{name: damper, bump: 1 kN s/m, rebound: 2 kN s/m}]
            seats: [{name: seat, at: {behind front axle: 0 m, above ground: 0.8 m}}]
            load cases:
              - {name: one, aboard: [{person: rider, mass: 75 kg, seat: seat}]}
              - {name: none}
            """;

    private static final String PLANK = """
            scenario: %s
            vehicles: [{file: cart.yaml, load cases: [one], speeds: [10 km/h]}]
            road:
              name: lane
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

    private Path scenario(String name, String rate) throws IOException {
        Files.writeString(folder.resolve("cart.yaml"), CART.formatted(rate));
        return Files.writeString(folder.resolve(name + ".yaml"), PLANK.formatted(name));
    }

    private String report(Throwable failure, boolean trace) {
        StringWriter text = new StringWriter();
        Failures.report(failure, new PrintWriter(text, true), trace);
        return text.toString();
    }

    @Test
    void aRunThatFailsLeavesNothingBehind() throws IOException {
        Path scenario = scenario("jump", "20 kN/m");
        Path cart = folder.resolve("cart.yaml");
        Files.writeString(cart, Files.readString(cart).replace("path: disc", "path: point"));
        Path into = folder.resolve("out").resolve("jump");
        assertThat(ridewright("run", scenario.toString(), "--into", into.toString()))
                .isEqualTo(ExitCode.FAILED_RUN);
        assertThat(err.toString()).contains("point follower").doesNotContain("\tat ");
        try (Stream<Path> left = Files.walk(folder.resolve("out"))) {
            assertThat(left.filter(Files::isRegularFile)).isEmpty();
        }
    }

    @Test
    void aVehicleThatCannotStandIsAFaultOfItsFileForRunAsForCheck() throws IOException {
        Path scenario = scenario("soft", "1 kN/m");
        assertThat(ridewright("run", scenario.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(ridewright("check", scenario.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("falls through its springs");
    }

    @Test
    void checkTellsOfEachLoadCase() throws IOException {
        scenario("soft", "1 kN/m");
        assertThat(ridewright("check", folder.resolve("cart.yaml").toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("load case 'one'", "load case 'none'");
    }

    @Test
    void faultsOfAllScenariosAreToldBeforeAnyRuns() throws IOException {
        Path sound = scenario("sound", "20 kN/m");
        Path missing = folder.resolve("missing.yaml");
        Path garbled = Files.writeString(folder.resolve("garbled.yaml"), "scenario: [");
        assertThat(ridewright("run", sound.toString(), missing.toString(), garbled.toString()))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("missing.yaml", "garbled.yaml", "2 faults; nothing was run.");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void oneFolderForSeveralScenariosIsAMisuse() {
        assertThat(ridewright("run", "a", "b", "--into", folder.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("--into names the folder of one scenario, got 2 scenarios");
    }

    @Test
    void aFileInTheWayOfTheResultsIsKept() throws IOException {
        Path scenario = scenario("sound", "20 kN/m");
        Path into = Files.writeString(folder.resolve("notes"), "mine");
        assertThat(ridewright("run", scenario.toString(), "--into", into.toString()))
                .isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(into).hasContent("mine");
    }

    @Test
    void everyFailureIsOneSentenceUnlessItsTraceIsWanted() {
        assertThat(report(new UncheckedIOException(new AccessDeniedException("shelf")), false))
                .isEqualToIgnoringNewLines("The results were not written: shelf may not be written by this user.");
        assertThat(report(new IOException("No space left"), false))
                .isEqualToIgnoringNewLines("The results were not written: No space left.");
        assertThat(report(new RideException("it fell."), false))
                .isEqualToIgnoringNewLines("The run was given up: it fell.");
        assertThat(report(new IllegalStateException("odd"), false).lines()).hasSize(1);
        assertThat(report(new IllegalStateException("odd"), true)).contains("\tat ");
    }

    @Test
    void eachKindOfFailureHasACodeOfItsOwn() {
        PrintWriter nowhere = new PrintWriter(new StringWriter());
        assertThat(Stream.of(new RideException("x"), new IOException("x"), new IllegalStateException("x"))
                        .map(f -> Failures.report(f, nowhere, false)))
                .containsExactly(ExitCode.FAILED_RUN, ExitCode.NOT_WRITTEN, ExitCode.DEFECT);
    }

    @Test
    void theHelpListsTheExitCodes() {
        assertThat(ridewright("--help")).isZero();
        assertThat(out.toString())
                .contains("3    a file has faults", "70   a defect")
                .doesNotContain("--trace");
        assertThat(ridewright("--version")).isZero();
    }
}
