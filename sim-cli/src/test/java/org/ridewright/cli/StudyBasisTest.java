package org.ridewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A page of a study names all that its numbers rest on. */
class StudyBasisTest {
    private static final String VEHICLE = """
            vehicle: Test quarter
            layout: quarter
            body: {mass: 300 kg ± 5 %}
            axles:
              - name: wheel
                behind front axle: 0 m
                unsprung mass: 40 kg ± 10 %
                wheels: {diameter: 0.6 m, tyre: pneumatic, path: disc, contact rate: 180 kN/m ± 10 %, contact damping ratio: 0.15}
                springs: [{name: coil, kind: coil, rate: 20 kN/m ± 8 %}]
                dampers: [{name: strut, bump: 1200 N s/m, rebound: 1200 N s/m}]
            load cases: [{name: laden, aboard: [{cargo: sand, mass: 100 kg}]}]
            """;

    private static final String SCENARIO = """
            scenario: A lane
            vehicles: [{file: quarter.yaml, speeds: [10 km/h]}]
            road:
              name: lane
              surfaces: [{spectrum: {ground: gravel, seed: 1}}]
            duration: 2 s
            """;

    private static final String SPEED = "vary: \"vehicles[0].speeds[0]\", called: speed, from: 4 mph, to: 10 mph";
    private static final String SEED =
            "ranges: [{vary: \"road.surfaces[0].spectrum.seed\", called: seed, from: 1, to: 100000}]";

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void writeFiles() throws IOException {
        Files.writeString(folder.resolve("quarter.yaml"), VEHICLE);
        Files.writeString(folder.resolve("lane.yaml"), SCENARIO);
    }

    /** The page. */
    private String ridden(String answers, String method) throws IOException {
        Files.writeString(
                folder.resolve("ask.yaml"),
                "study: Test\nbase: lane.yaml\nwith: {duration: 1 s}\nanswers: [" + answers + "]\n" + method + "\n");
        int code = Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(
                        "study",
                        folder.resolve("ask").toString(),
                        "--into",
                        folder.resolve("results").toString());
        assertThat(code).as(err.toString()).isZero();
        return Files.readString(folder.resolve("results/report.html")).replace('\u00a0', ' ');
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    sweep: {%speed, steps: 3} | Speed takes 3 steps, from 4 mph to 10 mph. | Runs take every step of speed (3 steps)
                    compare: {variants: [{called: one}, {called: soft, with: {"vehicles[0].vehicle.axles[0].springs[0].rate": × 0.5}}]} | springs[0].rate × 0.5. | ridden as written; tolerances are left out
                    compare: {draws: 4, variants: [{called: one}, {called: soft, with: {duration: 2 s}}]} | Variant “soft”: duration = 2 s. | 4 draws, Sobol&#39; points, seed 1
                    uncertainty: {draws: 4, method: latin hypercube, seed: 7, %seed} | another stretch of the same kind of ground | 4 draws, Latin hypercube, seed 7
                    uncertainty: {draws: 4} | Draws change no seed of a road | 4 draws, Sobol&#39; points, seed 1
                    sensitivity: {method: morris, trajectories: 2} | Varied: 4 values being uncertain | 2 trajectories, seed 1
                    sensitivity: {method: sobol indices, draws: 8} | Varied: 4 values being uncertain | 8 points, seed 1
                    search: {vary: {%speed}, best: least, runs: 8} | Sought: speed (from 4 mph to 10 mph). | narrowed from there by Brent
                    """)
    void pagesOfEveryMethodNameWhatWasRiddenWhatWasChangedAndHowToCite(String method, String rests, String printed)
            throws IOException {
        String page = ridden("peak", method.replace("%speed", SPEED).replace("%seed", SEED));

        assertThat(page)
                .contains("Study file ask.yaml, base lane.yaml, ridden by Ridewright")
                .contains("<td>Test quarter</td><td>laden</td><td>lane</td><td>10 km/h</td>")
                .contains("duration = 1 s", rests, printed)
                .contains("To cite:</strong> Ridewright", "./ridewright study ask.yaml")
                .doesNotContain(folder.toString());
        assertThat(Files.readString(folder.resolve("results/study.json")))
                .contains("\"base files\" : [ \"lane.yaml\" ]", "\"program\" : \"Ridewright");
    }

    @Test
    void aSeedThatIsDrawnIsSaidWithItsEnds() throws IOException {
        assertThat(ridden("peak", "uncertainty: {draws: 4, " + SEED + "}"))
                .contains("4 values being uncertain as their tolerances say, and seed (from 1 to 100000) being drawn");
        assertThat(Files.readString(folder.resolve("results/study.json"))).contains("\"seed\" : 1");
    }

    @Test
    void aLimitOnANumberThatNoRunHasIsSaidToBeNone() throws IOException {
        String page = ridden(
                "peak, cycles to rest",
                "search: {vary: {" + SPEED
                        + "}, answer: peak, best: least, looks: 3, runs: 5, provided: [{answer: cycles to rest, at most: 3}]}");

        assertThat(page)
                .contains("Cycles to rest has no value in any run; the limit, at most 3, cannot be kept or broken")
                .doesNotContain("comes nearest", "where ;", "<td>nearest</td>");
    }

    @Test
    void stepsOfARangeHaveNoMoreThanTwelveDigits() throws IOException {
        ridden("peak", "sweep: {vary: \"vehicles[0].speeds[0]\", called: speed, from: 4 km/h, to: 11 km/h, steps: 7}");
        List<String> runs = Files.readAllLines(folder.resolve("results/runs.csv"));

        assertThat(runs).anyMatch(row -> row.contains(",6.33333333333,") && row.contains(",6.33333333333 km/h,"));
    }
}
