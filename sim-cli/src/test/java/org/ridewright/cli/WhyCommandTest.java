package org.ridewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On a quarter vehicle, which rides in milliseconds. */
class WhyCommandTest {
    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void writeFiles() throws IOException {
        Files.writeString(folder.resolve("quarter.yaml"), PlankQuarter.VEHICLE);
        Files.writeString(folder.resolve("plank.yaml"), PlankQuarter.SCENARIO);
    }

    private int why(String... options) {
        List<String> all = new ArrayList<>(List.of(
                "why",
                folder.resolve("quarter").toString(),
                "--draws",
                "20",
                "--into",
                folder.resolve("out").toString()));
        all.addAll(List.of(options));
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(all.toArray(String[]::new));
    }

    private JsonNode metrics() throws IOException {
        return new ObjectMapper().readTree(folder.resolve("out/metrics.json").toFile());
    }

    @Test
    void theUsualRideOfAVehicleWithoutRidersIsJudgedByItsPeak() throws IOException {
        assertThat(why()).as(err.toString()).isEqualTo(ExitCode.DONE);
        assertThat(out.toString())
                .contains("Left as it is: friction (none of its springs has dry friction)")
                .contains("Plank", "The peak would be ")
                .endsWith("Report: " + folder.resolve("out/report.html") + System.lineSeparator());
        assertThat(metrics().get("answers"))
                .hasSize(2)
                .allMatch(a -> a.get("name").asText().equals("peak"));
        assertThat(Files.readString(folder.resolve("out/report.html")))
                .contains("Methods, for print")
                .contains("JCGM 100:2008")
                .contains("load 'laden', 20 draws, seed 1".replace("'", "&#39;"));
        assertThat(folder.resolve("out/figures/why.png")).exists();
    }

    @Test
    void itRidesAScenarioOfItsOwnAndSwapsWhatTheUserSays() throws IOException {
        int code = why(
                "--ride",
                folder.resolve("plank").toString(),
                "--load",
                "empty",
                "--swap",
                "spring: axles[0].springs[0].rate = × 0.5",
                "--without",
                "wheel size",
                "--whole");
        assertThat(code).as(err.toString()).isEqualTo(ExitCode.DONE);
        List<String> names = new ArrayList<>();
        metrics().get("swaps").forEach(s -> names.add(s.get("name").asText()));
        assertThat(names).containsExactly("tyres", "dampers", "spring");
        JsonNode answer = metrics().get("answers").get(0);
        double sum = 0;
        for (JsonNode share : answer.get("share of all together")) {
            sum += share.get("as written").asDouble();
            assertThat(share.get("5 %").isNumber()).isTrue();
        }
        assertThat(sum)
                .isCloseTo(
                        answer.get("all together").get("as written").asDouble(),
                        org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void whatCannotBeSwappedIsRefusedAndNothingIsWritten() {
        assertThat(why("--swap", "seat: seats[0].cushion = gone hard")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("the swap 'seat' cannot be made");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void tooFewDrawsAndASpeedBesideAScenarioAreMisunderstood() {
        assertThat(why("--draws", "3")).isEqualTo(2);
        assertThat(why("--ride", "x", "--speed", "3 m/s")).isEqualTo(2);
        assertThat(why("--speed", "0.001 km/h")).isEqualTo(2);
        assertThat(err.toString()).contains("from 1 to 200 km/h");
    }

    @Test
    void alternativesStandInATextFileWithWordsOfTheirOwn() throws IOException {
        Path mine = Files.writeString(
                folder.resolve("mine.txt"),
                "# mine\nspring (a coil half as stiff): axles[0].springs[0].rate = x 0.5\n");
        int code = why("--ride", folder.resolve("plank").toString(), "--swaps", mine.toString());
        assertThat(code).as(err.toString()).isEqualTo(ExitCode.DONE);
        assertThat(out.toString()).containsIgnoringCase("with a coil half as stiff by");
        assertThat(Files.readString(folder.resolve("out/report.html")))
                .contains("Of the scenario itself 1 value was drawn with them.")
                .contains("Left out: a_w, VDV");
        Files.writeString(mine, "\nspring half as stiff\n");
        assertThat(why("--swaps", mine.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("mine.txt:2: 'spring half as stiff' is no swap");
    }

    @Test
    void whatWasRiddenIsKeptBesideTheResultsAndNotRiddenAgain() throws IOException {
        assertThat(why("--ride", folder.resolve("plank").toString())).isEqualTo(ExitCode.DONE);
        Path journal = folder.resolve("out.runs/whole.journal");
        String first = Files.readString(journal);
        String metrics = metrics().toString();
        assertThat(why("--ride", folder.resolve("plank").toString())).isEqualTo(ExitCode.DONE);
        assertThat(Files.readString(journal)).isEqualTo(first);
        assertThat(metrics()).hasToString(metrics);
    }
}
