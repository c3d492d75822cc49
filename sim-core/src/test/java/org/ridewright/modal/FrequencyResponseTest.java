package org.ridewright.modal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.modal.HarmonicBalance.Steady;
import org.ridewright.modal.RoadInput.Tracks;
import org.ridewright.ride.Fleet;
import org.ridewright.vehicle.Vehicle;

class FrequencyResponseTest {
    private static final double SPEED = 4;

    static List<Vehicle> fleet() {
        return Fleet.all();
    }

    private static VehicleModel model(Vehicle vehicle) {
        return VehicleModel.assemble(vehicle, vehicle.loadCases().get(0), Optional.empty(), false);
    }

    private static Complex[] response(VehicleModel model, RoadInput input, double f) {
        return new FrequencyResponse(model, LinearModel.of(model, Condition.SLIDING), input).at(f);
    }

    private static void same(Complex[] found, Complex[] expected) {
        for (int i = 0; i < found.length; i++) {
            assertThat(found[i].subtract(expected[i]).norm()).isLessThan(1e-9 * (1 + expected[i].norm()));
        }
    }

    private static Complex[] sum(Complex[] a, Complex[] b) {
        Complex[] sum = new Complex[a.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = a[i].add(b[i]);
        }
        return sum;
    }

    @ParameterizedTest
    @MethodSource("fleet")
    void bothTracksBringWhatEachBringsAlone(Vehicle vehicle) {
        VehicleModel model = model(vehicle);
        for (double f : new double[] {0.7, 2.3, 12}) {
            same(
                    response(model, RoadInput.both(SPEED), f),
                    sum(
                            response(model, RoadInput.side(Tracks.LEFT, SPEED), f),
                            response(model, RoadInput.side(Tracks.RIGHT, SPEED), f)));
        }
    }

    @ParameterizedTest
    @MethodSource("fleet")
    void allAxlesAtOnceBringWhatEachBringsAlone(Vehicle vehicle) {
        VehicleModel model = model(vehicle);
        for (double f : new double[] {0.7, 2.3, 12}) {
            Complex[] all = response(model, RoadInput.axle(0), f);
            for (int a = 1; a < vehicle.axles().size(); a++) {
                all = sum(all, response(model, RoadInput.axle(a), f));
            }
            same(response(model, RoadInput.both(Double.POSITIVE_INFINITY), f), all);
        }
    }

    /** Waves far longer than the vehicle lift it as it stands; a hitch held at rest would keep its place. */
    @ParameterizedTest
    @MethodSource("fleet")
    void theVehicleFollowsVeryLongWaves(Vehicle vehicle) {
        if (!vehicle.hitches().isEmpty()) {
            return;
        }
        VehicleModel model = model(vehicle);
        Complex[] q = response(model, RoadInput.both(Double.POSITIVE_INFINITY), 1e-3);
        assertThat(q[model.coordinates().heave()].getReal()).isCloseTo(1, within(1e-4));
        assertThat(q[model.coordinates().pitch()].norm()).isLessThan(1e-4);
    }

    /** Waves that are too low to move friction, and waves beside which it is nothing. */
    @Test
    void harmonicBalanceIsLockedUnderLowWavesAndSlidesUnderHighOnes() {
        VehicleModel model = model(Fleet.described(
                Fleet.symmetrical(", friction: {share of load: 0.06, constant: 30 N, locked rate: 2 times}")));
        double[] frequencies = {0.5, 1, 1.6, 2.2, 3, 6};
        RoadInput input = RoadInput.both(SPEED);
        List<Steady> low = new HarmonicBalance(model, input, 1e-5).at(frequencies);
        List<Steady> high = new HarmonicBalance(model, input, 10).at(frequencies);
        for (int i = 0; i < frequencies.length; i++) {
            Complex[] locked =
                    new FrequencyResponse(model, LinearModel.of(model, Condition.LOCKED), input).at(frequencies[i]);
            same(low.get(i).coordinates(), locked);
            assertThat(low.get(i).liftsOff()).isFalse();
            Complex sliding = response(model, input, frequencies[i])[0];
            assertThat(high.get(i).coordinates()[0].subtract(sliding).norm()).isLessThan(0.03 * (0.1 + sliding.norm()));
            assertThat(high.get(i).settled()).isTrue();
        }
        assertThat(high.get(frequencies.length - 1).liftsOff()).isTrue();
    }

    /** Amplitude-dependent frequency runs from the locked to the sliding one, and friction takes most in between. */
    @Test
    void aSwingPassesFromLockedToSliding() {
        VehicleModel model = model(Fleet.described(
                Fleet.symmetrical(", friction: {share of load: 0.06, constant: 30 N, locked rate: 2 times}")));
        Mode bounce = Modes.of(model, Condition.SLIDING).chief(Motion.BOUNCE).orElseThrow();
        List<Swing> swings =
                Swing.of(model, bounce, new double[] {1, 0.01, 1e-5}).orElseThrow();
        double locked = Modes.of(model, Condition.LOCKED)
                .chief(Motion.BOUNCE)
                .orElseThrow()
                .frequency();
        assertThat(swings.get(0).frequency()).isCloseTo(bounce.frequency(), within(1e-2));
        assertThat(swings.get(2).frequency()).isCloseTo(locked, within(1e-9));
        assertThat(swings.get(2).friction()).isZero();
        assertThat(swings.get(1).friction())
                .isGreaterThan(0.05)
                .isGreaterThan(swings.get(0).friction());
        assertThat(swings.get(1).frequency()).isBetween(bounce.frequency(), locked);
    }
}
