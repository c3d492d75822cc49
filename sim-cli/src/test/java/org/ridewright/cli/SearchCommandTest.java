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

/** Searches that keep limits, from the file to the page: less damping spares the body the plank's blow, and lets it swing the longer. */
class SearchCommandTest {
    private static final String VEHICLE = """
            vehicle: Test quarter
            layout: quarter
            body: {mass: 300 kg}
            axles:
              - name: wheel
                behind front axle: 0 m
                unsprung mass: 40 kg
                wheels: {diameter: 0.6 m, tyre: pneumatic, path: disc, contact rate: 180 kN/m, contact damping ratio: 0.15}
                springs: [{name: coil, kind: coil, rate: 20 kN/m}]
                dampers: [{name: strut, bump: 1200 N s/m, rebound: 1200 N s/m}]
            load cases: [{name: empty, aboard: []}]
            """;

    private static final String SCENARIO = """
            scenario: A plank
            vehicles: [{file: quarter.yaml, speeds: [10 km/h]}]
            read off:
              - {point: floor, at: {behind front axle: 0 m, above ground: 0.5 m}}
            road:
              name: plank
              obstacles: [{plank: {at: 1 m, height: 30 mm, length: 150 mm}}]
            duration: 8 s
            """;

    private static final String HEAD = "study: Test\nbase: plank.yaml\nanswers: [peak, swing, cycles to rest]\n";
    private static final String DAMPING = "{vary: [\"vehicles[0].vehicle.axles[0].dampers[0].bump\", "
            + "\"vehicles[0].vehicle.axles[0].dampers[0].rebound\"], called: damping, from: × 0.2, to: × 3}";
    private static final String RATE =
            "{vary: \"vehicles[0].vehicle.axles[0].springs[0].rate\", called: rate, from: × 0.5, to: × 2}";
    private static final String ANSWER = """
            answer:
              sentences: ["Damping {damping}, kept by {binding}: {cycles} cycles, {change}."]
              blanks:
                damping: {found: damping}
                binding: {binding: limits}
                cycles: {value: cycles to rest, of: found}
                change: {change: peak, from: as written, to: found}
            """;

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void writeFiles() throws IOException {
        Files.writeString(folder.resolve("quarter.yaml"), VEHICLE);
        Files.writeString(folder.resolve("plank.yaml"), SCENARIO);
    }

    private String page(String method) throws IOException {
        Files.writeString(folder.resolve("study.yaml"), HEAD + method);
        int exit = Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(
                        "study",
                        folder.resolve("study").toString(),
                        "--into",
                        folder.resolve("results").toString());
        assertThat(exit).as(err.toString()).isZero();
        String page = Files.readString(folder.resolve("results/report.html")).replace('\u00a0', ' ');
        assertThat(page + out).doesNotContain("NaN");
        return page;
    }

    private String json() throws IOException {
        return Files.readString(folder.resolve("results/study.json"));
    }

    @Test
    void theLeastDampingThatDoesNotWallowIsHeldByThatLimit() throws IOException {
        String page = page("search: {vary: " + DAMPING
                + ", best: least, provided: [{answer: cycles to rest, below: 2}]}\n" + ANSWER);

        assertThat(out.toString())
                .contains("The limit cycles to rest below 2 binds: it is 1.50 there")
                .contains("kept by the limit on cycles to rest: 1.5 cycles")
                .contains("Without limits, the best of the runs is damping × ")
                .contains("Within 1 % of that answer: damping from × ");
        assertThat(page).contains("a limit is broken", "provided cycles to rest below 2.", "What the search found");
        assertThat(json())
                .contains("\"binds\" : true", "\"must be\" : \"below\"", "\"keeps the limits\" : true")
                .contains("\"within 1 % of the best\"");
    }

    @Test
    void whereNothingKeepsTheLimitsThatIsSaidWithWhatComesNearest() throws IOException {
        String page = page("search: {vary: " + DAMPING
                + ", best: least, provided: [{answer: cycles to rest, below: 2}, {answer: swing, below: 1 mm}]}\n"
                + ANSWER);

        assertThat(page)
                .contains(
                        "runs keeps the limits (cycles to rest below 2 and swing below 1 mm). What comes nearest is damping")
                .contains("Damping none: nothing that was tried keeps the limits, and × ");
        assertThat(json()).contains("\"keeps the limits\" : false");
    }

    @Test
    void severalValuesKeepALimitToo() throws IOException {
        String page = page("search: {vary: [" + DAMPING + ", " + RATE
                + "], best: least, runs: 120, provided: [{answer: cycles to rest, below: 2}]}\n" + ANSWER);

        assertThat(page).contains("break a limit", "Deb 2000");
        assertThat(json()).contains("\"keeps the limits\" : true");
    }

    @Test
    void aSensitivityOfWhichManyRunsCannotBeRiddenTellsNothing() throws IOException {
        String page = page("sensitivity: {method: sobol indices, draws: 16, ranges: [" + RATE
                + ", {vary: \"vehicles[0].vehicle.body.mass\", called: mass, from: -300 kg, to: 300 kg}]}\n");

        assertThat(page).contains("What moves peak (", "is not told: ", "runs could not be ridden in full");
        assertThat(json()).contains("\"told\" : false");
    }
}
