package org.ridewright.bounce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.ridewright.bounce.AddedLoad.Uncertain;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.ride.Fleet;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Ground;

/**
 * What people tell of light carriages with wheels of 1.1 and 1.3 m: about 2 Hz in front with one aboard and 1.8 Hz with two, the rear higher and hardly
 * changed by who sits in front, roll about 1.2 Hz and slightly lower with two. Source: common practice. {@code docs/bounce.md} tells the figures of this
 * test.
 */
class TradeFactsTest {
    private static final String ONE_ABOARD = """

              - name: one aboard
                aboard:
                  - {person: driver, mass: 75 kg ± 2 kg (weighed), seat: driver's place}
            """;
    /** Of the second person what comes on the front axle, 0.3 m ahead of the seat of a vehicle of 1.65 m (kg). */
    private static final double ON_FRONT = 68 * (1 - 0.3 / 1.65);

    private static String phaeton() {
        try {
            return Files.readString(Path.of("..", "scenarios", "vehicles", "phaeton.yaml")) + ONE_ABOARD.substring(1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The phaeton with its seat near the front axle, softer in front, its springs closer together, a third of the friction. */
    private static Vehicle likeTheTale() {
        return Fleet.described(phaeton()
                .replace("behind front axle: 0.95 m", "behind front axle: 0.30 m")
                .replace("rate: 14 kN/m", "rate: 12 kN/m")
                .replace("apart: 0.82 m", "apart: 0.50 m")
                .replace("apart: 0.84 m", "apart: 0.50 m")
                .replace("share of load: 0.06", "share of load: 0.02")
                .replace("constant: 15 N", "constant: 5 N")
                .replace("locked rate: 1.5 ± 0.5 (estimated) times", "locked rate: 21 kN/m (estimated)"));
    }

    private static double ride(Vehicle vehicle, String load, BounceKind kind) {
        VehicleModel model =
                VehicleModel.assemble(vehicle, vehicle.loadCase(load).orElseThrow(), Ground.UNYIELDING, true);
        return new BounceTest(kind, Handling.person())
                .run(model)
                .count()
                .frequency()
                .orElseThrow();
    }

    private static Uncertain value(double value, double uncertainty) {
        return new Uncertain(value, uncertainty);
    }

    @Test
    void aLightCarriageWithItsSeatNearTheFrontAxleDoesAsTheTaleSays() {
        Vehicle carriage = likeTheTale();
        double one = ride(carriage, "one aboard", BounceKind.FRONT);
        double two = ride(carriage, "two aboard", BounceKind.FRONT);
        assertThat(one).isCloseTo(2.0, within(0.25));
        assertThat(two).isCloseTo(1.8, within(0.1));
        double rearOne = ride(carriage, "one aboard", BounceKind.REAR);
        double rearTwo = ride(carriage, "two aboard", BounceKind.REAR);
        assertThat(rearOne).isGreaterThan(1.4 * one);
        assertThat(rearTwo / rearOne).isBetween(0.92, 1.0);
        double rollOne = ride(carriage, "one aboard", BounceKind.ROLL);
        double rollTwo = ride(carriage, "two aboard", BounceKind.ROLL);
        assertThat(rollOne).isCloseTo(1.2, within(0.25));
        assertThat(rollTwo).isCloseTo(1.2, within(0.25)).isLessThan(rollOne);
    }

    @Test
    void theAddedLoadMethodFindsItsFrontRateToAFifth() {
        Vehicle carriage = likeTheTale();
        double one = ride(carriage, "one aboard", BounceKind.FRONT);
        double two = ride(carriage, "two aboard", BounceKind.FRONT);
        AddedLoad found = AddedLoad.of(value(one, 0.05), value(two, 0.05), value(ON_FRONT, 3));
        assertThat(found.rate().value()).isCloseTo(24_000, within(4_800.0));
        assertThat(found.rate().holds(24_000)).isTrue();
    }

    @Test
    void thePhaetonOfTheFleetIsStifferThanTheTale() {
        Vehicle phaeton = Fleet.described(phaeton());
        assertThat(ride(phaeton, "one aboard", BounceKind.ROLL)).isGreaterThan(2.5);
        assertThat(ride(phaeton, "two aboard", BounceKind.FRONT)).isGreaterThan(2.5);
    }

    @Test
    void countsToAFewHundredthsOfAHertzAreNeededForTheTaleToSayAnything() {
        AddedLoad fine = AddedLoad.of(value(2, 0.02), value(1.8, 0.02), value(68, 7));
        assertThat(fine.rate().value()).isCloseTo(45.8e3, within(100.0));
        assertThat(fine.mass().value()).isCloseTo(290, within(1.0));
        assertThat(fine.isTold()).isTrue();
        AddedLoad middling = AddedLoad.of(value(2, 0.05), value(1.8, 0.05), value(68, 7));
        assertThat(middling.rate().high() / middling.rate().low()).isGreaterThan(4);
        AddedLoad coarse = AddedLoad.of(value(2, 0.1), value(1.8, 0.1), value(68, 7));
        assertThat(coarse.isTold()).isFalse();
    }
}
