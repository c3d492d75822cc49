package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.math.PolynomialBlocks;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Road;
import org.ridewright.road.RoadProfile;
import org.ridewright.signal.Channel;
import org.ridewright.vehicle.PathKind;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.WheelPath;

/** Roads that are worked out block by block, and rides of which only a stretch is kept. */
class LongRoadTest {
    /** Planks of another height every metre and a bit, 260 of them. */
    private static Road planks(int count) {
        return new Road(
                "planks",
                List.of(
                        new Obstacle.Plank(
                                new Obstacle.Lie(
                                        length(3),
                                        Obstacle.Side.BOTH,
                                        Measure.of(0, QuantityKind.ANGLE),
                                        count,
                                        Optional.of(length(1.13))),
                                length(0.02),
                                length(0.25),
                                new Obstacle.Shape.Rectangular()),
                        new Obstacle.Hump(GeneratedRoad.lie(40, Obstacle.Side.LEFT, 0), length(0.03), length(2))),
                Optional.empty());
    }

    private static Measure length(double metres) {
        return Measure.of(metres, QuantityKind.LENGTH);
    }

    private static SpeedPlan at(double speed) {
        return SpeedPlan.steady(Measure.of(speed, QuantityKind.SPEED));
    }

    @Test
    void blocksOfAPathMeetAndAreThePathOfTheWholeRoad() {
        Vehicle vehicle = Fleet.called("dray");
        VehicleModel model = VehicleModel.assemble(vehicle, vehicle.loadCases().get(0), Optional.empty(), false);
        Road road = planks(260);
        List<PolynomialBlocks> inputs = new Heights(model, road, new Travel(at(1))).all(100);
        for (int w = 0; w < 2; w++) {
            var wheel = model.wheels().get(w);
            double radius = vehicle.axles().get(wheel.axle()).wheel().radius();
            assertThat(vehicle.axles().get(wheel.axle()).wheel().path()).isEqualTo(PathKind.DISC);
            PiecewisePolynomial whole =
                    WheelPath.of(RoadProfile.along(road, wheel.y()), PathKind.DISC, radius, 0, 1e-8);
            PolynomialBlocks blocks = inputs.get(w);
            assertThat(blocks.isLast(0)).isFalse();
            double end = Double.NEGATIVE_INFINITY;
            double height = 0;
            for (int i = 0; ; i++) {
                PiecewisePolynomial block = blocks.block(i);
                if (i > 0) {
                    assertThat(block.joint(0)).isCloseTo(end, within(1e-9));
                    assertThat(block.value(block.joint(0))).isCloseTo(height, within(1e-13));
                }
                end = block.joint(block.pieces());
                height = block.valueAfter();
                for (double x = block.joint(0); x < end; x += 0.0137) {
                    assertThat(block.value(x)).isCloseTo(whole.value(x + wheel.x()), within(1e-12));
                }
                if (blocks.isLast(i)) {
                    break;
                }
            }
            assertThat(end).isGreaterThan(290);
        }
    }

    @Test
    void ofALongRideTheStretchAroundItsGreatestAccelerationIsKept() {
        Vehicle vehicle = Fleet.called("dray");
        Scenario scenario = new Scenario(
                "long",
                "",
                List.of(new Scenario.Entrant(
                        vehicle, "", List.of(vehicle.loadCases().get(0).name()), List.of(at(2)))),
                List.of(planks(260)),
                Optional.empty(),
                Optional.empty(),
                Measure.of(200, QuantityKind.FREQUENCY),
                Scenario.Start.UNSTRESSED,
                false,
                List.of(),
                Optional.empty());
        RideResult ride = RideRunner.run(scenario, r -> {}).get(0);
        assertThat(ride.duration()).isGreaterThan(TraceKeeper.WHOLE);
        RideResult.SeatResult seat = ride.seats().get(0);
        Channel kept = ride.trace(seat.seat() + " seat vertical acceleration").orElseThrow();
        assertThat(kept.end() - kept.start()).isBetween(8.0, 30.0);
        RideResult.Peak peak = seat.greatest().value() > -seat.least().value() ? seat.greatest() : seat.least();
        assertThat(peak.at()).isBetween(kept.start(), kept.end());
        assertThat(ride.energy().relativeResidual()).isLessThan(1e-9);
        assertThat(ride.spectra()).hasSize(ride.seats().size());
    }

    @Test
    void twoLegsOfOneSpeedAreOneSteadyRide() {
        Vehicle vehicle = Fleet.called("dray");
        Road road = planks(5);
        SpeedPlan legs = new SpeedPlan(
                Optional.of("same"),
                List.of(
                        new SpeedPlan.Leg(length(0), Measure.of(3, QuantityKind.SPEED)),
                        new SpeedPlan.Leg(length(20), Measure.of(3, QuantityKind.SPEED))),
                length(10));
        assertThat(ride(vehicle, road, legs).trace("body heave"))
                .isEqualTo(ride(vehicle, road, at(3)).trace("body heave"));
    }

    /** A change of speed so slight that nothing should come of it but a slight change. */
    @Test
    void aChangingSpeedIsFollowedAsClosely() {
        Vehicle vehicle = Fleet.called("dray");
        Road road = planks(5);
        SpeedPlan legs = new SpeedPlan(
                Optional.of("hardly"),
                List.of(
                        new SpeedPlan.Leg(length(0), Measure.of(3, QuantityKind.SPEED)),
                        new SpeedPlan.Leg(length(1), Measure.of(3 * (1 + 1e-9), QuantityKind.SPEED))),
                length(30));
        RideResult changing = ride(vehicle, road, legs);
        RideResult steady = ride(vehicle, road, at(3));
        assertThat(changing.energy().relativeResidual()).isLessThan(1e-9);
        Channel a = changing.trace("body heave").orElseThrow();
        Channel b = steady.trace("body heave").orElseThrow();
        for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
            assertThat(a.sample(i)).isCloseTo(b.sample(i), within(1e-6));
        }
        assertThat(changing.draught().value()).isCloseTo(steady.draught().value(), within(1.0));
    }

    private static RideResult ride(Vehicle vehicle, Road road, SpeedPlan plan) {
        Scenario scenario = new Scenario(
                "short",
                "",
                List.of(new Scenario.Entrant(
                        vehicle, "", List.of(vehicle.loadCases().get(0).name()), List.of(plan))),
                List.of(road),
                Optional.empty(),
                Optional.empty(),
                Measure.of(500, QuantityKind.FREQUENCY),
                Scenario.Start.UNSTRESSED,
                false,
                List.of(),
                Optional.empty());
        return RideRunner.run(scenario, r -> {}).get(0);
    }
}
