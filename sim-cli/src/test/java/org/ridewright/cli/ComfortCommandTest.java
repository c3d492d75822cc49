package org.ridewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.comfort.Weighting;

class ComfortCommandTest {
    private static final Path EXAMPLE = Path.of("..", "scenarios", "logs", "dray-phone.csv");

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int comfort(String... arguments) {
        String[] all = new String[arguments.length + 1];
        all[0] = "comfort";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(all);
    }

    @Test
    void theExampleBecomesPageFiguresAndNumbers() throws IOException {
        Path into = folder.resolve("results");

        assertThat(comfort(EXAMPLE.toString(), "--into", into.toString(), "--riding", "2"))
                .isZero();

        assertThat(out.toString()).contains("a_w", "horizontal", "1 dropout", "Report: ");
        assertThat(err.toString()).isEmpty();
        for (String figure : new String[] {"acceleration", "third-octaves", "spectrum"}) {
            assertThat(into.resolve("figures/" + figure + ".svg")).exists();
            assertThat(into.resolve("figures/" + figure + ".png")).exists();
            assertThat(into.resolve("figures/" + figure + ".pdf")).exists();
        }
        assertThat(Files.readString(into.resolve("report.html")))
                .contains("A(8)", "no assessment of health", "trusted up to 40", "Start-up left out");
        // results of the same log may be made again
        assertThat(comfort(EXAMPLE.toString(), "--into", into.toString())).isZero();
    }

    @Test
    void theNumbersAreThoseOfTheSine() throws IOException {
        Path into = folder.resolve("results");

        assertThat(comfort(sine("a&b.csv", 9.80665).toString(), "--into", into.toString()))
                .isZero();

        JsonNode numbers =
                new ObjectMapper().readTree(into.resolve("metrics.json").toFile());
        double rms = numbers.at("/directions/0/values/0/value").asDouble();
        assertThat(rms).isCloseTo(Weighting.WK.factor(5) / Math.sqrt(2), within(1e-3));
        assertThat(Files.readString(into.resolve("report.html"))).contains("a&amp;b.csv");
    }

    @Test
    void aLogThatCannotBeMeasuredIsExplainedAndNothingIsWritten() throws IOException {
        Path into = folder.resolve("results");

        assertThat(comfort(sine("half.csv", 5).toString(), "--into", into.toString()))
                .isEqualTo(ExitCode.BAD_INPUT);

        assertThat(err.toString())
                .contains("half.csv", "neither gravity nor nothing", "Likely fix: ")
                .doesNotContain("at org.");
        assertThat(into).doesNotExist();
    }

    @Test
    void aFaultyLogHasTheExitCodeOfFaultyFiles() throws IOException {
        Path empty = Files.createFile(folder.resolve("empty.csv"));

        assertThat(comfort(empty.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("empty.csv  the file is empty");
    }

    @Test
    void aFolderOfSomethingElseIsLeftAlone() throws IOException {
        Files.writeString(folder.resolve("letter.txt"), "keep me");

        assertThat(comfort(EXAMPLE.toString(), "--into", folder.toString())).isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(folder.resolve("letter.txt")).exists();
    }

    @Test
    void optionsThatCannotBeAreRefusedWithTheirOwnCode() {
        assertThat(comfort(EXAMPLE.toString(), "--at", "roof")).isEqualTo(2);
        assertThat(err.toString()).contains("seat, backrest, feet");
        assertThat(comfort(EXAMPLE.toString(), "--forward", "up")).isEqualTo(2);
        assertThat(comfort(EXAMPLE.toString(), "--rate", "-5")).isEqualTo(2);
        assertThat(comfort(EXAMPLE.toString(), "--from", "5", "--to", "4")).isEqualTo(2);
        assertThat(comfort(EXAMPLE.toString(), "--riding", "25")).isEqualTo(2);
        assertThat(comfort()).isEqualTo(2);
    }

    @Test
    void aNegativeForwardAxisIsNoOption() {
        assertThat(comfort(
                        EXAMPLE.toString(),
                        "--forward",
                        "-x",
                        "--into",
                        folder.resolve("r").toString()))
                .isZero();
        assertThat(out.toString()).contains("fore and aft", "lateral");
    }

    private Path sine(String name, double mean) throws IOException {
        StringBuilder rows = new StringBuilder("t (s);z (m/s²)\n");
        for (int i = 0; i < 3000; i++) {
            double t = i / 100.0;
            rows.append(String.format(Locale.ROOT, "%.2f;%.5f%n", t, mean + Math.sin(2 * Math.PI * 5 * t)));
        }
        return Files.writeString(folder.resolve(name), rows.toString());
    }
}
