package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.comfort.SeatedOccupant;
import org.ridewright.io.ScenarioFile;
import org.ridewright.signal.Channel;
import org.ridewright.signal.Sines;

/**
 * A person on a cushion in a vehicle over a road of sine waves (humps back to back): what the seat does, over what the floor beneath it does, is
 * the transmissibility of cushion and person whatever the vehicle.
 */
class SeatedOccupantRideTest {
    private static final String VEHICLE = """
            vehicle: Test quarter
            layout: quarter
            body: {mass: 300 kg}
            axles:
              - name: wheel
                behind front axle: 0 m
                unsprung mass: 40 kg
                wheels: {diameter: 0.6 m, tyre: pneumatic, path: point, contact rate: 180 kN/m, contact damping ratio: 0.15}
                springs: [{name: coil, kind: coil, rate: 60 kN/m}]
                dampers: [{name: damper, bump: 2 kN s/m, rebound: 2 kN s/m}]
            seats: [{name: seat, at: {behind front axle: 0 m, above ground: 0.8 m}, %s}]
            load cases: [{name: driver, aboard: [{person: driver, mass: %s kg, seat: seat}]}]
            """;

    @TempDir
    private Path folder;

    /**
     * Cushion and one-stage model FG1. Source: reference/seat_and_occupant.csv, T computed from the models' closed form; f0 and ζ of FG1 seen in a
     * handbook that quotes Fairley and Griffin 1989, masses from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "50000, 200, 1, 1.0440",
        "50000, 200, 2, 1.2263",
        "50000, 200, 4, 1.9253",
        "50000, 200, 8, 0.4817",
        "50000, 200, 16, 0.3132",
        "30000, 300, 1, 1.0753",
        "30000, 300, 2, 1.4295",
        "30000, 300, 4, 1.0360",
        "30000, 300, 8, 0.3063",
        "30000, 300, 16, 0.2308",
        "15000, 300, 1, 1.1603",
        "15000, 300, 2, 2.1657",
        "15000, 300, 4, 0.4370",
        "15000, 300, 8, 0.1914",
        "15000, 300, 16, 0.1797"
    })
    void theSeatMovesAsTheReferenceSays(double rate, double damping, double frequency, double expected)
            throws IOException {
        String seat = cushion(rate, damping) + ", occupant: FG1, share on seat: 100 %";

        assertThat(transmissibility(seat, 51.6, frequency)).isCloseTo(expected, Percentage.withPercentage(0.1));
    }

    /** Models with two parts side by side, or with a head on one of them, beside their closed form. */
    @ParameterizedTest
    @CsvSource({"WG1, 3", "WG1, 9", "WG2, 3", "WG2, 5.5", "WG2, 9", "ISO5982, 2.5", "ISO5982, 4", "ISO5982, 9"})
    void everyPublishedModelMovesAsItsClosedForm(String name, double frequency) throws IOException {
        SeatedOccupant model = SeatedOccupant.published().stream()
                .filter(m -> m.name().equals(name))
                .findFirst()
                .orElseThrow()
                .scaledTo(60);
        double expected = model.cushionTransmissibility(40_000, 250, frequency).norm();

        double found = transmissibility(
                cushion(40_000, 250) + ", occupant: " + name.toLowerCase(Locale.ROOT) + ", share on seat: 75 %",
                80,
                frequency);

        assertThat(found).isCloseTo(expected, Percentage.withPercentage(0.1));
    }

    /** One mass on a spring and damper, as before there were models. */
    @ParameterizedTest
    @ValueSource(doubles = {2, 4, 8})
    void aRigidOccupantIsOneMassOnTheCushion(double frequency) throws IOException {
        double expected = SeatedOccupant.rigid(60)
                .cushionTransmissibility(40_000, 900, frequency)
                .norm();

        assertThat(transmissibility(cushion(40_000, 900) + ", occupant: rigid", 80, frequency))
                .isCloseTo(expected, Percentage.withPercentage(0.1));
        assertThat(transmissibility(cushion(40_000, 900), 80, frequency))
                .isCloseTo(expected, Percentage.withPercentage(0.1));
    }

    /** Trade: a supple cushion keeps a buzz near 10 Hz from the seat, one gone hard passes it on (common practice). */
    @Test
    void aCushionGoneHardPassesOnTheBuzzThatOneInGoodConditionKeepsAway() throws IOException {
        double good = transmissibility("cushion: in good condition, occupant: FG1", 75, 10);
        double hard = transmissibility("cushion: gone hard, occupant: FG1", 75, 10);

        assertThat(good).isLessThan(0.4);
        assertThat(hard).isGreaterThan(0.8);
    }

    @Test
    void theModelCarriesTheSeatedMassAndNoMore() throws IOException {
        RideResult onCushion = ride("cushion: gone hard, occupant: WG2, share on seat: 75 %", 80, 2, 1, 2);
        RideResult onBench = ride("occupant: FG1, share on seat: 75 %", 80, 2, 1, 2);

        assertThat(onCushion.model().totalMass()).isCloseTo(300 + 40 + 80, within(1e-9));
        assertThat(onBench.model().totalMass()).isCloseTo(300 + 40 + 80, within(1e-9));
        // on a bench the body has the feet and the fixed part; the rest of the person swings by itself
        assertThat(onBench.model().sprungMass()).isCloseTo(300 + 20 + 60 * 6 / 51.6, within(1e-9));
    }

    private static String cushion(double rate, double damping) {
        return String.format(Locale.ROOT, "cushion: {rate: %.0f N/m, damping: %.0f N s/m}", rate, damping);
    }

    private double transmissibility(String seat, double person, double frequency) throws IOException {
        double settled = 8;
        int measured = (int) Math.ceil(2 * frequency);
        double duration = 2 / (2 * frequency) + settled + measured / frequency;
        RideResult ride = ride(seat, person, 2 * frequency, (int) Math.ceil(duration * frequency) + 2, duration + 0.2);
        Channel floor = ride.trace("floor vertical acceleration").orElseThrow();
        Channel onSeat = ride.trace("seat seat vertical acceleration").orElseThrow();
        int to = (int) (duration * floor.sampleRate());
        int from = to - (int) Math.round(measured / frequency * floor.sampleRate());
        return Sines.gain(onSeat, frequency, from, to).norm()
                / Sines.gain(floor, frequency, from, to).norm();
    }

    private RideResult ride(String seat, double person, double speed, int waves, double duration) throws IOException {
        Files.writeString(folder.resolve("quarter.yaml"), VEHICLE.formatted(seat, person));
        Path file = Files.writeString(
                folder.resolve("waves.yaml"), String.format(Locale.ROOT, """
            scenario: Waves
            vehicles: [{file: quarter.yaml, speeds: %s m/s}]
            road: {obstacles: [{hump: {at: 2 m, height: 0.6 mm, length: 2 m, count: %d, every: 2 m}}]}
            duration: %s s
            read off: [{point: floor, at: {behind front axle: 0 m, above ground: 0.5 m}}]
            """, speed, waves, duration));
        List<RideResult> results = RideRunner.run(ScenarioFile.read(file), ride -> {});
        return results.get(0);
    }
}
