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

    @Test
    void aStretchOutsideTheLogIsNamedAsWhatIsWrong() throws IOException {
        String log = sine("short.csv", 9.80665).toString();
        assertThat(comfort(log, "--from", "40")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("--from: 40 s leaves less than 1 s of the log, which ends at 29.99 s");
        err.getBuffer().setLength(0);
        assertThat(comfort(log, "--from", "-5", "--to", "-1")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("--to: -1 s comes before");
        err.getBuffer().setLength(0);
        assertThat(comfort(log, "--from", "10", "--to", "10.5")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("--to: 10.5 s comes less than 1 s after --from, 10 s");
    }

    @Test
    void timeOfRidingMayHaveItsUnit() throws IOException {
        String log = sine("log.csv", 9.80665).toString();
        for (String riding : new String[] {"4", "4 h", "240 min"}) {
            Path into = folder.resolve("into");
            assertThat(comfort(log, "--riding", riding, "--into", into.toString()))
                    .isZero();
            assertThat(Files.readString(into.resolve("report.html"))).contains("4.00 hours of such riding a day");
        }
        assertThat(comfort(log, "--riding", "long")).isEqualTo(2);
        assertThat(err.toString()).contains("--riding must be a time such as '4 h'");
    }

    @Test
    void wordsForDiscomfortAreForTheSeatAndForRidesThatLast() throws IOException {
        String log = sine("log.csv", 9.80665).toString();
        assertThat(words(log)).contains("In public transport").contains("annex C");
        assertThat(words(log, "--at", "feet"))
                .doesNotContain("In public transport")
                .contains("none are given");
        assertThat(words(log, "--to", "15"))
                .doesNotContain("In public transport")
                .contains("too short");
    }

    private String words(String log, String... options) {
        Path into = folder.resolve("into");
        String[] all = new String[options.length + 3];
        all[0] = log;
        all[1] = "--into";
        all[2] = into.toString();
        System.arraycopy(options, 0, all, 3, options.length);
        out.getBuffer().setLength(0);
        assertThat(comfort(all)).isZero();
        return out.toString().replaceAll("\\s+", " ");
    }

    @Test
    void hostileColumnNamesAreShownAsText() throws IOException {
        Path log = sine("a<b>.csv", 9.80665);
        Files.writeString(log, Files.readString(log).replace("z (m/s²)", "<script>alert(1)</script> z (m/s²)"));
        Path into = folder.resolve("results");
        assertThat(comfort(log.toString(), "--z", "2", "--into", into.toString()))
                .isZero();
        assertThat(Files.readString(into.resolve("report.html")))
                .contains("&lt;script&gt;alert(1)")
                .doesNotContain("<script", "a<b>");
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
