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

/** A comparison says at which frequencies two things differ, in sentences, a figure and tables, and claims no band that a ride does not resolve. */
class StudyBandsTest {
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
            seats: [{name: driver, at: {behind front axle: 0 m, above ground: 1 m}, cushion: {rate: 30 kN/m, damping ratio: 0.3, mass: 2 kg}}]
            load cases: [{name: alone, aboard: [{person: driver, mass: 70 kg, seat: driver}]}]
            """;

    private static final String SCENARIO = """
            scenario: Gravel
            vehicles: [{file: quarter.yaml, load cases: [alone], speeds: [20 km/h]}]
            road:
              name: lane
              surfaces: [{spectrum: {ground: gravel, seed: 1}}]
            duration: DURATION
            """;

    private static final String STUDY = """
            study: Seats
            base: gravel.yaml
            answers: [{measure: third octaves, at: driver}]
            compare:
              draws: 12
              variants:
                - called: cushion
                - called: board
                  with: {"vehicles[0].vehicle.seats[*].cushion": ""}
            answer:
              sentences: ["It is {bands}."]
              blanks: {bands: {bands: third octaves at driver, from: board, to: cushion}}
            """;

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void writeFiles() throws IOException {
        Files.writeString(folder.resolve("quarter.yaml"), VEHICLE);
        write("8 s", STUDY);
    }

    private void write(String duration, String study) throws IOException {
        Files.writeString(folder.resolve("gravel.yaml"), SCENARIO.replace("DURATION", duration));
        Files.writeString(folder.resolve("study.yaml"), study);
    }

    private int study() {
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(
                        "study",
                        folder.resolve("study.yaml").toString(),
                        "--into",
                        folder.resolve("results").toString());
    }

    @Test
    void aCushionKeepsOffWhatLiesFarAboveItsOwnFrequency() throws IOException {
        assertThat(study()).as(err.toString()).isZero();
        assertThat(out.toString())
                .containsPattern("It is lower from [\\d.]+ to 80 Hz \\(most at .* Hz, by [\\d.]+ %; .* to .* %\\)");
        assertThat(folder.resolve("results/figures/frequencies-third-octaves-at-driver.png"))
                .isNotEmptyFile();
        List<String> rows = Files.readAllLines(folder.resolve("results/bands.csv"));
        assertThat(rows.get(0)).startsWith("answer,ride test,band (Hz),thing,median (m/s²)");
        assertThat(rows).anyMatch(row -> row.startsWith("third octaves at driver,") && row.contains(",80.0,board,"));
        assertThat(Files.readString(folder.resolve("results/report.html"))).contains("In third octaves");
    }

    @Test
    void bandsThatTheRideDoesNotResolveAreEmpty() throws IOException {
        assertThat(study()).as(err.toString()).isZero();
        List<String> rows = Files.readAllLines(folder.resolve("results/runs.csv"));
        assertThat(rows.get(0)).contains("third octaves at driver, 0.5 Hz", "third octaves at driver, 31.5 Hz");
        assertThat(rows.get(1)).contains(",,,,,");
        // 8 s: lines of an eighth of a hertz, three of which fit into the band of 2 Hz and not into that of 1.6 Hz
        List<String> bands = Files.readAllLines(folder.resolve("results/bands.csv"));
        assertThat(bands).anyMatch(row -> row.contains(",2.0,board,")).noneMatch(row -> row.contains(",1.6,board,"));
    }

    @Test
    void bandsAreRefusedWhereNothingIsCompared() throws IOException {
        write("8 s", """
                study: Seats
                base: gravel.yaml
                answers: [third octaves]
                uncertainty: {draws: 8}
                """);
        assertThat(study()).isNotZero();
        assertThat(err.toString()).contains("third octaves", "compares nothing", "heave, jolt and buzz");
    }

    @Test
    void aBlankOfBandsNeedsAnAnswerInBands() throws IOException {
        write("8 s", STUDY.replace("{measure: third octaves, at: driver}", "a_w"));
        assertThat(study()).isNotZero();
        assertThat(err.toString()).contains("needs an answer in third octaves");
    }
}
