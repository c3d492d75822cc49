package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.ride.Scenario;
import org.ridewright.road.RoadProfile;

/** Obstacles whose own figures contradict each other are refused by the file; those just at the bound are read and can be laid. */
class ObstacleBoundsTest {
    @TempDir
    Path folder;

    private Scenario scenario(String obstacle) throws IOException {
        Files.copy(SampleFiles.at("whole/wheel.yaml"), folder.resolve("wheel.yaml"));
        Path file = folder.resolve("scenario.yaml");
        Files.writeString(file, """
                scenario: One obstacle
                vehicles: [{file: wheel.yaml, speeds: 8 km/h}]
                road: {obstacles: [%s]}
                """.formatted(obstacle));
        return ScenarioFile.read(file);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plank: {at: 4 m, height: 76 mm, length: 150 mm, shape: half-round}",
                "plank: {at: 4 m, height: 40 mm, length: 150 mm, shape: {bevelled: 76 mm}}",
                "rail: {at: 4 m, height: 5 mm, width: 60 mm, edge radius: 31 mm}"
            })
    void aFigureBeyondHalfTheWholeIsRefusedInItsPlace(String obstacle) {
        assertThatThrownBy(() -> scenario(obstacle))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("scenario.yaml:3:")
                .hasMessageContaining("road.obstacles[0].");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plank: {at: 4 m, height: 75 mm, length: 150 mm, shape: half-round}",
                "plank: {at: 4 m, height: 3 in, length: 152.4 mm, shape: half-round}",
                "plank: {at: 4 m, height: 1/2 in, length: 1 in, shape: half-round}",
                "plank: {at: 4 m, height: 40 mm, length: 150 mm, shape: {bevelled: 75 mm}}",
                "plank: {at: 4 m, height: 40 mm, length: 0.6 m, shape: {bevelled: 300 mm}}",
                "rail: {at: 4 m, height: 5 mm, width: 60 mm, edge radius: 30 mm}",
                "rail: {at: 4 m, height: 5 mm, width: 7 cm, edge radius: 35 mm, groove width: 40 mm, groove depth: 3 cm}"
            })
    void aFigureOfJustHalfTheWholeIsReadAndCanBeLaid(String obstacle) throws IOException {
        assertThat(scenario(obstacle).roads())
                .extracting(road -> RoadProfile.alongEverySide(road))
                .hasSize(1);
    }
}
