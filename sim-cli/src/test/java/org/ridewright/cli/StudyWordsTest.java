package org.ridewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A study says of how many runs it speaks, and no more than these show. */
class StudyWordsTest {
    private static final String DAMPING = "vehicles[0].vehicle.axles[0].wheels.contact damping ratio";
    private static final String RATE = "vehicles[0].vehicle.axles[0].springs[0].rate";

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void writeFiles() throws IOException {
        Files.writeString(folder.resolve("quarter.yaml"), PlankQuarter.VEHICLE);
        Files.writeString(
                folder.resolve("plank.yaml"), PlankQuarter.SCENARIO.replace("speeds:", "load cases: [empty], speeds:"));
    }

    /** What stands on the terminal. */
    private String ridden(String answers, String method) throws IOException {
        Files.writeString(
                folder.resolve("study.yaml"), "study: Test\nbase: plank.yaml\nanswers: [" + answers + "]\n" + method);
        int code = Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(
                        "study",
                        folder.resolve("study.yaml").toString(),
                        "--into",
                        folder.resolve("results").toString());
        assertThat(code).as(err.toString()).isZero();
        return out.toString();
    }

    private String page() throws IOException {
        return Files.readString(folder.resolve("results/report.html"));
    }

    @Test
    void fromOneRiddenStepNothingIsToldOfAShape() throws IOException {
        String told = ridden(
                "peak", "sweep: {vary: \"" + DAMPING + "\", called: damping, values: [-0.3, -0.2, -0.1, 0.1]}\n");

        assertThat(told)
                .contains("at damping 0.1. Only 1 of 4 steps could be ridden.")
                .doesNotContain("whatever");
    }

    @Test
    void whatIsLeastOverAStretchIsNotLeastAtItsFirstStep() throws IOException {
        assertThat(
                        ridden(
                                "time off ground",
                                "sweep: {vary: \"vehicles[0].speeds[0]\", called: speed, values: [2 km/h, 3 km/h, 4 km/h, 40 km/h]}\n"))
                .contains("is least, 0 s, for speed up to 4 km/h, and greatest");
    }

    @Test
    void wordsAndPagesSayHowManyDrawsWereRidden() throws IOException {
        String ranges = "ranges: [{vary: \"" + DAMPING + "\", called: damping, from: -0.1, to: 0.1}]";
        String told = ridden(
                "peak",
                "compare:\n  draws: 64\n  " + ranges
                        + "\n  variants:\n    - called: one\n    - called: soft\n      with: {\"" + RATE
                        + "\": × 0.5}\n"
                        + "answer:\n  sentences: [\"It is {it}, {by}.\"]\n"
                        + "  blanks: {it: {value: peak, of: one}, by: {change: peak, from: one, to: soft}}\n");

        assertThat(told).containsPattern("m/s² \\([\\d.]+ to [\\d.]+; 3\\d of 64 draws\\), .*; 3\\d of 64 draws\\)");
        assertThat(page().replace('\u00a0', ' '))
                .containsPattern("In brackets: 90 % of the 3\\d of 64 draws that could be ridden")
                .containsPattern("Lines: 90 % of the 3\\d of 64 draws that could be ridden")
                .containsOnlyOnce("Not ridden, ")
                .containsPattern("Not ridden, \\d+ times, for instance: ");
    }

    @Test
    void runsOfOneDrawHaveItsNumber() throws IOException {
        ridden(
                "peak",
                "compare:\n  draws: 3\n  variants: [{called: one}, {called: soft, with: {\"" + RATE + "\": × 0.5}}]\n");
        Map<String, Integer> rows = new TreeMap<>();
        List<String> lines = Files.readAllLines(folder.resolve("results/runs.csv"));
        lines.subList(1, lines.size()).forEach(line -> rows.merge(line.split(",", -1)[2], 1, Integer::sum));

        assertThat(lines.get(0)).startsWith("run,role,draw,variant,");
        assertThat(rows).isEqualTo(Map.of("", 2, "1", 2, "2", 2, "3", 2));
    }

    @Test
    void drawsAlongWordsAreBarsAndTheBestWordIsNamed() throws IOException {
        assertThat(ridden(
                        "peak",
                        "uncertainty:\n  draws: 20\n  along: {vary: \"vehicles[0].vehicle.axles[0].wheels.path\", "
                                + "called: path, values: [disc, point]}\n"
                                + "answer: {sentences: [\"Best is {b}.\"], blanks: {b: {best: peak}}}\n"))
                .contains("Best is disc.");
        assertThat(folder.resolve("results/figures/spread-peak.svg")).exists();
        assertThat(folder.resolve("results/figures/bands-peak.svg")).doesNotExist();
        assertThat(page()).contains("<td>disc</td>", "<td>point</td>");
    }

    @Test
    void whatIsTheSameIsNotStarred() throws IOException {
        assertThat(ridden(
                        "peak",
                        "compare:\n  draws: 4\n  variants: [{called: one}, {called: other, with: {\"" + RATE
                                + "\": × 1.0}}]\n"))
                .doesNotContain("★", "☆")
                .contains("is the same for all.");
    }

    @Test
    void linesDoNotBreakBetweenANumberAndItsUnit() throws IOException {
        ridden("peak", "sweep: {vary: \"vehicles[0].speeds[0]\", called: speed, values: [4 km/h, 8 km/h]}\n");

        assertThat(page()).contains("\u00a0m/s²", "4\u00a0km/h");
    }
}
