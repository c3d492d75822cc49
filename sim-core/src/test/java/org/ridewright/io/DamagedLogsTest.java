package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.measurement.LogAxis;
import org.ridewright.measurement.LogOptions;
import org.ridewright.measurement.LogRemarks;
import org.ridewright.measurement.LogVibration;
import org.ridewright.measurement.RecordedRide;
import org.ridewright.measurement.UnusableLogException;

/**
 * Logs as they come off phones and loggers, damaged in some way: either the damage is named with its place and a remedy, or it is harmless
 * and said so.
 */
class DamagedLogsTest {
    private static final String HEAD = "time (s),x (m/s²),y (m/s²),z (m/s²)\n";

    @TempDir
    private Path folder;

    /** Name, content, pieces of the message in their order. */
    static Stream<Arguments> refused() {
        return Stream.of(
                refused("empty", "", "log.csv  the file is empty", "export the log again"),
                refused("blank lines", "\n\n\n", "no rows of numbers"),
                refused("one row", HEAD + "0,0,0,9.8\n", "1 usable row is too few", "record for longer"),
                refused("names alone", HEAD, "no rows of numbers", "expected a line of column names"),
                refused(
                        "no header",
                        good(1000).substring(HEAD.length()),
                        "log.csv:1:1",
                        "begins the file without column names",
                        "--time 1 --x 2 --y 3 --z 4"),
                refused(
                        "text in numbers",
                        edited(good(1000), 500, row -> row.replaceFirst(",[^,]*$", ",error")),
                        "log.csv:500:",
                        "z (m/s²): error is no number",
                        "expected a number with a decimal point",
                        "correct this cell"),
                refused(
                        "decimal comma mixed",
                        edited(semicolons(good(1000)), 700, row -> row.replaceFirst(",(\\d+)$", ".$1")),
                        "log.csv:700:",
                        "has a decimal point, unlike the rows before",
                        "write all numbers with a decimal comma"),
                refused(
                        "decimal commas between commas",
                        "time,z (m/s²)\n" + "0,01,9,81\n0,02,9,82\n".repeat(100),
                        "log.csv:2:1",
                        "twice as many cells as there are column names",
                        "export with semicolons"),
                refused(
                        "row cut short",
                        edited(good(1000), 300, row -> row.substring(0, row.lastIndexOf(','))),
                        "log.csv:300:",
                        "ends the row after 3 cells",
                        "4 cells at least"),
                refused(
                        "cell too many",
                        edited(good(1000), 300, row -> row + ",7"),
                        "log.csv:300:",
                        "7 is one cell more than there are column names"),
                refused(
                        "time is text",
                        edited(good(1000), 300, row -> row.replaceFirst("^[^,]*", "later")),
                        "log.csv:300:1",
                        "time (s): later is no time",
                        "--rate 100"),
                refused(
                        "time missing",
                        edited(good(1000), 300, row -> row.replaceFirst("^[^,]*", "")),
                        "log.csv:300:1",
                        "time (s): holds no time"),
                refused(
                        "two headers",
                        good(500) + good(500),
                        "log.csv:502:1",
                        "column names again: two recordings",
                        "put what begins at line 502 into a file of its own"),
                refused(
                        "no column of time",
                        good(1000).replace("time (s)", "row"),
                        "log.csv:1:1",
                        "no column of time is among 'row'",
                        "--rate 100"),
                refused(
                        "no acceleration",
                        good(1000).replaceAll("([xyz]) \\(m/s²\\)", "gyro $1"),
                        "no columns of acceleration",
                        "name them, as in --z"),
                refused(
                        "no vertical column",
                        "time (s),x (m/s²),y (m/s²)\n" + "0,1,2\n0.01,2,3\n".repeat(100),
                        "there is no vertical column: 'x (m/s²)', 'y (m/s²)' alone will not do"),
                refused(
                        "several sensors",
                        two(1000),
                        "several sensors: 'seat x (m/s²)', 'seat y (m/s²)', 'seat z (m/s²)'; 'floor x",
                        "--sensor seat"),
                refused(
                        "unknown unit of acceleration",
                        good(1000)
                                .replace("time (s),x (m/s²),y (m/s²),z (m/s²)", "time (s),x,y,z")
                                .replace(",9.", ",3."),
                        "has no unit, and a mean of",
                        "--unit m/s2"),
                refused(
                        "g called m/s²",
                        scaled(1 / 9.80665),
                        "mean acceleration of 1.00 m/s² is neither gravity nor nothing",
                        "as if they were in g, not in m/s²: state --unit g"),
                refused(
                        "m/s² called g",
                        good(1000).replace("m/s²", "g"),
                        "mean acceleration of 96.2 m/s²",
                        "as if they were in m/s², not in g: state --unit m/s²"),
                refused(
                        "mg called m/s²",
                        scaled(1000 / 9.80665),
                        "as if they were in mg, not in m/s²: state --unit mg"),
                refused(
                        "constant value",
                        edited(good(1000), row -> row.replaceFirst(",[^,]*$", ",9.81")),
                        "z (m/s²): 9.810 m/s² in every row is no acceleration: the sensor stood still or hung"),
                refused(
                        "all zeros",
                        edited(good(1000), row -> row.replaceFirst(",.*$", ",0,0,0")),
                        "x (m/s²): 0.000 m/s² in every row is no acceleration: the sensor was off"),
                refused(
                        "nothing but NaN",
                        edited(good(1000), row -> row.replaceFirst(",[^,]*$", ",NaN")),
                        "z (m/s²): holds no value at all"),
                refused(
                        "rate too low",
                        rows(400, 0.1),
                        "time: 10.00 samples a second are too few",
                        "expected 20 to 50000 samples a second"),
                refused(
                        "milliseconds called seconds",
                        edited(
                                good(1000),
                                row -> String.format(
                                                Locale.ROOT,
                                                "%.0f",
                                                1000 * Double.parseDouble(row.substring(0, row.indexOf(','))))
                                        + row.substring(row.indexOf(','))),
                        "0.1000 samples a second are too few",
                        "--time-unit ms"),
                refused(
                        "clock that stands",
                        edited(good(1000), row -> row.replaceFirst("^[^,]*", "5")),
                        "the time stamps never rise",
                        "--rate 100"),
                refused(
                        "whole seconds",
                        edited(good(1000), row -> row.replaceFirst("^(\\d+)[^,]*", "$1")),
                        "rows have the time of the row above",
                        "--rate 1"),
                refused("too short", good(300), "2.99 s is the longest unbroken stretch", "--start-up 0"),
                refused(
                        "huge gaps",
                        gaps(),
                        "is the longest unbroken stretch",
                        "record again without gaps (the first is before line 202)",
                        "--gap"),
                refused("text for a log", "Dear all,\nplease find the ride attached.\n", "no rows of numbers"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void refusesWithPlaceExpectationAndRemedy(String name, String content, List<String> pieces) throws IOException {
        assertThat(message(content.getBytes(StandardCharsets.UTF_8), LogChoice.OPEN))
                .as(name)
                .containsSubsequence(pieces)
                .contains("Likely fix: ");
    }

    /** Name, content, piece of a remark; the measures are those of the sound log. */
    static Stream<Arguments> harmless() {
        String good = good(3000);
        byte[] utf8 = good.getBytes(StandardCharsets.UTF_8);
        byte[] marked = new byte[utf8.length + 3];
        marked[0] = (byte) 0xEF;
        marked[1] = (byte) 0xBB;
        marked[2] = (byte) 0xBF;
        System.arraycopy(utf8, 0, marked, 3, utf8.length);
        return Stream.of(
                arguments("byte order mark", marked, ""),
                arguments("UTF-16 with mark", good.getBytes(StandardCharsets.UTF_16), ""),
                arguments("UTF-16 without mark", good.getBytes(StandardCharsets.UTF_16LE), ""),
                arguments("Windows-1252", good.getBytes(Charset.forName("windows-1252")), ""),
                arguments("Windows line ends", bytes(good.replace("\n", "\r\n")), ""),
                arguments("semicolons and decimal commas", bytes(semicolons(good)), ""),
                arguments("tabs", bytes(good.replace(',', '\t')), ""),
                arguments("quoted", bytes(good.replaceAll("([^,\n]+)", "\"$1\"")), ""),
                arguments(
                        "remarks ahead",
                        bytes("Device;Model 12\" screen\nStart: 2024-05-01\n\n# rate 100\n" + good),
                        ""),
                arguments("remarks between rows", bytes(edited(good, 900, row -> "# stop\n\n" + row)), ""),
                arguments(
                        "units in a line of their own",
                        bytes(good.replace("time (s),x (m/s²),y (m/s²),z (m/s²)", "time,x,y,z\ns,m/s²,m/s²,m/s²")),
                        ""),
                arguments(
                        "units at the end of names",
                        bytes(good.replace(
                                "time (s),x (m/s²),y (m/s²),z (m/s²)", "time_s,acc_x_ms2,acc_y_ms2,acc_z_ms2")),
                        ""),
                arguments(
                        "no units",
                        bytes(good.replace("time (s),x (m/s²),y (m/s²),z (m/s²)", "t,ax,ay,az")),
                        "can only be gravity in m/s²"),
                arguments("last line cut off", bytes(good + "30.00,0.1"), "breaks off and was passed over"),
                arguments("no last line end", bytes(good.stripTrailing()), ""),
                arguments(
                        "a cell without value",
                        bytes(edited(good, 900, row -> row.replaceFirst(",[^,]*$", ",NaN"))),
                        "1 row without a value"),
                arguments(
                        "a gyroscope beside it",
                        bytes(edited(good, row -> row + ",1,2,3").replace("z (m/s²)", "z (m/s²),gyro x,gyro y,gyro z")),
                        ""),
                arguments(
                        "linear acceleration beside it",
                        bytes(edited(good, row -> row + ",0,0.1,0.2")
                                .replace("z (m/s²)", "z (m/s²),linear x (m/s²),linear y (m/s²),linear z (m/s²)")),
                        "shows which way is up"),
                arguments("date-time stamps", bytes(stamped(good)), ""));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("harmless")
    void whatDoesNoHarmIsReadAllTheSame(String name, byte[] content, String remark) throws IOException {
        RecordedRide sound = ride(bytes(good(3000)), LogChoice.OPEN);

        RecordedRide ride = ride(content, LogChoice.OPEN);

        LogVibration vibration = LogVibration.of(ride);
        assertThat(vibration.total())
                .as(name)
                .isCloseTo(LogVibration.of(sound).total(), Percentage.withPercentage(0.2));
        assertThat(String.join("\n", LogRemarks.of(ride, vibration))).contains(remark);
    }

    @Test
    void aPictureIsNoLog() throws IOException {
        byte[] picture = new byte[5000];
        new Random(3).nextBytes(picture);

        assertThat(message(picture, LogChoice.OPEN))
                .contains("the file is not text")
                .contains("Likely fix: export the log as CSV");
    }

    @Test
    void aSpreadsheetIsNoLog() throws IOException {
        assertThat(message(new byte[] {'P', 'K', 3, 4, 20, 0}, LogChoice.OPEN))
                .contains("spreadsheet")
                .contains("save it as CSV");
    }

    @Test
    void aFileThatIsNotThereIsGuessedAt() throws IOException {
        Files.writeString(folder.resolve("ride.csv"), good(1000));

        assertThat(caught(() -> LogFile.read(folder.resolve("rid.csv"), LogChoice.OPEN)))
                .contains("there is no such file")
                .contains("write ride.csv");
    }

    @Test
    void aMistypedColumnIsGuessedAt() throws IOException {
        LogChoice choice = new LogChoice(
                Optional.of("tine (s)"),
                Map.of(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty());

        assertThat(message(bytes(good(1000)), choice))
                .contains("--time: tine (s) is the name of no column")
                .contains("write time (s)");
    }

    @Test
    void aUnitThatIsNotKnownIsCalledSoAndNotMissing() throws IOException {
        String log = good(3000)
                .replace("z (m/s²)", "z (furlong)")
                .replace("x (m/s²)", "x")
                .replace("y (m/s²)", "y");

        RecordedRide ride = ride(bytes(log), LogChoice.OPEN);

        assertThat(ride.recording().remarks())
                .anySatisfy(remark -> assertThat(remark)
                        .contains("No known unit is written ('furlong' is none) for the acceleration", "m/s²"));
    }

    @Test
    void anAxisOrAPlaceInBracketsIsNoUnknownUnit() {
        assertThat(LogColumn.of(1, "acceleration (z)", "").unknownUnit()).isEmpty();
        assertThat(LogColumn.of(1, "z (with gravity)", "").unknownUnit()).isEmpty();
        assertThat(LogColumn.of(1, "az (m/s²)", "").unknownUnit()).isEmpty();
        assertThat(LogColumn.of(1, "az (furlong)", "").unknownUnit()).contains("furlong");
    }

    @Test
    void aMistypedUnitIsRefused() throws IOException {
        LogChoice choice = new LogChoice(
                Optional.empty(),
                Map.of(),
                Optional.of("m/s"),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty());

        assertThat(message(bytes(good(1000)), choice)).contains("--unit: m/s is no unit of acceleration");
    }

    @Test
    void columnsByNumberDoWithoutNames() throws IOException {
        LogChoice choice = new LogChoice(
                Optional.of("1"),
                Map.of(LogAxis.X, "2", LogAxis.Y, "3", LogAxis.Z, "4"),
                Optional.of("m/s2"),
                Optional.of("s"),
                OptionalDouble.empty(),
                Optional.empty());
        RecordedRide sound = ride(bytes(good(3000)), LogChoice.OPEN);

        RecordedRide ride = ride(bytes(good(3000).substring(HEAD.length())), choice);

        assertThat(LogVibration.of(ride).total())
                .isEqualTo(LogVibration.of(sound).total());
    }

    @Test
    void aSensorIsChosenByAWordOfItsNames() throws IOException {
        LogChoice choice = new LogChoice(
                Optional.empty(),
                Map.of(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.of("floor"));

        assertThat(ride(bytes(two(3000)), choice)
                        .recording()
                        .columns()
                        .get(LogAxis.Z)
                        .name())
                .isEqualTo("floor z (m/s²)");
    }

    @Test
    void nanosecondsSinceAnEpochKeepTheirPlaces() throws IOException {
        String good = good(3000);
        String epoch = edited(good, row -> {
                    int comma = row.indexOf(',');
                    long time =
                            1_714_557_600_000_000_000L + Math.round(1e9 * Double.parseDouble(row.substring(0, comma)));
                    return time + row.substring(comma);
                })
                .replace("time (s)", "timestamp_ns");

        RecordedRide ride = ride(bytes(epoch), LogChoice.OPEN);

        assertThat(ride.timing().resampled()).isZero();
        assertThat(ride.rate()).isEqualTo(100);
    }

    @Test
    void manyFaultsAreToldTogetherButNotAllOfThem() throws IOException {
        String text = edited(good(1000), row -> row.replaceFirst(",[^,]*$", ",x"));
        String damaged = HEAD + good(50).substring(HEAD.length()) + text.substring(HEAD.length());

        assertThat(message(bytes(damaged), LogChoice.OPEN).lines().count()).isBetween(5L, 12L);
    }

    private static Arguments refused(String name, String content, String... pieces) {
        return arguments(name, content, List.of(pieces));
    }

    /** Level, 100 a second, a ride of some sines on gravity. */
    private static String good(int rows) {
        return rows(rows, 0.01);
    }

    private static String rows(int rows, double interval) {
        StringBuilder out = new StringBuilder(HEAD);
        for (int i = 0; i < rows; i++) {
            double t = i * interval;
            out.append(String.format(
                    Locale.ROOT,
                    "%.2f,%.4f,%.4f,%.4f%n",
                    t,
                    0.3 * Math.sin(9 * t),
                    0.2 * Math.sin(14 * t),
                    9.80665 + Math.sin(30 * t) + 0.5 * Math.sin(12 * t)));
        }
        return out.toString().replace("\r\n", "\n");
    }

    private static String scaled(double factor) {
        return edited(good(1000), row -> {
            String[] cells = row.split(",", -1);
            for (int i = 1; i < cells.length; i++) {
                cells[i] = String.format(Locale.ROOT, "%.6f", factor * Double.parseDouble(cells[i]));
            }
            return String.join(",", cells);
        });
    }

    private static String two(int rows) {
        return edited(good(rows), row -> row + row.substring(row.indexOf(',')))
                .replace(
                        HEAD.strip(),
                        "time (s),seat x (m/s²),seat y (m/s²),seat z (m/s²),floor x (m/s²),floor y (m/s²),floor z (m/s²)");
    }

    /** Two seconds of rows, a second without, and so on. */
    private static String gaps() {
        StringBuilder out = new StringBuilder();
        List<String> lines = good(3000).lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (i == 0 || (i - 1) % 300 < 200) {
                out.append(lines.get(i)).append('\n');
            }
        }
        return out.toString();
    }

    private static String semicolons(String text) {
        return text.replace(',', ';').replace('.', ',');
    }

    private static String stamped(String text) {
        return edited(text, row -> {
                    int comma = row.indexOf(',');
                    double t = Double.parseDouble(row.substring(0, comma));
                    // passes midnight
                    double day = (86_390 + t) % 86_400;
                    return String.format(
                                    Locale.ROOT,
                                    "2024-05-01T%02d:%02d:%06.3fZ",
                                    (int) day / 3600,
                                    (int) day / 60 % 60,
                                    day % 60)
                            + row.substring(comma);
                })
                .replace("time (s)", "timestamp");
    }

    /** Every row but the names. */
    private static String edited(String text, UnaryOperator<String> edit) {
        StringBuilder out = new StringBuilder();
        int line = 0;
        for (String row : text.lines().toList()) {
            out.append(line++ == 0 ? row : edit.apply(row)).append('\n');
        }
        return out.toString();
    }

    /** One line, counted from 1. */
    private static String edited(String text, int line, UnaryOperator<String> edit) {
        StringBuilder out = new StringBuilder();
        int count = 0;
        for (String row : text.lines().toList()) {
            out.append(++count == line ? edit.apply(row) : row).append('\n');
        }
        return out.toString();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private RecordedRide ride(byte[] content, LogChoice choice) throws IOException {
        Path file = folder.resolve("log.csv");
        Files.write(file, content);
        return RecordedRide.of(LogFile.read(file, choice), LogOptions.USUAL);
    }

    private String message(byte[] content, LogChoice choice) throws IOException {
        Path file = folder.resolve("log.csv");
        Files.write(file, content);
        return caught(() -> LogVibration.of(RecordedRide.of(LogFile.read(file, choice), LogOptions.USUAL)));
    }

    /** The message that the command prints. */
    private String caught(Runnable reading) {
        try {
            reading.run();
            return "";
        } catch (InputException refused) {
            return refused.getMessage().replace(folder.toString(), "");
        } catch (UnusableLogException unusable) {
            return LogFile.fault("log.csv", unusable.fault()).getMessage();
        }
    }
}
