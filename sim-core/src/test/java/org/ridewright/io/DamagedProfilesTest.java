package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.road.MeasuredProfile;
import org.ridewright.road.Surface;

/** Whatever is wrong with the file of a measured profile is said with file, line, column, value, what was expected, and what puts it right. */
class DamagedProfilesTest {
    private static final String ROWS = IntStream.range(0, 40)
            .mapToObj(i -> i * 0.25 + "," + i % 7 + "," + i % 5)
            .collect(Collectors.joining("\n"));

    @TempDir
    Path folder;

    @BeforeEach
    void writeVehicle() throws IOException {
        Files.copy(SampleFiles.at("whole/wheel.yaml"), folder.resolve("wheel.yaml"));
    }

    private Surface.Measured read(String csv, String further) throws IOException {
        Files.writeString(folder.resolve("lane.csv"), csv);
        return read("{file: lane.csv" + further + "}");
    }

    private Surface.Measured read(String surface) throws IOException {
        Path file = folder.resolve("scenario.yaml");
        Files.writeString(file, """
                scenario: Lane
                vehicles: [{file: wheel.yaml, speeds: 8 km/h}]
                road:
                  surfaces:
                    - measured: %s
                """.formatted(surface));
        return (Surface.Measured)
                ScenarioFile.read(file).roads().get(0).surfaces().get(0);
    }

    private static String good(String header) {
        return header + "\n" + ROWS + "\n";
    }

    private static String withRow(String row) {
        return good("station (m),left (mm),right (mm)") + row + "\n" + "11,1,1\n12,2,2\n";
    }

    static Stream<Arguments> damages() {
        String names = "station (m),left (mm),right (mm)";
        return Stream.of(
                arguments("an empty file", "", "", "lane.csv  the file is empty", "export the profile again"),
                arguments(
                        "decimal commas in quotation marks",
                        names + "\n\"0,0\",\"1,5\",2\n\"0,5\",\"1,7\",3\n",
                        "",
                        "1,5 has a decimal comma, while commas part the cells",
                        "semicolons between the cells"),
                arguments("names alone", names + "\n", "", "lane.csv:1:1  station: has 0 rows", "whole profile"),
                arguments("no names", ROWS, "", "lane.csv:1:1  0.0,0,0 stands where the names", "above the first row"),
                arguments(
                        "no station",
                        good("place (m),left (mm),right (mm)"),
                        "",
                        "lane.csv:1:1  station: place, left, right has no column of that name",
                        "station: place"),
                arguments(
                        "no right track",
                        good("station (m),left (mm),rigth (mm)"),
                        "",
                        "lane.csv:1:1  right: station, left, rigth has no column",
                        "write 'right: rigth'"),
                arguments(
                        "no height at all",
                        good("station (m),temperature (C),wind (m)"),
                        "",
                        "height: station, temperature, wind has no column",
                        "name it in the surface"),
                arguments(
                        "a column named that is not there",
                        good(names),
                        ", left: zl, right: right",
                        "left: station, left, right has no column",
                        "a column called zl"),
                arguments(
                        "one name twice",
                        good("station (m),left (mm),left (mm)"),
                        "",
                        "left: left stands above more than one column",
                        "write another name"),
                arguments(
                        "no unit",
                        good("station,left (mm),right (mm)"),
                        "",
                        "station: has no unit",
                        "station unit: mm"),
                arguments(
                        "a unit unknown",
                        good("station (m),left (digits),right (mm)"),
                        "",
                        "left: digits is not a unit of length",
                        "write one of these"),
                arguments(
                        "a unit of something else",
                        good("station (s),left (mm),right (mm)"),
                        "",
                        "station: s is not a unit of length",
                        "write one of these"),
                arguments(
                        "two units",
                        good(names),
                        ", height unit: in",
                        "left: mm contradicts 'height unit: in'",
                        "remove one of the two"),
                arguments(
                        "a row cut short",
                        withRow("10.5,3"),
                        "",
                        "lane.csv:42:1  10.5,3 has 2 cells under 3 names",
                        "complete the row"),
                arguments(
                        "decimal commas between commas",
                        withRow("10,5,3,2,1,7"),
                        "",
                        "lane.csv:42:1  10,5,3,2,1,7 has 6 cells under 3 names",
                        "semicolons"),
                arguments(
                        "words",
                        withRow("10.5,bad,2"),
                        "",
                        "lane.csv:42:6  left: bad is not a number",
                        "without unit or words"),
                arguments("a unit in a cell", withRow("10.5,3 mm,2"), "", "left: 3 mm is not a number", "without unit"),
                arguments(
                        "an infinite height",
                        withRow("10.5,inf,2"),
                        "",
                        "left: inf is not finite",
                        "leave the cell empty"),
                arguments(
                        "a wild exponent", withRow("10.5,3e20,2"), "", "left: 3e20 is out of all measure", "exponent"),
                arguments(
                        "marks of thousands",
                        withRow("10.5,1 234,2"),
                        "",
                        "left: 1 234 has marks between its digits",
                        "without marks"),
                arguments(
                        "no station in a row",
                        withRow(",3,2"),
                        "",
                        "lane.csv:42:1  station: is missing",
                        "give the station"),
                arguments(
                        "a station twice",
                        withRow("9.75,3,2"),
                        "",
                        "lane.csv:42:1  station: 9.75 is the station of the row before",
                        "remove one of the rows"),
                arguments(
                        "a survey that turned back",
                        withRow("4.0,3,2"),
                        "",
                        "station: 4.0 lies behind the station of the row before it, 9.75",
                        "turned back"),
                arguments(
                        "stations in the wrong unit",
                        good("station (mm),left (mm),right (mm)"),
                        "",
                        "station: goes over 0.009750 m in all",
                        "check the unit of the stations"),
                arguments(
                        "stations too far apart",
                        good("station (km),left (mm),right (mm)"),
                        "",
                        "station: has points 250.0 m apart",
                        "check the unit of the stations"),
                arguments(
                        "heights in the wrong unit",
                        good("station (m),left (m),right (mm)"),
                        "",
                        "left: rises 6.000 m from its lowest point",
                        "check the unit of the heights"),
                arguments(
                        "a track without heights",
                        names + "\n" + ROWS.replaceAll("(?m),\\d$", ","),
                        "",
                        "right: has 0 heights",
                        "right column"),
                arguments(
                        "a lone quotation mark",
                        withRow("10.5,\"3,2"),
                        "",
                        "a quotation mark has no partner",
                        "remove the quotation mark"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("damages")
    void saysWhatIsWrongAndWhere(String damage, String csv, String further, String said, String remedy) {
        InputException refusal = catchThrowableOfType(InputException.class, () -> read(csv, further));

        assertThat(refusal).as(damage).isNotNull();
        String message = refusal.getMessage().replace(folder + System.getProperty("file.separator"), "");
        assertThat(message).contains(said).contains("Likely fix").contains(remedy);
        assertThat(refusal.problems()).allSatisfy(problem -> {
            assertThat(problem.file()).endsWith("lane.csv");
            assertThat(problem.fix()).isNotEmpty();
        });
    }

    @Test
    void aFileThatIsNotThereIsSaidInTheScenario() {
        InputException refusal = catchThrowableOfType(InputException.class, () -> read("{file: lnae.csv}"));

        assertThat(refusal).hasMessageContaining("scenario.yaml:5:");
        assertThat(refusal).hasMessageContaining("road.surfaces[0].measured.file: lnae.csv is not there");
    }

    @Test
    void aFolderIsNoProfile() throws IOException {
        Files.createDirectory(folder.resolve("lanes"));
        InputException refusal = catchThrowableOfType(InputException.class, () -> read("{file: lanes}"));

        assertThat(refusal).hasMessageContaining("is a folder");
    }

    @Test
    void aSpreadsheetIsNoText() throws IOException {
        Files.write(folder.resolve("lane.csv"), new byte[] {'P', 'K', 3, 4, (byte) 0xFF, (byte) 0xC0, 0});
        InputException refusal = catchThrowableOfType(InputException.class, () -> read("{file: lane.csv}"));

        assertThat(refusal).hasMessageContaining("is not text in UTF-8");
    }

    @Test
    void textInTwoBytesALetterIsRefused() throws IOException {
        Files.write(
                folder.resolve("lane.csv"),
                good("station (m),left (mm),right (mm)").getBytes(StandardCharsets.UTF_16LE));
        InputException refusal = catchThrowableOfType(InputException.class, () -> read("{file: lane.csv}"));

        assertThat(refusal).hasMessageContaining("is not a text file");
    }

    @Test
    void aFileFullOfFaultsIsToldInADozenAndACount() {
        String rows = IntStream.range(0, 100).mapToObj(i -> i + ",x,1").collect(Collectors.joining("\n"));
        InputException refusal =
                catchThrowableOfType(InputException.class, () -> read("station (m),left (mm),right (mm)\n" + rows, ""));

        assertThat(refusal.problems()).hasSize(13);
        assertThat(refusal).hasMessageContaining("has 88 more cells that cannot be read");
    }

    @Test
    void whatIsWrongWithProfileAndScenarioIsSaidTogether() {
        InputException refusal =
                catchThrowableOfType(InputException.class, () -> read(withRow("10.5,bad,2"), ", spikes: lft out"));

        assertThat(refusal)
                .hasMessageContaining("lane.csv:42:6")
                .hasMessageContaining("spikes: lft out is not a treatment of spikes");
    }

    @ParameterizedTest
    @MethodSource("manners")
    void whatDoesNoHarmIsRead(String csv, String further) throws IOException {
        MeasuredProfile profile = read(csv, further).profile();

        assertThat(profile.size()).isEqualTo(40);
        assertThat(profile.tracks()).isEqualTo(2);
        assertThat(profile.station(39)).isCloseTo(9.75, within(1e-12));
        assertThat(profile.height(0, 6)).isCloseTo(0.006, within(1e-12));
        assertThat(profile.height(1, 4)).isCloseTo(0.004, within(1e-12));
    }

    static List<Arguments> manners() {
        String names = "station (m),left (mm),right (mm)";
        String semicolons = good(names).replace(',', ';');
        return List.of(
                arguments(good(names), ""),
                arguments("\uFEFF" + good(names), ""),
                arguments("# surveyed in spring\n\n" + good(names), ""),
                arguments(good("Station [m], Left [mm] , RIGHT [mm]"), ""),
                arguments(good("distance (m),left_height (mm),right_height (mm)"), ""),
                arguments(semicolons, ""),
                arguments(semicolons.replace('.', ','), ""),
                arguments(good(names).replace(',', '\t'), ""),
                arguments(good(names).replace("\n", "\r\n"), ""),
                arguments(good("station,left,right"), ", station unit: m, height unit: mm"),
                arguments(good("s (m),zl (mm),zr (mm)"), ", station: s, left: zl, right: zr"),
                arguments(good(names).replace("\n", ",\n") + ",,,\n", ""));
    }

    @Test
    void missingHeightsAreNotANumber() throws IOException {
        MeasuredProfile profile = read("station (ft),height (in)\n0,1\n1,\n2,n/a\n3,NaN\n4,1.5\n5,1\n6,2\n", "")
                .profile();

        assertThat(profile.tracks()).isEqualTo(1);
        assertThat(profile.height(0, 1)).isNaN();
        assertThat(profile.height(0, 3)).isNaN();
        assertThat(profile.height(0, 4)).isCloseTo(0.0381, within(1e-12));
        assertThat(profile.station(4)).isCloseTo(4 * 0.3048, within(1e-12));
    }
}
