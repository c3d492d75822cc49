package org.ridewright.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.io.InputException;
import org.ridewright.ride.Fleet;
import org.ridewright.vehicle.GappedStage;
import org.ridewright.vehicle.Vehicle;

class StandingVehicleTest {
    private static final double G = VehicleModel.GRAVITY;

    static List<Vehicle> fleet() {
        return Fleet.all();
    }

    @ParameterizedTest
    @MethodSource("fleet")
    void wheelsAndHitchesCarryTheWholeWeight(Vehicle vehicle) {
        for (Standing each : StandingVehicle.of(vehicle)) {
            double hitches =
                    each.hitches().stream().mapToDouble(SupportLoad::load).sum();
            assertThat(each.wheelLoad() + hitches).isCloseTo(each.mass() * G, within(1e-8 * each.mass() * G));
            double axles = 0;
            for (int a = 0; a < vehicle.axles().size(); a++) {
                axles += each.axleLoad(a);
            }
            assertThat(axles).isCloseTo(each.wheelLoad(), within(1e-9 * axles));
        }
    }

    /** A mass on a spring of rate k sinks by m g/k, by more under a load of Δm by Δm g/k, and its helper takes part past its gap. */
    private static final String QUARTER = """
            vehicle: quarter
            layout: quarter
            body: {mass: 200 kg}
            axles:
              - name: wheel
                unsprung mass: 20 kg
                wheels: {diameter: 0.6 m, tyre: iron, path: disc}
                springs:
                  - name: leaf
                    kind: half-elliptic leaf
                    leaves: {pack: [{number: 8, width: 60 mm, thickness: 7 mm}], length: 1 m%s}
                    helper: {gap: 30 mm, rate: 50 kN/m}
                    bump stop: {clearance: 60 mm, rate: 500 kN/m}
                    droop stop: {clearance: 10 mm, rate: 500 kN/m}
            load cases:
              - {name: light, aboard: []}
              - {name: laden, aboard: [{cargo: sacks, mass: 200 kg, at: {above ground: 1 m}}]}
            """;
    /** Table of handbook examples, T1 (N/m). */
    private static final double RATE = 90442.24;

    @Test
    void aSpringGivesByLoadOverRateAndTellsWhatIsLeftToItsStops() {
        List<Standing> all = StandingVehicle.of(Fleet.described(QUARTER.formatted("")));
        SpringLoad light = all.get(0).springs().get(0);
        assertThat(light.deflection()).isCloseTo(200 * G / RATE, within(1e-7));
        assertThat(light.fromEmpty()).isZero();
        assertThat(stage(light, GappedStage.Kind.HELPER).left()).isCloseTo(0.03 - light.deflection(), within(1e-12));
        assertThat(stage(light, GappedStage.Kind.DROOP_STOP).left())
                .isCloseTo(light.deflection() + 0.01, within(1e-12));
        SpringLoad laden = all.get(1).springs().get(0);
        double expected = (400 * G + 50e3 * 0.03) / (RATE + 50e3);
        assertThat(laden.deflection()).isCloseTo(expected, within(1e-7));
        assertThat(laden.fromEmpty()).isCloseTo(expected - light.deflection(), within(1e-12));
        assertThat(stage(laden, GappedStage.Kind.HELPER).acts()).isTrue();
        assertThat(laden.rate()).isCloseTo(RATE + 50e3, within(0.1));
        assertThat(laden.force()).isCloseTo(400 * G, within(1e-6));
    }

    private static StageTravel stage(SpringLoad spring, GappedStage.Kind kind) {
        return spring.stages().stream()
                .filter(s -> s.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    /** 255.1 MPa under 4 kN, in proportion to the leaves' own load; the helper carries its part itself. */
    @Test
    void leavesAreStressedByTheirOwnShareOfTheLoadAlone() {
        List<Standing> all = StandingVehicle.of(Fleet.described(QUARTER.formatted(", allowable stress: 300 MPa")));
        SpringLoad laden = all.get(1).springs().get(0);
        double own = RATE * laden.deflection();
        LeafLoad leaves = laden.leaves().orElseThrow();
        assertThat(leaves.stress()).isCloseTo(255.102041e6 * own / 4000, within(10.0));
        assertThat(leaves.share().orElseThrow()).isCloseTo(leaves.stress() / 300e6, within(1e-12));
        assertThat(leaves.atBumpStop().orElseThrow()).isCloseTo(255.102041e6 * RATE * 0.06 / 4000, within(100.0));
    }

    private static final String CART = """
            vehicle: cart
            body: {mass: 300 kg, centre of mass: {ahead of front axle: 0.1 m, above ground: 1 m}, outline: {length: 2 m, width: 1.2 m, height: 0.6 m}}
            axles:
              - kind: beam
                track: 1.4 m
                unsprung mass: 90 kg
                wheels: {diameter: 1.2 m, tyre: iron}
                springs: [{kind: half-elliptic leaf, apart: 0.9 m, rate: 20 kN/m}]
            hitches:
              - {name: shafts, at: {ahead of front axle: 1.8 m, above ground: 1 m}, rate: 15 kN/m%s}
            load cases:
              - {name: empty, aboard: []}
              - {name: sacks, aboard: [{cargo: sacks, mass: 150 kg, at: {behind front axle: 0.02 m, above ground: 1.2 m}}]}
            """;

    @Test
    void aCartLevelWithALoadLeansUnderAnother() {
        List<Standing> free = StandingVehicle.of(Fleet.described(CART.formatted("")));
        List<Standing> level = StandingVehicle.of(Fleet.described(CART.formatted(", level with: sacks")));
        assertThat(Math.abs(free.get(1).pitchFromFree())).isGreaterThan(0.02);
        assertThat(level.get(1).pitchFromFree()).isCloseTo(0, within(1e-10));
        assertThat(Math.abs(level.get(0).pitchFromFree())).isGreaterThan(1e-3);
    }

    /** With the body level, the weight turns about the axle by its moment alone. */
    @Test
    void theShaftsOfALevelCartCarryTheMomentOverTheirLength() {
        Standing level = StandingVehicle.of(Fleet.described(CART.formatted(", level with: sacks")))
                .get(1);
        double moment = 300 * G * 0.1 - 150 * G * 0.02;
        assertThat(level.hitches().get(0).load()).isCloseTo(moment / 1.8, within(1e-6));
    }

    @Test
    void aHitchIsLevelWithALoadCaseOfTheFile() {
        assertThatThrownBy(() -> Fleet.described(CART.formatted(", level with: sack")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("sack");
    }

    /** A stop measured with a load and a level hitch each move the other; both are found together. */
    @Test
    void clearancesMeasuredWithALoadAgreeWithALevelHitch() {
        String yaml = CART.formatted(", level with: sacks")
                .replace(
                        "rate: 20 kN/m}",
                        "rate: 20 kN/m, bump stop: {clearance: 5 mm, rate: 300 kN/m, measured with: empty}}");
        List<Standing> all = StandingVehicle.of(Fleet.described(yaml));
        assertThat(all.get(1).pitchFromFree()).isCloseTo(0, within(1e-10));
        for (SpringLoad spring : all.get(0).springs()) {
            assertThat(stage(spring, GappedStage.Kind.BUMP_STOP).left()).isCloseTo(5e-3, within(1e-10));
        }
    }
}
