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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BounceCommandTest {
    private static final String PHAETON =
            Path.of("..", "scenarios", "vehicles", "phaeton.yaml").toString();

    private static final String QUARTER = """
            vehicle: Test <quarter>
            layout: quarter
            body: {mass: 300 kg}
            axles:
              - name: wheel
                behind front axle: 0 m
                unsprung mass: 40 kg
                wheels: {diameter: 0.6 m, tyre: pneumatic, path: disc, contact rate: 180 kN/m, contact damping ratio: 0.1}
                springs: [{name: coil, kind: coil, rate: 20 kN/m}]
                dampers: [{name: damper, bump: 400 N s/m, rebound: 400 N s/m}]
            load cases: [{name: empty, aboard: []}]
            """;

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int bounce(String... arguments) {
        String[] all = new String[arguments.length + 1];
        all[0] = "bounce";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(all);
    }

    private String into() {
        return folder.resolve("results").toString();
    }

    private String quarter() throws IOException {
        return Files.writeString(folder.resolve("quarter.yaml"), QUARTER).toString();
    }

    @Test
    void everyLoadCaseIsBouncedInFourWaysAndToldBesideBothNaturalFrequencies() throws IOException {
        assertThat(bounce(PHAETON, "--into", into())).isZero();
        assertThat(out.toString())
                .contains("empty", "two aboard", "front", "rear", "pitch", "roll", "sliding", "locked", "Report: ");
        Path results = folder.resolve("results");
        String page = Files.readString(results.resolve("report.html"));
        assertThat(page)
                .contains(
                        "Two aboard: front",
                        "What friction does to the ride frequency",
                        "chocks tight",
                        "wheels held by the brake",
                        "Natural, wheels held, sliding");
        assertThat(out.toString()).contains("wheels held by the brake");
        for (String figure : List.of("ride-frequencies", "bounce-empty", "bounce-two-aboard")) {
            for (String ending : List.of(".svg", ".png", ".pdf")) {
                assertThat(results.resolve("figures/" + figure + ending)).exists();
            }
            assertThat(page).contains("id=\"" + figure + "\"");
        }
        assertThat(Files.readAllLines(results.resolve("traces/2-two-aboard-roll.csv"))
                        .get(0))
                .contains("time (s)", "roll (rad)", "front height (m)");
        JsonNode numbers =
                new ObjectMapper().readTree(results.resolve("metrics.json").toFile());
        assertThat(numbers.get("load cases")).hasSize(2);
        assertThat(numbers.get("load cases").get(0).get("tests")).hasSize(4);
    }

    @Test
    void aVehicleOfOneWheelIsBouncedInOneWay() throws IOException {
        assertThat(bounce(quarter(), "--depth", "20 mm", "--into", into())).isZero();
        assertThat(out.toString()).contains("front", "20.0").doesNotContain("rear", "roll", "pitch");
        assertThat(Files.readString(folder.resolve("results/report.html"))).contains("Test &lt;quarter&gt;");
    }

    @Test
    void aLiftIsADrop() throws IOException {
        assertThat(bounce(quarter(), "--lift", "10 mm", "--into", into())).isZero();
        assertThat(Files.readString(folder.resolve("results/report.html"))).contains("lifted by 10.0 mm");
    }

    @Test
    void whatCannotBeUnderstoodIsRefusedBeforeAnythingRuns() throws IOException {
        assertThat(bounce(quarter(), "--push", "250 mm")).isEqualTo(2);
        assertThat(bounce(quarter(), "--depth", "0 mm")).isEqualTo(2);
        assertThat(bounce(quarter(), "--lift", "5 mm", "--push", "20 N")).isEqualTo(2);
        assertThat(bounce(quarter(), "--load", "laden")).isEqualTo(2);
        assertThat(err.toString())
                .contains("--push", "--depth must be above 0", "--lift", "no load case 'laden'", "empty");
    }

    @Test
    void aLiftThatTheVehicleCannotHaveLeavesNoResults() throws IOException {
        assertThat(bounce(quarter(), "--lift", "2 m", "--into", into())).isEqualTo(4);
        assertThat(err.toString()).contains("not even all its weight");
        assertThat(folder.resolve("results")).doesNotExist();
    }

    @Test
    void anOptionOfTheOtherKindIsRefused() throws IOException {
        assertThat(bounce(quarter(), "--band", "1-4")).isEqualTo(2);
        assertThat(bounce("some.csv", "--push", "250 N")).isEqualTo(2);
        assertThat(err.toString())
                .contains("--band is an option of a log, got a vehicle", "--push is an option of a vehicle, got a log");
    }
}
