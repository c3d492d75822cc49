package org.ridewright.modal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.ride.Fleet;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;

class ModesTest {
    static Stream<Arguments> fleet() {
        return Fleet.all().stream()
                .flatMap(v -> v.loadCases().stream()
                        .flatMap(l -> Stream.of(Condition.values()).map(c -> Arguments.of(v, l, c))));
    }

    static VehicleModel model(Vehicle vehicle) {
        return VehicleModel.assemble(vehicle, vehicle.loadCases().get(0), Optional.empty(), false);
    }

    private static double product(double[] a, double[][] matrix, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < b.length; j++) {
                sum += a[i] * matrix[i][j] * b[j];
            }
        }
        return sum;
    }

    /** φ_iᵀ M φ_j = δ_ij and φ_iᵀ K φ_j = ω_i² δ_ij: no mode does work on another. */
    @ParameterizedTest
    @MethodSource("fleet")
    void modesStoreNoEnergyTogether(Vehicle vehicle, LoadCase load, Condition condition) {
        VehicleModel model = VehicleModel.assemble(vehicle, load, Optional.empty(), false);
        Modes modes = Modes.of(model, condition);
        double[][] mass = modes.linear().massMatrix();
        double[][] stiffness = modes.linear().stiffnessMatrix();
        double greatest = Math.pow(modes.omegas()[modes.omegas().length - 1], 2);
        for (Mode a : modes.modes()) {
            for (Mode b : modes.modes()) {
                assertThat(product(a.shape(), mass, b.shape())).isCloseTo(a.equals(b) ? 1 : 0, within(1e-9));
                assertThat(product(a.shape(), stiffness, b.shape()))
                        .isCloseTo(a.equals(b) ? a.omega() * a.omega() : 0, within(1e-9 * greatest));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("fleet")
    void sharesOfEnergyAddUpToAllOfIt(Vehicle vehicle, LoadCase load, Condition condition) {
        Modes modes = Modes.of(VehicleModel.assemble(vehicle, load, Optional.empty(), false), condition);
        for (Mode mode : modes.modes()) {
            assertThat(mode.participations().stream()
                            .mapToDouble(Participation::share)
                            .sum())
                    .isCloseTo(1, within(1e-9));
        }
        assertThat(modes.modes().stream().map(Mode::name)).doesNotHaveDuplicates();
    }

    /** By Rayleigh's principle: stiffness added anywhere lowers no natural frequency. */
    @ParameterizedTest
    @MethodSource("fleet")
    void lockedFrictionLowersNoFrequency(Vehicle vehicle, LoadCase load, Condition condition) {
        VehicleModel model = VehicleModel.assemble(vehicle, load, Optional.empty(), false);
        double[] sliding = Modes.of(model, Condition.SLIDING).omegas();
        double[] locked = Modes.of(model, Condition.LOCKED).omegas();
        for (int i = 0; i < sliding.length; i++) {
            assertThat(locked[i]).isGreaterThanOrEqualTo(sliding[i] * (1 - 1e-9));
        }
    }

    /** One mass on one damped spring: ω_d = ω√(1−ζ²). */
    @Test
    void aMassOnADampedSpringSwingsSlowerByTheRootOfOneLessZetaSquared() {
        VehicleModel model = model(Fleet.described(stiffTyred(1000, 1000)));
        Mode ride = Modes.of(model, Condition.SLIDING).modes().get(0);
        double omega = Math.sqrt(22000 / 317.5);
        double zeta = 1000 / (2 * Math.sqrt(22000 * 317.5));
        assertThat(ride.omega()).isCloseTo(omega, within(1e-4 * omega));
        assertThat(ride.damped().orElseThrow().ratio()).isCloseTo(zeta, within(1e-4));
        assertThat(2 * Math.PI * ride.damped().orElseThrow().frequency())
                .isCloseTo(omega * Math.sqrt(1 - zeta * zeta), within(1e-3));
    }

    @Test
    void aDamperWithUnlikeSidesCountsWithTheMeanOfBoth() {
        Mode uneven = Modes.of(model(Fleet.described(stiffTyred(500, 1500))), Condition.SLIDING)
                .modes()
                .get(0);
        Mode even = Modes.of(model(Fleet.described(stiffTyred(1000, 1000))), Condition.SLIDING)
                .modes()
                .get(0);
        assertThat(uneven.damped()).isEqualTo(even.damped());
    }

    @Test
    void aModeDampedBeyondTheCriticalDoesNotSwing() {
        Modes modes = Modes.of(model(Fleet.described(stiffTyred(8000, 8000))), Condition.SLIDING);
        assertThat(modes.modes().get(0).damped()).isEmpty();
    }

    /** The quarter vehicle on a tyre so stiff that it is a mass on a spring. */
    private static String stiffTyred(double bump, double rebound) {
        return Fleet.quarter(1)
                .replace("192 kN/m", "10000000 kN/m")
                .replace("bump: 1.0", "bump: " + bump)
                .replace("rebound: 1.0", "rebound: " + rebound);
    }

    /** Roll rate of an axle with springs s apart: {@code k s²/2}. */
    @Test
    void springsHoldTheBodyInRollWithHalfTheirRateTimesTheirDistanceSquared() {
        VehicleModel model = model(Fleet.described("""
                vehicle: cart
                layout: half in roll
                body: {mass: 300 kg, centre of mass: {above ground: 0.8 m}, roll inertia: 60 kg m², roll axis: centre of mass}
                axles:
                  - name: axle
                    kind: beam
                    track: 1.4 m
                    unsprung mass: 90 kg
                    wheels: {diameter: 0.9 m, tyre: iron, contact rate: 10000000 N/mm, contact damping: 0 N s/m}
                    springs: [{kind: coil, apart: 0.9 m, rate: 30 kN/m}]
                """));
        Mode roll = Modes.of(model, Condition.SLIDING).chief(Motion.ROLL).orElseThrow();
        double rate = 30e3 * 0.9 * 0.9 / 2;
        assertThat(roll.omega()).isCloseTo(Math.sqrt(rate / 60), within(1e-4 * roll.omega()));
        assertThat(roll.name()).isEqualTo("roll");
        List<String> names = Modes.of(model, Condition.SLIDING).modes().stream()
                .map(Mode::name)
                .toList();
        assertThat(names).containsExactlyInAnyOrder("roll", "bounce", "axle hop", "axle tramp");
    }

    /** f = √(g/d)/2π of the static deflection d. */
    @Test
    void theBounceFollowsFromTheStaticDeflection() {
        VehicleModel model = model(Fleet.described(stiffTyred(1, 1)));
        double d = model.rest().compression()[1];
        double f = Modes.of(model, Condition.SLIDING)
                .chief(Motion.BOUNCE)
                .orElseThrow()
                .frequency();
        assertThat(f).isCloseTo(Math.sqrt(VehicleModel.GRAVITY / d) / (2 * Math.PI), within(1e-4 * f));
    }

    /** Eliminating the surge by hand gives the free-rolling vehicle's own pitch inertia: both find the same frequencies. */
    @ParameterizedTest
    @MethodSource("surging")
    void aVehicleThatSurgesUnheldRollsAlongAtNoFrequencyAndKeepsItsOthers(Vehicle vehicle) {
        Vehicle surging = vehicle.with(vehicle.further().with(org.ridewright.vehicle.FurtherMotions.Motion.SURGE));
        Modes with = Modes.of(model(surging), Condition.SLIDING);
        double[] without = Modes.of(model(vehicle), Condition.SLIDING).omegas();
        assertThat(with.modes().get(0).free()).isTrue();
        assertThat(with.modes().get(0).name()).isEqualTo("rolling along");
        assertThat(with.modes().get(0).damped()).isEmpty();
        for (int i = 0; i < without.length; i++) {
            assertThat(with.omegas()[i + 1]).isCloseTo(without[i], within(1e-7 * without[i]));
        }
    }

    static Stream<Vehicle> surging() {
        return Fleet.all().stream().filter(v -> v.further().motions().isEmpty());
    }
}
