package org.ridewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.study.Journal;

class StudyCommandTest {
    private static final String HEAD = "study: Test\nbase: plank.yaml\nanswers: [peak, swing]\n";
    private static final String SPEED = "vary: \"vehicles[0].speeds[0]\", called: speed, from: 4 km/h, to: 16 km/h";

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void writeFiles() throws IOException {
        Files.writeString(folder.resolve("quarter.yaml"), PlankQuarter.VEHICLE);
        Files.writeString(folder.resolve("plank.yaml"), PlankQuarter.SCENARIO);
        write(HEAD + "uncertainty: {draws: 20}\n");
    }

    private void write(String study) throws IOException {
        Files.writeString(folder.resolve("study.yaml"), study);
    }

    private int study(String into, String... options) {
        List<String> all =
                new ArrayList<>(List.of("study", folder.resolve("study").toString(), "--into"));
        all.add(folder.resolve(into).toString());
        all.addAll(List.of(options));
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(all.toArray(String[]::new));
    }

    private String read(String name) throws IOException {
        return Files.readString(folder.resolve(name)).replace('\u00a0', ' ');
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sweep: {" + SPEED + ", steps: 4}\n",
                "sweep: [{" + SPEED
                        + ", steps: 3}, {vary: \"road.obstacles[0].plank.height\", from: 10 mm, to: 40 mm, steps: 3}]\n",
                "sweep: {vary: \"vehicles[0].vehicle.axles[0].wheels.path\", values: [disc, footprint]}\n",
                "sweep: [{vary: \"vehicles[0].vehicle.axles[0].wheels.path\", values: [disc, footprint]}, {" + SPEED
                        + ", steps: 3}]\n",
                "compare: {between: load cases, draws: 4}\n",
                "compare: {variants: [{called: as it is}, {called: soft, with: {\"vehicles[0].vehicle.axles[0].springs[0].rate\": × 0.5}}]}\n",
                "uncertainty: {draws: 6, along: {" + SPEED + ", steps: 3}}\n",
                "uncertainty: {draws: 6, method: latin hypercube}\n",
                "sensitivity: {method: morris, trajectories: 3}\n",
                "sensitivity: {method: sobol indices, draws: 8}\n",
                "search: {vary: {" + SPEED + "}, best: least, runs: 14}\n",
                "search: {vary: {" + SPEED + "}, target: 5, runs: 14}\n",
                "search: {vary: [{" + SPEED
                        + "}, {vary: \"vehicles[0].vehicle.axles[0].springs[0].rate\", called: spring, from: × 0.5, to: × 2}], best: least, runs: 20}\n"
            })
    void everyMethodLeavesAReportFiguresATableAndNumbers(String method) throws IOException {
        write(HEAD + method);

        assertThat(study("results")).as(err.toString()).isZero();
        assertThat(out.toString()).contains("Report: ");
        assertThat(read("results/report.html"))
                .contains("<svg", "What was asked")
                .doesNotContain("NaN");
        assertThat(read("results/runs.csv")).startsWith("run,role,").contains("peak (m/s²),swing (mm),failure\n");
        assertThat(read("results/study.json")).contains("\"study\" : \"Test\"");
        try (Stream<Path> figures = Files.list(folder.resolve("results/figures"))) {
            assertThat(figures.map(f -> f.toString().replaceFirst(".*\\.", ""))).contains("svg", "png", "pdf");
        }
    }

    @Test
    void partsJoinedAreTheWholeToTheLastBit() throws IOException {
        assertThat(study("whole", "--threads", "1")).isZero();
        for (int part = 1; part <= 3; part++) {
            assertThat(study("joined", "--part", part + "/3", "--threads", "2")).isZero();
        }
        assertThat(folder.resolve("joined")).doesNotExist();
        assertThat(study("joined", "--join")).isZero();

        for (String file : List.of("runs.csv", "study.json", "report.html")) {
            assertThat(Files.readAllBytes(folder.resolve("joined/" + file)))
                    .as(file)
                    .isEqualTo(Files.readAllBytes(folder.resolve("whole/" + file)));
        }
    }

    @Test
    void whatIsMissingIsToldPartByPart() {
        assertThat(study("joined", "--part", "2/3")).isZero();
        assertThat(study("joined", "--join")).isEqualTo(ExitCode.FAILED_RUN);
        assertThat(err.toString()).contains("14 of 21 runs are missing", "7 of part 1/3", "7 of part 3/3");
        assertThat(folder.resolve("joined")).doesNotExist();
    }

    @Test
    void aStudyGoesOnFromWhatItsPartsHaveRidden() throws IOException {
        study("results", "--part", "1/2");
        long ridden = Files.size(folder.resolve("results.runs/part-1-of-2.journal"));
        assertThat(study("results")).isZero();

        assertThat(Files.size(folder.resolve("results.runs/part-1-of-2.journal")))
                .isEqualTo(ridden);
        assertThat(Files.readAllLines(folder.resolve("results.runs/whole.journal")))
                .hasSize(1 + 10);
    }

    @Test
    void aSecondTimeNothingIsRidden() throws IOException {
        study("results");
        byte[] journal = Files.readAllBytes(folder.resolve("results.runs/whole.journal"));
        byte[] table = Files.readAllBytes(folder.resolve("results/runs.csv"));
        study("results");

        assertThat(Files.readAllBytes(folder.resolve("results.runs/whole.journal")))
                .isEqualTo(journal);
        assertThat(Files.readAllBytes(folder.resolve("results/runs.csv"))).isEqualTo(table);
        assertThat(study("results", "--afresh")).isZero();
        assertThat(Files.readAllBytes(folder.resolve("results/runs.csv"))).isEqualTo(table);
    }

    @Test
    void aPartBegunAfreshLeavesTheOthersAlone() throws IOException {
        study("joined", "--part", "1/2");
        study("joined", "--part", "2/2");
        byte[] other = Files.readAllBytes(folder.resolve("joined.runs/part-2-of-2.journal"));
        byte[] own = Files.readAllBytes(folder.resolve("joined.runs/part-1-of-2.journal"));
        assertThat(study("joined", "--part", "1/2", "--afresh", "--threads", "1"))
                .isZero();

        assertThat(folder.resolve("joined.runs/part-2-of-2.journal")).hasBinaryContent(other);
        assertThat(Files.size(folder.resolve("joined.runs/part-1-of-2.journal")))
                .isEqualTo(own.length);
        assertThat(study("joined", "--join")).isZero();
    }

    @Test
    void runsThatAnotherProcessIsWritingAreNotForgotten() throws IOException {
        study("joined", "--part", "1/2");
        Path busy = folder.resolve("joined.runs/part-2-of-2.journal");
        try (Journal journal = Journal.open(busy, "Test")) {
            byte[] first = Files.readAllBytes(folder.resolve("joined.runs/part-1-of-2.journal"));
            assertThat(study("joined", "--afresh")).isEqualTo(ExitCode.NOT_WRITTEN);

            assertThat(err.toString()).contains("part-2-of-2.journal", "in use by another process");
            assertThat(folder.resolve("joined.runs/part-1-of-2.journal")).hasBinaryContent(first);
            assertThat(journal).isNotNull();
        }
    }

    @Test
    void aSearchThatWasEndedGoesOnWithTheRunsThatItHas() throws IOException {
        write(HEAD + "search: {vary: {" + SPEED + "}, best: least, runs: 14}\n");
        study("results");
        Path journal = folder.resolve("results.runs/whole.journal");
        List<String> lines = Files.readAllLines(journal);
        String json = read("results/study.json");
        Files.write(journal, lines.subList(0, lines.size() - 3));
        study("results");

        assertThat(Files.readAllLines(journal)).hasSize(lines.size());
        assertThat(read("results/study.json")).isEqualTo(json);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0/3", "4/3", "1", "a/b", "1/0"})
    void whatIsNoPartIsNotUnderstood(String part) {
        assertThat(study("results", "--part", part)).isEqualTo(2);
        assertThat(err.toString()).contains("--part");
    }

    @Test
    void aSearchCannotBeSplit() throws IOException {
        write(HEAD + "search: {vary: {" + SPEED + "}, best: least}\n");

        assertThat(study("results", "--part", "1/2")).isEqualTo(2);
        assertThat(err.toString()).contains("cannot be split");
    }

    @Test
    void runsThatCannotBeRiddenAreRowsAndNotTheEnd() throws IOException {
        write(HEAD + "sweep: {vary: \"vehicles[0].speeds[0]\", called: speed, from: 0 km/h, to: 10 km/h, steps: 3}\n");

        assertThat(study("results")).isZero();
        assertThat(out.toString()).contains("1 of 4 runs could not be ridden");
        assertThat(Files.readAllLines(folder.resolve("results/runs.csv")))
                .anySatisfy(
                        row -> assertThat(row).startsWith("1,level,0.0,,,,,,,").contains("speeds[0]"));
    }

    @Test
    void faultsOfAStudyAreListedAndNothingIsRun() throws IOException {
        write(HEAD.replace("peak", "peek") + "sweep: {" + SPEED + "}\n");

        assertThat(study("results")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("write peak", "nothing was run");
        assertThat(folder.resolve("results.runs")).doesNotExist();
    }

    @Test
    void aFolderOfOtherThingsIsLeftAlone() throws IOException {
        Files.createDirectories(folder.resolve("results"));
        Files.writeString(folder.resolve("results/notes.txt"), "mine");

        assertThat(study("results")).isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(read("results/notes.txt")).isEqualTo("mine");
    }
}
