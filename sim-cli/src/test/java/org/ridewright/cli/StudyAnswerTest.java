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

/** Sentences of a study say what its numbers allow, on the terminal, on the page and in the numbers' file alike. */
class StudyAnswerTest {
    private static final String SCENARIO = """
            scenario: A plank
            vehicles: [{file: quarter.yaml, load cases: [empty], speeds: [10 km/h]}]
            road:
              name: plank
              obstacles: [{plank: {at: 1 m, height: 30 mm ± 1 mm, length: 150 mm}}]
            duration: 1 s
            """;

    private static final String SOFT = "\"vehicles[0].vehicle.axles[0].springs[0].rate\"";

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void writeFiles() throws IOException {
        Files.writeString(folder.resolve("quarter.yaml"), PlankQuarter.VEHICLE);
        Files.writeString(folder.resolve("plank.yaml"), SCENARIO);
    }

    private int study() {
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(
                        "study",
                        folder.resolve("study").toString(),
                        "--into",
                        folder.resolve("results").toString());
    }

    private String read(String name) throws IOException {
        return Files.readString(folder.resolve("results").resolve(name)).replace('\u00a0', ' ');
    }

    private String answered(String method, String sentence, String blanks) throws IOException {
        Files.writeString(
                folder.resolve("study.yaml"),
                "study: Test\nbase: plank.yaml\nanswers: [peak, swing]\n" + method + "answer:\n  sentences: [\""
                        + sentence + "\"]\n  blanks: {" + blanks + "}\n");
        assertThat(study()).as(err.toString()).isZero();
        String told = out.toString()
                .lines()
                .filter(l -> l.startsWith("It "))
                .findFirst()
                .orElse("");
        assertThat(read("report.html")).contains("<p>" + told.replace("'", "&#39;"));
        assertThat(read("study.json")).contains(told);
        return told;
    }

    @Test
    void aDifferenceIsSaidWithItsInterval() throws IOException {
        assertThat(answered(
                        "compare: {draws: 16, variants: [{called: hard}, {called: soft, with: {" + SOFT
                                + ": × 0.5}}]}\n",
                        "It is {soft}.",
                        "soft: {change: peak, from: hard, to: soft}"))
                .matches("It is [\\d.]+ % lower \\([\\d.]+ to [\\d.]+ %\\)\\.");
    }

    @Test
    void whatTheDrawsDoNotTellApartIsNotClaimed() throws IOException {
        // the rate of the second is fixed where that of the first is drawn about it
        assertThat(answered(
                        "compare: {draws: 16, variants: [{called: drawn}, {called: fixed, with: {" + SOFT
                                + ": 20 kN/m}}]}\n",
                        "It is {fixed}; {same}.",
                        "fixed: {change: peak, from: drawn, to: fixed}, same: {change: swing, from: drawn, to: drawn}"))
                .matches("It is neither clearly lower nor higher \\(.* lower to .* higher\\); the same\\.");
    }

    @Test
    void onceTheDrawnValueIsTheSame() throws IOException {
        assertThat(answered(
                        "compare: {draws: 16, variants: [{called: drawn}, {called: once, with: {" + SOFT
                                + ": × 1}}]}\n",
                        "It is {once}.",
                        "once: {change: peak, from: drawn, to: once}"))
                .isEqualTo("It is the same.");
    }

    @Test
    void aBestAtTheEndOfTheRangeIsNotCalledOne() throws IOException {
        assertThat(answered(
                        "sweep: {vary: " + SOFT + ", called: rate, from: × 0.5, to: × 2, steps: 4}\n",
                        "It is {best}.",
                        "best: {best: peak}"))
                .isEqualTo("It is none within what was tried: it is best at the end, half the rate.");
    }

    @Test
    void aFlatAnswerHasNoBest() throws IOException {
        assertThat(answered(
                        "uncertainty: {draws: 8, along: {vary: \"road.obstacles[0].plank.at\", called: place, from: 0.9 m, to: 1.1 m, steps: 3}}\n",
                        "It is {best}, and {first}.",
                        "best: {best: swing}, first: {first: peak, above: 1000}"))
                .contains("none: the answer is flat", "nowhere up to 1.1 m");
    }
}
