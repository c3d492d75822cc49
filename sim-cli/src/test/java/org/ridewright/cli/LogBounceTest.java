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
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogBounceTest {
    private static final Path EXAMPLE = Path.of("..", "scenarios", "logs", "cart-bounce.csv");

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

    @Test
    void theExampleGivesBackWhatWasPutIn() throws IOException {
        Path into = folder.resolve("results");

        assertThat(bounce(EXAMPLE.toString(), "--into", into.toString())).isZero();

        assertThat(out.toString()).contains("together", "mixed", "Report: ");
        JsonNode together = new ObjectMapper()
                .readTree(into.resolve("metrics.json").toFile())
                .at("/motions/0/together/values");
        assertThat(together.at("/1/value").asDouble()).isCloseTo(1.75, within(0.005));
        assertThat(together.at("/2/value").asDouble()).isCloseTo(0.03, within(0.001));
        assertThat(together.at("/4/value").asDouble()).isCloseTo(0.0032, within(0.00005));
        for (String figure : new String[] {"log", "release-1", "release-3"}) {
            assertThat(into.resolve("figures/" + figure + ".png")).exists();
        }
        assertThat(Files.readString(into.resolve("traces/release-2.csv"))).startsWith("time (s),recorded (m/s²)");
        assertThat(Files.readString(into.resolve("report.html")))
                .contains("Releases 1, 2, 3: Friction does not turn over");
    }

    @Test
    void aRowThatGoesBackInTimeIsTold() throws IOException {
        List<String> rows = new ArrayList<>(Files.readAllLines(EXAMPLE));
        int late = rows.size() - 40;
        String first = rows.stream()
                .filter(row -> row.matches("[\\d.]+[,;].*"))
                .findFirst()
                .orElseThrow();
        rows.set(late, first.replaceFirst("[,;].*", "") + rows.get(late).replaceFirst("^[^,;]*", ""));
        Path log = Files.write(folder.resolve("back.csv"), rows);

        assertThat(bounce(log.toString(), "--into", folder.resolve("results").toString()))
                .isZero();

        assertThat(out.toString()).contains("1 row going back in time was passed over");
    }

    @Test
    void twoSensorsOfOneFileAreTakenTogetherAndAgainstEachOther() throws IOException {
        Path into = folder.resolve("results");
        Path log = twoEnds("front_z (m/s²)", "rear_z (m/s²)");

        assertThat(bounce(
                        log.toString(),
                        "--sensor",
                        "front",
                        "--with",
                        "rear",
                        "--apart",
                        "1.6",
                        "--into",
                        into.toString()))
                .isZero();

        JsonNode motions = new ObjectMapper()
                .readTree(into.resolve("metrics.json").toFile())
                .at("/motions");
        assertThat(motions.at("/0/releases/0/values/4/value").asDouble()).isCloseTo(1.7, within(0.02));
        assertThat(motions.at("/1/releases/0/values/4/value").asDouble()).isCloseTo(2.4, within(0.02));
        assertThat(out.toString()).contains("mrad");
    }

    @Test
    void aLogWithoutAReleaseIsExplainedAndNothingIsWritten() throws IOException {
        Path into = folder.resolve("results");
        StringBuilder rows = new StringBuilder("t (s),z (m/s²)\n");
        Random random = new Random(1);
        for (int i = 0; i < 1000; i++) {
            rows.append(String.format(Locale.ROOT, "%.2f,%.4f%n", i / 100.0, 9.81 + 0.02 * random.nextGaussian()));
        }
        Path quiet = Files.writeString(folder.resolve("quiet.csv"), rows.toString());

        assertThat(bounce(quiet.toString(), "--into", into.toString())).isEqualTo(ExitCode.BAD_INPUT);

        assertThat(err.toString())
                .contains("quiet.csv", "no release is found", "Likely fix: ")
                .doesNotContain("at org.");
        assertThat(into).doesNotExist();
    }

    @Test
    void aClippedDecayIsRefusedWithItsLine() throws IOException {
        StringBuilder rows = new StringBuilder("t (s),z (m/s²)\n");
        for (int i = 0; i < 1000; i++) {
            double value = Math.min(12.0, 9.81 + decay(1.7, 4, i / 100.0 - 3));
            rows.append(String.format(Locale.ROOT, "%.2f,%.4f%n", i / 100.0, value));
        }
        Path clipped = Files.writeString(folder.resolve("clipped.csv"), rows.toString());

        assertThat(bounce(clipped.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("clipped in its decay, from line", "wider range");
    }

    @Test
    void anEmptyLogAndOptionsThatCannotBeAreRefused() throws IOException {
        Path empty = Files.createFile(folder.resolve("empty.csv"));

        assertThat(bounce(empty.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("the file is empty");
        assertThat(bounce(EXAMPLE.toString(), "--band", "5-1")).isEqualTo(2);
        assertThat(bounce(EXAMPLE.toString(), "--direction", "up")).isEqualTo(2);
        assertThat(bounce(EXAMPLE.toString(), "--apart", "1.6")).isEqualTo(2);
        assertThat(bounce(EXAMPLE.toString(), "--rate", "-1")).isEqualTo(2);
        assertThat(bounce(EXAMPLE.toString(), "--from", "5", "--to", "4")).isEqualTo(2);
    }

    private Path twoEnds(String first, String second) throws IOException {
        StringBuilder rows = new StringBuilder("t (s)," + first + "," + second + "\n");
        Random random = new Random(3);
        for (int i = 0; i < 1200; i++) {
            double t = i / 100.0;
            double up = decay(1.7, 3, t - 3);
            double turn = decay(2.4, 2, t - 3);
            rows.append(String.format(
                    Locale.ROOT,
                    "%.2f,%.4f,%.4f%n",
                    t,
                    9.81 + up + turn + 0.02 * random.nextGaussian(),
                    9.81 + up - turn + 0.02 * random.nextGaussian()));
        }
        return Files.writeString(folder.resolve("ends.csv"), rows.toString());
    }

    private static double decay(double frequency, double size, double t) {
        double omega = 2 * Math.PI * frequency;
        return t < 0 ? 0 : size * Math.exp(-0.05 * omega * t) * Math.cos(omega * t);
    }
}
