package org.ridewright.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ridewright.comfort.Axis;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.io.VehicleDocument;
import org.ridewright.ride.Measured;
import org.ridewright.ride.RideBench;
import org.ridewright.ride.Scenario;
import org.ridewright.ride.SharedRoad;
import org.ridewright.ride.SteadyRide;
import org.ridewright.ride.Wanted;
import org.ridewright.road.Road;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Ground;

class TradeRidesTest {
    private static final double SPEED = 4;

    private static VehicleModel standing(String file, String load) {
        Vehicle vehicle = VehicleDocument.read(Path.of("../scenarios/vehicles/" + file + ".yaml"))
                .asWritten();
        return VehicleModel.assemble(vehicle, vehicle.loadCase(load).orElseThrow(), Ground.UNYIELDING, false);
    }

    @Test
    void aRustedVehicleOnTheRoadOfAnOiledOneRidesAsItDoesAloneToTheLastBit() {
        VehicleModel oiled = Leaves.greased(standing("dray", "half laden"), 0.4);
        VehicleModel rusted = Leaves.greased(standing("dray", "half laden"), 2.5);
        for (Road road : List.of(TradeSetting.plank(), TradeSetting.gravel(3))) {
            Scenario scenario = TradeSetting.run(road, SPEED, oiled);
            SharedRoad shared = new SharedRoad(scenario, oiled, road, TradeSetting.speed(SPEED));
            EnumSet<Wanted> wanted = EnumSet.of(Wanted.PEAKS, Wanted.SWINGS, Wanted.SEAT);
            shared.measure(oiled, wanted);
            Measured after = shared.measure(rusted, wanted);
            Measured alone = RideBench.measure(scenario, rusted, road, TradeSetting.speed(SPEED), wanted);
            assertThat(after.swings()).isEqualTo(alone.swings());
            assertThat(after.ride().seats().toString())
                    .isEqualTo(alone.ride().seats().toString());
        }
    }

    @Test
    void anotherVehicleOrLoadDoesNotFollowTheSameRoad() {
        VehicleModel laden = standing("dray", "laden");
        Road road = TradeSetting.plank();
        SharedRoad shared =
                new SharedRoad(TradeSetting.run(road, SPEED, laden), laden, road, TradeSetting.speed(SPEED));
        VehicleModel empty = standing("dray", "empty");
        assertThatThrownBy(() -> shared.steady(empty, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theSeatOfAStretchIsThatOfARideWhoseWindowIsThatStretch() {
        VehicleModel dray = standing("dray", "half laden");
        Road road = TradeSetting.gravel(3);
        Scenario scenario = TradeSetting.run(road, SPEED, dray);
        Measured whole = RideBench.measure(scenario, dray, road, TradeSetting.speed(SPEED), EnumSet.of(Wanted.SEAT));
        SteadyRide stretch = new SharedRoad(scenario, dray, road, TradeSetting.speed(SPEED))
                .steady(dray, whole.ride().window().from());
        assertThat(stretch.weighted().get(0).rms())
                .isEqualTo(whole.ride().seats().get(0).metrics().get(Axis.Z).rms());
    }

    @Test
    void whatIsMeasuredOnGravelBeginsWhenTheLastWheelIsPastTheRunUp() {
        VehicleModel dray = standing("dray", "half laden");
        double wheelbase = dray.vehicle().axles().get(1).behindFrontAxle().value();
        assertThat(SPEED * TradeSetting.steadyFrom(SPEED, dray)).isCloseTo(Road.START + 2 + wheelbase, within(1e-9));
        Scenario scenario = TradeSetting.run(TradeSetting.gravel(3), SPEED, dray);
        assertThat(scenario.duration().orElseThrow().value() - TradeSetting.steadyFrom(SPEED, dray))
                .isCloseTo(TradeSetting.RIDE + 0.02, within(1e-9));
    }

    @Test
    void aSpringIsHeldOnTheLevelAndLessTheRougherTheRoad() {
        VehicleModel dray = standing("dray", "half laden");
        Road gravel = TradeSetting.gravel(3);
        SharedRoad shared =
                new SharedRoad(TradeSetting.run(gravel, SPEED, dray), dray, gravel, TradeSetting.speed(SPEED));
        // the metre of level ground and the run-up hold the springs for longer than the road does
        double all = held(shared.steady(dray, 0));
        double past = held(shared.steady(dray, TradeSetting.steadyFrom(SPEED, dray)));
        assertThat(past).isLessThan(all).isGreaterThan(0);
    }

    private static double held(SteadyRide ride) {
        return ride.locked().values().stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
    }

    @Test
    void whereNobodyIsAboardTheRideIsThatOfTheLoadAndWithoutLoadOfTheCentreOfMass() {
        VehicleModel laden = standing("trailer", "laden");
        VehicleModel empty = standing("trailer", "empty");
        assertThat(TradeSetting.place(laden)).isEqualTo("the load (paving slabs)");
        assertThat(TradeSetting.place(empty)).isEqualTo("the centre of mass");
        for (VehicleModel model : List.of(laden, empty)) {
            List<Map<Criterion, Double>> seen = new ArrayList<>();
            for (Road road : List.of(TradeSetting.gravel(1), TradeSetting.plank())) {
                seen.addAll(new TradeRides(road, 8).of(List.of(model), () -> {}));
            }
            assertThat(seen.get(0)).containsOnlyKeys(Criterion.WEIGHTED, Criterion.LOCKED);
            assertThat(seen.get(0).get(Criterion.WEIGHTED)).isGreaterThan(0.1);
            assertThat(seen.get(1))
                    .containsOnlyKeys(
                            Criterion.PLANK_PEAK,
                            Criterion.PITCH_AFTER,
                            Criterion.CYCLES,
                            Criterion.HEAVE_LEFT,
                            Criterion.PITCH_LEFT);
            assertThat(seen.get(1).get(Criterion.PLANK_PEAK)).isGreaterThan(0.1);
        }
    }

    @Test
    void withoutFrictionNoSpringIsEverHeld() {
        VehicleModel bare = Leaves.greased(standing("dray", "half laden"), 0);
        assertThat(new TradeRides(TradeSetting.gravel(1), SPEED)
                        .of(List.of(bare), () -> {})
                        .get(0)
                        .get(Criterion.LOCKED))
                .isZero();
    }
}
