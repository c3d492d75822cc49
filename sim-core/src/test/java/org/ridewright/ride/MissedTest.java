package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Obstacle.Lie;
import org.ridewright.road.Obstacle.Side;
import org.ridewright.road.Road;
import org.ridewright.signal.Channel;
import org.ridewright.vehicle.Vehicle;

/** A run says when surge and sway would matter, and what came of them where they are there. */
class MissedTest {
    private static final double RATE = 1000;
    private static final String BOTH = "coordinates: [surge, sway]\n";

    private static Measure length(double metres) {
        return Measure.of(metres, QuantityKind.LENGTH);
    }

    private static Road plank(double height, Side side) {
        Lie lie = new Lie(length(4), side, Measure.of(0, QuantityKind.ANGLE), 1, Optional.empty());
        return Trial.road(new Obstacle.Plank(lie, length(height), length(0.15), new Obstacle.Shape.Rectangular()));
    }

    private static RideResult ride(String yaml, Road road, double speed, boolean braked) {
        Vehicle vehicle = Fleet.described(yaml);
        Scenario scenario = new Scenario(
                "test",
                "",
                List.of(new Scenario.Entrant(
                        vehicle,
                        "test.yaml",
                        List.of(),
                        List.of(SpeedPlan.steady(Measure.of(speed, QuantityKind.SPEED))))),
                List.of(road),
                Optional.empty(),
                Optional.empty(),
                Measure.of(RATE, QuantityKind.FREQUENCY),
                Scenario.Start.UNSTRESSED,
                braked,
                List.of(),
                Optional.empty());
        return RideRunner.run(scenario, r -> {}).get(0);
    }

    @Test
    void aPlankUnderOneWheelThrowsTheRiderAsideMoreThanTheRunShows() {
        RideResult result = ride(Fleet.symmetrical(""), plank(0.02, Side.LEFT), 2, false);
        Missed missed = result.missed().get(0);
        assertThat(missed.place()).isEqualTo("box");
        assertThat(missed.matters(1)).isTrue();
        assertThat(missed.with().get(1).rms())
                .isGreaterThan(1.3 * missed.without().get(1).rms());
        assertThat(result.remarks())
                .anySatisfy(remark -> assertThat(remark)
                        .contains("Leaving out surge and sway", "'box'", "coordinates: [surge, sway]"));
    }

    /** What the comparison gives is what a run of the vehicle with both gives. */
    @Test
    void theComparisonIsTheRideOfTheVehicleWithBoth() {
        Missed missed = ride(Fleet.symmetrical(""), plank(0.02, Side.LEFT), 2, false)
                .missed()
                .get(0);
        RideResult both = ride(Fleet.symmetrical("") + BOTH, plank(0.02, Side.LEFT), 2, false);
        String[] axes = {"longitudinal", "lateral", "vertical"};
        for (int axis = 0; axis < 3; axis++) {
            Channel trace =
                    both.trace("box seat " + axes[axis] + " acceleration").orElseThrow();
            int from = (int) Math.ceil(both.window().from() * RATE);
            int to = (int) Math.floor(both.window().to() * RATE);
            double square = 0;
            for (int i = from; i < to; i++) {
                square += trace.sample(i) * trace.sample(i) / (to - from);
            }
            double rms = missed.with().get(axis).rms();
            assertThat(rms).as(axes[axis]).isCloseTo(Math.sqrt(square), within(0.02 * rms));
        }
    }

    @Test
    void aVehicleThatHasBothMissesNothingAndTellsTheSpeedThatItLoses() {
        RideResult result = ride(Fleet.symmetrical("") + BOTH, plank(0.01, Side.BOTH), 2, false);
        assertThat(result.missed()).isEmpty();
        assertThat(result.speedGained().orElseThrow().value()).isBetween(-0.2, -0.01);
        assertThat(result.remarks()).noneMatch(r -> r.startsWith("Surge changes the speed"));
    }

    @Test
    void aLossOfMoreThanATenthOfTheSpeedIsFlagged() {
        RideResult result = ride(Fleet.symmetrical("") + BOTH, plank(0.04, Side.BOTH), 1, false);
        assertThat(result.speedGained().orElseThrow().value()).isLessThan(-0.1);
        assertThat(result.remarks()).anyMatch(r -> r.startsWith("Surge changes the speed"));
    }

    /** Held by the brake the undercarriage does not surge, so only sway may be missed. */
    @Test
    void aBrakedVehicleDoesNotSurge() {
        RideResult result = ride(Fleet.symmetrical("") + BOTH, plank(0.02, Side.LEFT), 2, true);
        assertThat(result.speedGained()).isEmpty();
        assertThat(result.model().coordinates().surge()).isNegative();
        assertThat(ride(Fleet.symmetrical(""), plank(0.02, Side.LEFT), 2, true).remarks())
                .anySatisfy(r -> assertThat(r).startsWith("Leaving out sway matters"));
    }
}
