package org.ridewright.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.io.OwnRide;
import org.ridewright.io.SwapDocument;
import org.ridewright.io.VehicleDocument;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.ride.Scenario;
import org.ridewright.road.Obstacle;
import org.ridewright.vehicle.Seat;

/** A vehicle in a scenario of the user's, which has tolerances and seats of its own. */
class OwnScenarioTest {
    private static final Path PHAETON = Path.of("../scenarios/vehicles/phaeton.yaml");

    @TempDir
    private Path folder;

    private Path vehicle;

    @BeforeEach
    void copy() throws IOException {
        vehicle = Files.copy(PHAETON, folder.resolve("phaeton.yaml"));
    }

    private OwnRide ride(String seats) throws IOException {
        Path file = Files.writeString(folder.resolve("plank.yaml"), """
                scenario: A plank
                vehicles: [{file: phaeton.yaml, speeds: [10 km/h], load cases: [two aboard]%s}]
                road:
                  obstacles: [{plank: {at: 2 m, height: 30 mm ± 2 mm, length: 150 mm}}]
                duration: 3 s
                """.formatted(seats));
        return OwnRide.of(file, vehicle, Optional.empty());
    }

    private SwapDocument rides(OwnRide ride, Swap... own) {
        VehicleDocument document = VehicleDocument.read(vehicle);
        return new SwapDocument(document, List.of(own), ride);
    }

    private static Swap usual(OwnRide ride, Path vehicle, String name) {
        VehicleDocument document = VehicleDocument.read(vehicle);
        return UsualSwaps.of(ride.vehicle(), SwapDocument.values(document, ride), ride.load()).swaps().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double height(Scenario scenario) {
        return ((Obstacle.Plank) scenario.roads().get(0).obstacles().get(0))
                .height()
                .value();
    }

    private static List<Seat> seats(Scenario scenario) {
        return scenario.entrants().get(0).vehicle().seats();
    }

    @Test
    void tolerancesOfTheScenarioAreDrawnAlikeOnBothSidesOfADifference() throws IOException {
        SwapDocument rides = rides(ride(""), Swap.parse("rate: axles[*].springs[*].rate = × 1.2"));
        double[] w = new double[rides.uncertainValues()];
        w[w.length - 1] = 1.5;
        assertThat(height(rides.ride(-1, w, 0))).isEqualTo(0.030);
        assertThat(height(rides.ride(0, w, 0))).isEqualTo(0.033, within(1e-9));
        assertThat(height(rides.ride(0, w, 1))).isEqualTo(0.033, within(1e-9));
    }

    @Test
    void cushionsThatTheScenarioGivesAreThoseThatAreExchanged() throws IOException {
        OwnRide ride = ride(", cushions: gone hard, occupants: WG1");
        Swap cushions = usual(ride, vehicle, "cushions");
        assertThat(cushions.alternative()).contains("in good condition");
        SwapDocument rides = rides(ride, cushions);
        double[] w = new double[rides.uncertainValues()];
        List<Seat> asTheScenarioHasThem =
                ride.document().asWritten().entrants().get(0).vehicle().seats();
        assertThat(seats(rides.ride(-1, w, 0)))
                .usingRecursiveComparison()
                .ignoringFieldsMatchingRegexes(".*\\.written")
                .isEqualTo(asTheScenarioHasThem);
        assertThat(seats(rides.ride(0, w, 1)))
                .allSatisfy(
                        seat -> assertThat(seat.stages().get(0).rate().value()).isEqualTo(30e3));
    }

    @Test
    void whatTheScenarioHasPutOutOfUseCannotBeExchanged() throws IOException {
        Files.writeString(
                vehicle,
                Files.readString(PHAETON)
                        .replace("cushion: in good condition", "cushion: {rate: 25 kN/m, damping: 300 N s/m}"));
        OwnRide ride = ride(", cushions: gone hard");
        assertThatThrownBy(() -> rides(ride, Swap.parse("seat: seats[*].cushion.rate = 20 kN/m")))
                .isInstanceOf(UnfitValueException.class)
                .hasMessageContaining("the scenario has 'gone hard' in place of")
                .hasMessageContaining("take the key out of the scenario");
    }
}
