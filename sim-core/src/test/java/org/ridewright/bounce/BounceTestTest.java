package org.ridewright.bounce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.modal.Condition;
import org.ridewright.modal.Modes;
import org.ridewright.ride.Fleet;
import org.ridewright.signal.Channel;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Ground;

/** The light carriage of the demonstration fleet, empty, and changes of it. */
class BounceTestTest {
    private static final double MILLI = 1e-3;

    private static String text() {
        try {
            return Files.readString(Path.of("..", "scenarios", "vehicles", "phaeton.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static VehicleModel empty(String yaml) {
        Vehicle vehicle = Fleet.described(yaml);
        return VehicleModel.assemble(vehicle, vehicle.loadCase("empty").orElseThrow(), Ground.UNYIELDING, true);
    }

    private static VehicleModel carriage() {
        return empty(text());
    }

    private static VehicleModel withoutFriction() {
        return empty(text().replaceAll(
                        "(?m)^ +friction:( \\{.*\\})?\\R(?: +(share of load|constant|locked rate):.*\\R)*", ""));
    }

    private static BounceResult run(BounceKind kind, Handling handling, VehicleModel model) {
        return new BounceTest(kind, handling).run(model);
    }

    private static double natural(BounceKind kind, VehicleModel model, Condition condition) {
        return NaturalPartner.of(kind, model, Modes.of(model, Condition.SLIDING), Modes.of(model, Condition.LOCKED))
                .get(condition)
                .frequency();
    }

    @Test
    void withoutFrictionTheRideFrequencyIsTheNaturalOne() {
        VehicleModel model = withoutFriction();
        for (BounceKind kind : List.of(BounceKind.ROLL, BounceKind.PITCH)) {
            double ride = run(kind, Handling.pushTo(10 * MILLI), model)
                    .count()
                    .frequency()
                    .orElseThrow();
            assertThat(ride).isCloseTo(natural(kind, model, Condition.SLIDING), within(2e-3 * ride));
        }
    }

    @Test
    void withFrictionTheRideFrequencyLiesBetweenSlidingAndLocked() {
        VehicleModel model = carriage();
        for (BounceKind kind : List.of(BounceKind.FRONT, BounceKind.PITCH, BounceKind.ROLL)) {
            double ride =
                    run(kind, Handling.person(), model).count().frequency().orElseThrow();
            assertThat(ride)
                    .isGreaterThan(natural(kind, model, Condition.SLIDING))
                    .isLessThan(natural(kind, model, Condition.LOCKED));
        }
    }

    @Test
    void theHarderThePushTheLowerTheFrequencyOfTheFirstCycle() {
        VehicleModel model = carriage();
        double last = natural(BounceKind.ROLL, model, Condition.LOCKED);
        for (double depth : new double[] {8, 12, 20, 30}) {
            double first = run(BounceKind.ROLL, Handling.pushTo(depth * MILLI), model)
                    .count()
                    .firstFrequency()
                    .orElseThrow();
            assertThat(first).isLessThan(last);
            last = first;
        }
        double sliding = natural(BounceKind.ROLL, model, Condition.SLIDING);
        assertThat(last).isCloseTo(sliding, within(0.02 * sliding));
    }

    @Test
    void leftAndRightAreMirrored() {
        VehicleModel model = carriage();
        Count left = run(BounceKind.ROLL, Handling.person(), model).count();
        Count right = run(BounceKind.ROLL_RIGHT, Handling.person(), model).count();
        assertThat(right.turningPoints()).hasSameSizeAs(left.turningPoints());
        for (int j = 0; j <= left.halfCycles(); j++) {
            assertThat(right.turningPoints().get(j).time())
                    .isCloseTo(left.turningPoints().get(j).time(), within(1e-7));
            assertThat(right.turningPoints().get(j).value())
                    .isCloseTo(-left.turningPoints().get(j).value(), within(1e-9));
        }
    }

    @Test
    void theResultDoesNotDependOnTheToleranceOfTheSolver() {
        VehicleModel model = carriage();
        for (BounceKind kind : BounceKind.usual(model.vehicle())) {
            Count fine = new BounceTest(kind, Handling.push(500), MILLI, 1e-13)
                    .run(model)
                    .count();
            Count coarse = new BounceTest(kind, Handling.push(500), MILLI, 1e-8)
                    .run(model)
                    .count();
            assertThat(coarse.halfCycles()).isEqualTo(fine.halfCycles());
            assertThat(coarse.frequency().orElseThrow())
                    .isCloseTo(fine.frequency().orElseThrow(), within(1e-5));
        }
    }

    @Test
    void theBooksOfEnergyClose() {
        VehicleModel model = carriage();
        for (BounceKind kind : BounceKind.usual(model.vehicle())) {
            assertThat(run(kind, Handling.person(), model).energyResidual()).isLessThan(1e-11);
        }
    }

    @Test
    void aDepthIsMet() {
        BounceResult result = run(BounceKind.REAR, Handling.pushTo(18 * MILLI), carriage());
        assertThat(result.depth()).isCloseTo(18 * MILLI, within(1e-8));
        assertThat(result.counts().get(Motion.REAR).turningPoints().get(0).value())
                .isCloseTo(-18 * MILLI, within(1e-8));
    }

    @Test
    void aLiftGoesUp() {
        BounceResult result = run(BounceKind.FRONT, Handling.drop(20 * MILLI), carriage());
        assertThat(result.count().turningPoints().get(0).value()).isCloseTo(20 * MILLI, within(1e-8));
        assertThat(result.wheelOff()).isZero();
    }

    @Test
    void aDeepPushThrowsTheWheelsOffTheGround() {
        assertThat(run(BounceKind.HEAVE, Handling.push(6000), carriage()).wheelOff())
                .isGreaterThan(0);
    }

    @Test
    void whatItsWholeWeightDoesNotLiftIsRefused() {
        assertThatThrownBy(() -> run(BounceKind.HEAVE, Handling.drop(500 * MILLI), carriage()))
                .isInstanceOf(RideException.class)
                .hasMessageContaining("not even all its weight");
    }

    @Test
    void aPersonPressesNoHarderThanTheyCan() {
        BounceResult result = run(BounceKind.PITCH, Handling.person(), carriage());
        assertThat(result.force()).isEqualTo(Handling.USUAL_FORCE);
        assertThat(result.depth()).isLessThan(Handling.USUAL_DEPTH);
    }

    @Test
    void aSlightPushIsNotSeen() {
        BounceResult result = run(BounceKind.FRONT, Handling.push(20), carriage());
        assertThat(result.count().isHeld()).isTrue();
    }

    /** What a fit differentiates: no noise down to changes of a ten-thousandth. */
    @Test
    void theFirstFrequencyIsASmoothFunctionOfARate() {
        double[] slopes = new double[2];
        double[] steps = {1e-2, 1e-4};
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] = (stiffer(1 + steps[i]) - stiffer(1 - steps[i])) / (2 * steps[i]);
        }
        assertThat(slopes[0]).isGreaterThan(0);
        assertThat(slopes[1]).isCloseTo(slopes[0], within(0.02 * slopes[0]));
    }

    private static double stiffer(double factor) {
        String yaml = text().replace("rate: 14 kN/m", "rate: " + 14_000 * factor + " N/m")
                .replace("rate: 17 kN/m", "rate: " + 17_000 * factor + " N/m");
        return run(BounceKind.ROLL, Handling.pushTo(25 * MILLI), empty(yaml))
                .count()
                .firstFrequency()
                .orElseThrow();
    }

    @Test
    void tracesRunFromThePushToTheEndAndShowWhatIsCounted() {
        BounceResult result = new BounceTest(BounceKind.FRONT, Handling.person()).run(carriage(), 500);
        Channel front = result.traces().stream()
                .filter(c -> c.name().equals(Motion.FRONT.title()))
                .findFirst()
                .orElseThrow();
        assertThat(front.start()).isEqualTo(-(Handling.RAMP + Handling.HOLD));
        assertThat(front.end()).isCloseTo(result.duration(), within(2.1 / 500));
        for (TurningPoint turn : result.count().turningPoints()) {
            int i = (int) Math.round((turn.time() - front.start()) * 500);
            assertThat(front.sample(i)).isCloseTo(turn.value(), within(MILLI));
        }
    }

    @Test
    void aVehicleOfOneAxleHasNoRear() {
        Vehicle quarter = Fleet.described(Fleet.quarter(1000));
        assertThat(BounceKind.usual(quarter)).containsExactly(BounceKind.FRONT);
        VehicleModel model = VehicleModel.assemble(quarter, quarter.loadCases().get(0), Ground.UNYIELDING, true);
        assertThatThrownBy(() -> run(BounceKind.REAR, Handling.person(), model))
                .isInstanceOf(RideException.class)
                .hasMessageContaining("rear");
    }

    @Test
    void everyVehicleOfTheFleetCanBeBounced() {
        for (Vehicle vehicle : Fleet.all()) {
            List<LoadCaseBounces> all = LoadCaseBounces.of(
                    vehicle, vehicle.loadCases(), kind -> new BounceTest(kind, Handling.person()), true, 50);
            assertThat(all).hasSameSizeAs(vehicle.loadCases());
            for (LoadCaseBounces bounces : all) {
                for (BounceResult result : bounces.results()) {
                    assertThat(result.energyResidual()).isLessThan(1e-9);
                    assertThat(bounces.partner(result.test().kind(), Condition.SLIDING)
                                    .share())
                            .isBetween(0.2, 1.0);
                }
            }
        }
    }
}
