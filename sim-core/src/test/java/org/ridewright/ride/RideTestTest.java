package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.comfort.Position;
import org.ridewright.dynamics.RideException;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Obstacle.Lie;
import org.ridewright.road.Obstacle.Side;
import org.ridewright.road.Road;
import org.ridewright.signal.Channel;
import org.ridewright.vehicle.Hitch;
import org.ridewright.vehicle.Vehicle;

class RideTestTest {
    private static final String FRICTION = ", friction: {share of load: 6 %, constant: 40 N}";

    static Stream<Vehicle> fleet() {
        return Fleet.all().stream();
    }

    private static Measure length(double metres) {
        return Measure.of(metres, QuantityKind.LENGTH);
    }

    private static Lie lie(Side side) {
        return new Lie(length(4), side, Measure.of(0, QuantityKind.ANGLE), 1, Optional.empty());
    }

    private static Road road(Obstacle... obstacles) {
        return new Road("test", List.of(obstacles), Optional.empty());
    }

    private static Obstacle plank(double height, Side side) {
        return new Obstacle.Plank(lie(side), length(height), length(0.15), new Obstacle.Shape.Rectangular());
    }

    private static Obstacle hump(double height) {
        return new Obstacle.Hump(lie(Side.BOTH), length(height), length(3));
    }

    private static List<Obstacle> everyKind() {
        return List.of(
                plank(0.03, Side.BOTH),
                plank(0.03, Side.LEFT),
                new Obstacle.Plank(
                        lie(Side.BOTH), length(0.03), length(0.2), new Obstacle.Shape.Bevelled(length(0.04))),
                new Obstacle.Plank(lie(Side.BOTH), length(0.02), length(0.06), new Obstacle.Shape.HalfRound()),
                new Obstacle.Step(lie(Side.BOTH), length(0.03), Optional.empty()),
                new Obstacle.Step(lie(Side.BOTH), length(-0.03), Optional.of(length(0.5))),
                new Obstacle.Pothole(lie(Side.RIGHT), length(0.04), length(0.4)),
                hump(0.05),
                new Obstacle.Rail(
                        lie(Side.BOTH), length(0.01), length(0.07), length(0.01), length(0.05), length(0.03)));
    }

    private static Scenario scenario(Vehicle vehicle, Road road, double rate, double... speeds) {
        List<SpeedPlan> list = new ArrayList<>();
        for (double v : speeds) {
            list.add(SpeedPlan.steady(Measure.of(v, QuantityKind.SPEED)));
        }
        return new Scenario(
                "test",
                "",
                List.of(new Scenario.Entrant(vehicle, "test.yaml", List.of(), list)),
                List.of(road),
                Optional.empty(),
                Optional.empty(),
                Measure.of(rate, QuantityKind.FREQUENCY),
                Scenario.Start.UNSTRESSED,
                false,
                List.of(),
                Optional.empty());
    }

    private static RideResult ride(Vehicle vehicle, Road road, double rate, double speed) {
        return RideRunner.run(scenario(vehicle, road, rate, speed), r -> {}).get(0);
    }

    /** Every obstacle, from walking pace to the stated top speed: the energy books close to 1e-7 of what went in. */
    @ParameterizedTest
    @MethodSource("fleet")
    void theEnergyBooksCloseForEveryVehicleOverEveryObstacle(Vehicle vehicle) {
        double top = vehicle.topSpeed().orElseThrow().value();
        for (Obstacle obstacle : everyKind()) {
            for (RideResult result :
                    RideRunner.run(scenario(vehicle, road(obstacle), 200, 1, Math.sqrt(top), top), r -> {})) {
                assertThat(result.energy().relativeResidual())
                        .as(obstacle + " at " + result.speed())
                        .isLessThan(1e-7);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("fleet")
    void standingStillStaysStill(Vehicle vehicle) {
        RideResult result = ride(vehicle, road(), 100, 3);
        for (String name : result.model().coordinates().names()) {
            for (double x : result.trace(name).orElseThrow().samples()) {
                assertThat(x).isCloseTo(0, within(1e-12));
            }
        }
    }

    private static double size(Channel channel) {
        double worst = 0;
        for (double x : channel.samples()) {
            worst = Math.max(worst, Math.abs(x));
        }
        return worst;
    }

    @Test
    void withoutFrictionAndLiftOffTwiceTheHumpGivesTwiceTheMotion() {
        Vehicle vehicle = Fleet.described(Fleet.symmetrical("").replace("path: disc", "path: point"));
        RideResult one = ride(vehicle, road(hump(0.01)), 500, 3);
        RideResult two = ride(vehicle, road(hump(0.02)), 500, 3);
        double[] x = one.trace("body pitch").orElseThrow().samples();
        double[] y = two.trace("body pitch").orElseThrow().samples();
        for (int i = 0; i < x.length; i++) {
            assertThat(y[i]).isCloseTo(2 * x[i], within(1e-7));
        }
        assertThat(size(two.trace("body pitch").orElseThrow())).isGreaterThan(1e-3);
    }

    @Test
    void theSamplingRateChangesNoExtremeAndNoMetric() {
        Vehicle vehicle = Fleet.described(Fleet.symmetrical(FRICTION));
        RideResult coarse = ride(vehicle, road(plank(0.03, Side.BOTH)), 50, 2);
        RideResult fine = ride(vehicle, road(plank(0.03, Side.BOTH)), 3000, 2);
        assertThat(coarse.seats().get(0).peak()).isEqualTo(fine.seats().get(0).peak());
        assertThat(coarse.seats().get(0).total(Position.SEAT))
                .isEqualTo(fine.seats().get(0).total(Position.SEAT));
    }

    @Test
    void theSameRideGivesTheSameBits() {
        Vehicle vehicle = Fleet.described(Fleet.symmetrical(FRICTION));
        RideResult first = ride(vehicle, road(plank(0.03, Side.LEFT)), 500, 2);
        RideResult second = ride(vehicle, road(plank(0.03, Side.LEFT)), 500, 2);
        assertThat(first.trace("body roll acceleration").orElseThrow().samples())
                .isEqualTo(second.trace("body roll acceleration").orElseThrow().samples());
    }

    /** First contact of a disc comes √(2Rh − h²) before the edge. */
    @Test
    void theFrontAxleMeetsThePlankBeforeItsEdge() {
        Vehicle vehicle = Fleet.described(Fleet.symmetrical(FRICTION));
        RideResult result = ride(vehicle, road(plank(0.03, Side.BOTH)), 500, 2);
        double ahead = Math.sqrt(2 * 0.45 * 0.03 - 0.03 * 0.03);
        assertThat(result.axles().get(0).meets()).isCloseTo((4 - ahead) / 2, within(1e-9));
    }

    /** The run settled from above starts at rest, and everything is counted from there; a level twist holds nothing. */
    @Test
    void aVehicleSettledFromAboveStandsStillAndEven() {
        String twist =
                "connections: [{kind: undercarriage twist, name: reach, front axle: front, rear axle: rear, rate: 3 kN m/rad,"
                        + " friction: {constant: 80 N m, locked rate: 9 kN m/rad}}]\n";
        Vehicle vehicle = Fleet.described(Fleet.symmetrical(FRICTION) + twist);
        Scenario plain = scenario(vehicle, road(), 100, 3);
        Scenario settled = new Scenario(
                plain.name(),
                "",
                plain.entrants(),
                plain.roads(),
                plain.duration(),
                plain.distance(),
                plain.samplingRate(),
                Scenario.Start.FROM_ABOVE,
                false,
                List.of(),
                Optional.empty());
        RideResult result = RideRunner.run(settled, r -> {}).get(0);
        for (String name : result.model().coordinates().names()) {
            assertThat(size(result.trace(name).orElseThrow())).as(name).isLessThan(1e-12);
        }
        double left = result.wheels().get(0).loadAtRest();
        assertThat(result.wheels().get(1).loadAtRest()).isCloseTo(left, within(1e-9));
        double free = RideRunner.run(plain, r -> {}).get(0).springs().get(0).atRest();
        assertThat(result.springs().get(0).atRest()).isLessThan(free);
    }

    /** A run of a whole number of samples ends with the sample at its end, not with a copy of the one before. */
    @Test
    void theLastSampleIsThatOfTheEnd() {
        Vehicle vehicle = Fleet.described(Fleet.symmetrical(FRICTION));
        Scenario plain = scenario(vehicle, road(hump(0.03)), 100, 3);
        List<Channel> heaves = new ArrayList<>();
        for (double duration : new double[] {2, 2.005}) {
            Scenario timed = new Scenario(
                    plain.name(),
                    "",
                    plain.entrants(),
                    plain.roads(),
                    Optional.of(Measure.of(duration, QuantityKind.TIME)),
                    Optional.empty(),
                    plain.samplingRate(),
                    plain.start(),
                    false,
                    List.of(),
                    Optional.empty());
            heaves.add(RideRunner.run(timed, r -> {}).get(0).trace("body heave").orElseThrow());
        }
        assertThat(heaves.get(0).sample(200)).isCloseTo(heaves.get(1).sample(200), within(1e-10));
        assertThat(heaves.get(0).sample(200)).isNotEqualTo(heaves.get(0).sample(199));
    }

    @Test
    void aPointFollowerWithDampingMayNotCrossAJump() {
        Vehicle vehicle = Fleet.described(Fleet.symmetrical(FRICTION).replace("path: disc", "path: point"));
        assertThatThrownBy(() -> ride(vehicle, road(plank(0.03, Side.BOTH)), 500, 2))
                .isInstanceOf(RideException.class)
                .hasMessageContaining("point follower");
    }

    @Test
    void aHitchFollowsItsSinusoidAfterOnePeriod() {
        PiecewisePolynomial height =
                HitchMotion.height(new Hitch.Motion.Sinusoid(length(0.02), Measure.of(1.5, QuantityKind.FREQUENCY)), 4);
        for (double t = 0.7; t < 4; t += 0.013) {
            assertThat(height.value(t)).isCloseTo(0.02 * Math.sin(3 * Math.PI * t), within(1e-10));
        }
        assertThat(height.value(0)).isZero();
        assertThat(height.derivative(0, 1)).isCloseTo(0, within(1e-12));
    }
}
