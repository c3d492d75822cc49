package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.road.Road;
import org.ridewright.road.RoadTracks;
import org.ridewright.road.Surface;

class RoadFileTest {
    private static final String PROFILE = """
            station (m),left (mm),right (mm)
            10.0,0,3
            10.5,4,5
            11.0,8,2
            11.5,3,-1
            12.0,0,0
            """;

    @TempDir
    private Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    @Test
    void aProfileByItselfIsNotToldToMendASurface() throws IOException {
        for (String names :
                List.of("place (m),left (mm),right (mm)", "station (m),lefft (mm),right (mm)", "station,left,right")) {
            Path file = file("lane.csv", PROFILE.replace("station (m),left (mm),right (mm)", names));
            assertThatThrownBy(() -> RoadFile.read(file))
                    .isInstanceOf(InputException.class)
                    .hasMessageNotContaining("surface")
                    .hasMessageContaining("Likely fix: write ");
        }
    }

    @Test
    void oneRoadNeedsNoName() throws IOException {
        RoadFile found = RoadFile.read(file("lane.yaml", """
                about: a lane
                road:
                  surfaces: [{spectrum: {class: C, seed: 1}}]
                """));
        assertThat(found.about()).isEqualTo("a lane");
        assertThat(found.roads()).hasSize(1);
        assertThat(found.roads().get(0).surfaces()).hasSize(1);
    }

    @Test
    void theFileOfFiveRoadsIsInOrder() {
        RoadFile found = RoadFile.read(Path.of("..", "scenarios", "roads.yaml"));
        assertThat(found.roads()).hasSize(5);
        assertThat(FileKind.of(Path.of("..", "scenarios", "roads.yaml"))).isEqualTo(FileKind.ROAD);
    }

    @Test
    void aProfileBecomesARoadOfItsOwnHeightsAtItsOwnStations() throws IOException {
        Road road = RoadFile.read(file("lane.csv", PROFILE)).roads().get(0);
        assertThat(road.name()).isEqualTo("lane");
        assertThat(road.surfaces()).singleElement().isInstanceOf(Surface.Measured.class);
        var tracks = RoadTracks.of(road, 0.75, -0.75);
        assertThat(tracks.get(0).begin()).isEqualTo(10);
        // a straight line is taken off, so differences of differences are left
        var left = tracks.get(0).window(10, 12);
        assertThat(left.height(10.5) - 2 * left.height(11) + left.height(11.5))
                .isCloseTo(4e-3 - 16e-3 + 3e-3, within(1e-12));
        var right = tracks.get(1).window(10, 12);
        assertThat(right.height(10.5) - 2 * right.height(11) + right.height(11.5))
                .isCloseTo(5e-3 - 4e-3 - 1e-3, within(1e-12));
    }

    static Stream<Arguments> damagedProfiles() {
        return Stream.of(
                arguments("empty", "", "empty"),
                arguments("no names", "0,1\n1,2\n2,3\n3,1\n", "names of the columns"),
                arguments("no rows", "station (m),height (mm)\n", "has 0 rows"),
                arguments("two rows", "station (m),height (mm)\n0,1\n1,2\n", "has 2 rows"),
                arguments("no station", "left (mm),right (mm)\n1,2\n2,3\n3,4\n", "station"),
                arguments("no height", "station (m),speed (m/s)\n0,1\n1,2\n2,3\n", "height"),
                arguments("no unit", "station,height\n0,1\n1,2\n2,3\n", "has no unit"),
                arguments("odd unit", "station (m),height (stone)\n0,1\n1,2\n2,3\n", "is not a unit of length"),
                arguments("weight", "station (m),height (kg)\n0,1\n1,2\n2,3\n", "is not a unit of length"),
                arguments("letters", "station (m),height (mm)\n0,1\n1,x2\n2,3\n3,3\n", "x2"),
                arguments("backwards", "station (m),height (mm)\n0,1\n2,2\n1,3\n3,3\n", ":4:"),
                arguments("twice", "station (m),height (mm)\n0,1\n1,2\n1,3\n3,3\n", ":4:"),
                arguments("missing cell", "station (m),height (mm)\n0,1\n1\n2,3\n3,3\n", ":3:"),
                arguments("extra cell", "station (m),height (mm)\n0,1\n1,2,9\n2,3\n3,3\n", ":3:"),
                arguments("decimal comma", "station (m),height (mm)\n0,5,1,2\n1,5,2,0\n", ":2:"),
                arguments("open quote", "station (m),height (mm)\n0,\"1\n1,2\n2,3\n", "quotation mark"),
                arguments("heights in m", "station (m),height (m)\n0,10\n1,12\n2,30\n3,3\n", "check the unit"),
                arguments("stations in km", "station (km),height (mm)\n0,1\n1,2\n2,3\n", "check the unit"),
                arguments("stations in mm", "station (mm),height (mm)\n0,1\n1,2\n2,3\n", "check the unit"),
                arguments("all missing", "station (m),height (mm)\n0,\n1,\n2,\n3,\n", "has 0 heights"),
                arguments(
                        "two lefts",
                        "station (m),left (mm),left (mm),right (mm)\n0,1,1,1\n1,2,2,2\n2,1,1,1\n",
                        "more than one"),
                arguments("binary", "station (m),height (mm)\n0,1\n\u0000\n", "not a text file"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("damagedProfiles")
    void aDamagedProfileIsRefusedInWords(String kind, String text, String said) throws IOException {
        Path file = file("damaged.csv", text);
        assertThatThrownBy(() -> RoadFile.read(file))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("damaged.csv")
                .hasMessageContaining(said);
    }

    @Test
    void aProfileThatIsNoTextIsRefusedInWords() throws IOException {
        Path file = Files.write(
                folder.resolve("latin.csv"), "station (m),h\u00f6he (mm)".getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> RoadFile.read(file)).hasMessageContaining("UTF-8");
        assertThatThrownBy(() -> RoadFile.read(folder.resolve("nowhere.csv"))).hasMessageContaining("no such file");
    }

    @Test
    void faultsOfRoadsAreToldAtTheirPlace() throws IOException {
        Path file = file("bad.yaml", """
                roads:
                  - name: setts
                    surfaces: [{setts: {length: 150 kg, crown: 8 mm, seed: 1}}]
                  - name: setts
                    obstacles: [{plank: {at: 3 m, height: -4 cm, length: 10 cm}}]
                """);
        assertThatThrownBy(() -> RoadFile.read(file))
                .isInstanceOf(InputException.class)
                .satisfies(e -> assertThat(((InputException) e).problems())
                        .extracting(InputProblem::path)
                        .contains(
                                "roads[0].surfaces[0].setts.length",
                                "roads[1].obstacles[0].plank.height",
                                "roads[1].name"));
    }

    @Test
    void aFileWithoutARoadIsRefused() throws IOException {
        assertThatThrownBy(() -> RoadFile.read(file("none.yaml", "roads: []\n")))
                .isInstanceOf(InputException.class);
        Path vehicle = file("both.yaml", "vehicles: []\nroad: {name: x}\n");
        assertThatThrownBy(() -> FileKind.of(vehicle)).hasMessageContaining("looks like a scenario");
        assertThat(List.of(RoadFile.isProfile(Path.of("a.CSV")), RoadFile.isProfile(Path.of("a.yaml"))))
                .containsExactly(true, false);
    }
}
