package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.dynamics.Coordinates;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.modal.Condition;
import org.ridewright.modal.Modes;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.ride.LinearReadOff.Source;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Obstacle.Lie;
import org.ridewright.road.Obstacle.Side;
import org.ridewright.road.Road;
import org.ridewright.vehicle.Vehicle;

/** Sideways motion of the body on its axles. */
class SwayTest {
    private static final String FRICTION = ", friction: {share of load: 6 %, constant: 40 N}";
    private static final String SWAY = "coordinates: [sway]\n";

    private static Lie lie(Side side) {
        return new Lie(
                Measure.of(4, QuantityKind.LENGTH), side, Measure.of(0, QuantityKind.ANGLE), 1, Optional.empty());
    }

    private static Measure length(double metres) {
        return Measure.of(metres, QuantityKind.LENGTH);
    }

    private static Road plank(double height, Side side) {
        return Trial.road(
                new Obstacle.Plank(lie(side), length(height), length(0.15), new Obstacle.Shape.Rectangular()));
    }

    private static Road hump(double height, Side side) {
        return Trial.road(new Obstacle.Hump(lie(side), length(height), length(3)));
    }

    private static VehicleModel model(String yaml) {
        Vehicle vehicle = Fleet.described(yaml);
        return VehicleModel.assemble(vehicle, vehicle.loadCases().get(0), Optional.empty(), false);
    }

    /**
     * On independent wheels, about an axis through the centre of mass, sway stands alone: {@code ω = √(Σ k/m)} by the axles' rates, and the
     * frequency itself where the file gives that.
     */
    @ParameterizedTest
    @ValueSource(strings = {"rates", "frequency"})
    void swayAloneHasTheFrequencyOfItsRates(String given) {
        boolean byRates = given.equals("rates");
        String yaml = """
                vehicle: car
                body:
                  mass: 900 kg
                  centre of mass: {behind front axle: 1.1 m, above ground: 0.5 m}
                  roll inertia: 300 kg m2
                  pitch inertia: 900 kg m2
                  roll axis: centre of mass
                  pitch axis: centre of mass
                axles:
                  - {name: front, kind: independent, track: 1.4 m, unsprung mass: 60 kg, wheels: {diameter: 0.6 m, tyre: pneumatic},
                     springs: [{kind: coil, rate: 20 N/mm}]%s}
                  - {name: rear, kind: independent, behind front axle: 2.5 m, track: 1.4 m, unsprung mass: 60 kg,
                     wheels: {diameter: 0.6 m, tyre: pneumatic}, springs: [{kind: coil, rate: 20 N/mm}]%s}
                coordinates: [sway]
                """.formatted(
                                byRates ? ", sway rate: 300 N/mm, sway damping: 2 kN s/m" : "",
                                byRates ? ", sway rate: 600 N/mm" : "")
                + (byRates ? "" : "sway frequency: 5 Hz\n");
        VehicleModel model = model(yaml);
        double expected = byRates ? Math.sqrt(900e3 / 900) : 10 * Math.PI;
        double[] omegas = Modes.of(model, Condition.SLIDING).omegas();
        assertThat(Arrays.stream(omegas).map(w -> Math.abs(w - expected)).min().orElseThrow())
                .isLessThan(1e-9 * expected);
    }

    /** {@code M_yy = m}, {@code M_yφ = −m h}, {@code I_xx + m h²}, a beam's {@code I_j + m_j R²}; a rider on a cushion likewise. */
    @Test
    void massesMoveAsideWithTheirHeights() {
        String cushion = "seats: [{name: box, at: {behind front axle: 0.3 m, above ground: 1.4 m}, "
                + "cushion: {rate: 30 N/mm}, share on seat: 100 %}]";
        String rigid = "seats: [{name: box, at: {behind front axle: 0.3 m, above ground: 1.4 m}}]";
        for (String seat : List.of(rigid, cushion)) {
            VehicleModel model = model(Fleet.symmetrical("").replace(rigid, seat) + SWAY);
            Equations equations = model.equations();
            Coordinates at = model.coordinates();
            double first = 600 * 0.3 + 75 * 0.8;
            double second = 600 * 0.09 + 75 * 0.64;
            assertThat(equations.mass(at.sway(), at.sway())).isCloseTo(675, within(1e-9));
            assertThat(equations.mass(at.sway(), at.roll())).isCloseTo(-first, within(1e-9));
            assertThat(equations.mass(at.roll(), at.roll())).isCloseTo(120 + second, within(1e-9));
            assertThat(equations.gravityStiffness(at.roll(), at.roll()))
                    .isCloseTo(-VehicleModel.GRAVITY * first, within(1e-9));
            int beam = at.names().indexOf("rear axle roll");
            assertThat(equations.mass(beam, beam)).isCloseTo(36 + 110 * 0.55 * 0.55, within(1e-9));
        }
    }

    /** A left wheel that stands higher tilts the axle by rise over track, whose roll centre at the height z then stands z times that aside. */
    @Test
    void anAxleThatStandsAslantCarriesTheBodyAside() {
        Road step = Trial.road(new Obstacle.Step(lie(Side.LEFT), length(0.03), Optional.of(length(1))));
        double sway = settledSway(step);
        double lean = 0.03 / 1.4;
        assertThat(sway).isCloseTo(-0.6 * lean, within(0.03 * 0.6 * lean));
    }

    private static double settledSway(Road road) {
        Trial trial = Trial.of(
                Fleet.described(Fleet.symmetrical(", damping: 4 kN s/m") + SWAY + "sway damping ratio: 50 %\n"),
                road,
                2,
                30);
        return trial.solve(step -> {}).q()[trial.model().coordinates().sway()];
    }

    /** The other side's plank throws the other way. */
    @Test
    void aMirroredRoadThrowsTheOtherWay() {
        Vehicle vehicle = Fleet.described(Fleet.symmetrical(FRICTION) + "coordinates: [surge, sway]\n");
        double[] left = named(Trial.of(vehicle, plank(0.02, Side.LEFT), 2, 1), "body sway acceleration");
        double[] right = named(Trial.of(vehicle, plank(0.02, Side.RIGHT), 2, 1), "body sway acceleration");
        double[] surgeLeft = named(Trial.of(vehicle, plank(0.02, Side.LEFT), 2, 1), "surge");
        double[] surgeRight = named(Trial.of(vehicle, plank(0.02, Side.RIGHT), 2, 1), "surge");
        for (int i = 0; i < left.length; i++) {
            assertThat(right[i]).isCloseTo(-left[i], within(1e-6));
            assertThat(surgeRight[i]).isCloseTo(surgeLeft[i], within(1e-9));
        }
        assertThat(Arrays.stream(left).max().orElseThrow()).isGreaterThan(1);
    }

    @Test
    void aPlankUnderBothWheelsThrowsNobodyAside() {
        Vehicle vehicle = Fleet.described(Fleet.symmetrical(FRICTION) + SWAY);
        double[] sway = named(Trial.of(vehicle, plank(0.02, Side.BOTH), 2, 1), "body sway");
        assertThat(Arrays.stream(sway).map(Math::abs).max().orElseThrow()).isLessThan(1e-12);
    }

    @Test
    void withoutFrictionAndLiftOffTwiceTheHumpThrowsTwiceAsFar() {
        Vehicle vehicle = Fleet.described(Fleet.symmetrical("").replace("path: disc", "path: point") + SWAY);
        double[] one = named(Trial.of(vehicle, hump(0.01, Side.LEFT), 3, 1), "body sway");
        double[] two = named(Trial.of(vehicle, hump(0.02, Side.LEFT), 3, 1), "body sway");
        for (int i = 0; i < one.length; i++) {
            assertThat(two[i]).isCloseTo(2 * one[i], within(1e-8));
        }
        assertThat(Arrays.stream(two).map(Math::abs).max().orElseThrow()).isGreaterThan(1e-3);
    }

    /** {@code Σ m (ÿ − h φ̈)} is what the axles' sway springs push, at every instant. */
    @Test
    void onlyTheAxlesPushTheBodyAside() {
        Trial trial = Trial.of(
                Fleet.described(Fleet.symmetrical(FRICTION) + SWAY + "sway frequency: 7 Hz\n"),
                plank(0.02, Side.LEFT),
                2,
                0.5);
        VehicleModel model = trial.model();
        LinearReadOff.Builder balance = LinearReadOff.named("balance", "N");
        LinearReadOff.Builder push = LinearReadOff.named("push", "N");
        for (int i = 0; i < model.equations().size(); i++) {
            balance.plus(
                    Source.ACCELERATION,
                    i,
                    model.equations().mass(model.coordinates().sway(), i));
        }
        for (int e = 0; e < model.equations().elements().size(); e++) {
            if (model.equations().elements().get(e).kind() == Element.Kind.SWAY) {
                balance.plus(Source.FORCE, e, -1);
                push.plus(Source.FORCE, e, 1);
            }
        }
        SampleRecorder recorder = new SampleRecorder(
                List.of(balance.build(), push.build()), 1000, trial.problem().duration());
        trial.solve(recorder);
        double greatest = Arrays.stream(recorder.channels().get(1).samples())
                .map(Math::abs)
                .max()
                .orElseThrow();
        for (double x : recorder.channels().get(0).samples()) {
            assertThat(x).isCloseTo(0, within(1e-8 * greatest));
        }
        assertThat(greatest).isGreaterThan(100);
    }

    /** {@code a_y = ÿ − (z − z_roll) φ̈ + g φ}. */
    @Test
    void anAccelerometerFeelsSwayRollAndTilt() {
        Trial trial = Trial.of(Fleet.described(Fleet.symmetrical("") + SWAY), plank(0.02, Side.LEFT), 2, 0.5);
        ReadOff felt =
                new ReadOffs(trial.model()).seat(trial.model().seats().get(0)).get(1);
        SampleRecorder recorder =
                new SampleRecorder(List.of(felt), 500, trial.problem().duration());
        trial.solve(recorder);
        double[] sway = named(trial, "body sway acceleration");
        double[] roll = named(trial, "body roll acceleration");
        double[] angle = named(trial, "body roll");
        double[] read = recorder.channels().get(0).samples();
        for (int i = 0; i < read.length; i++) {
            double expected = sway[i] - (1.4 - 0.6) * roll[i] + VehicleModel.GRAVITY * angle[i];
            assertThat(read[i]).isCloseTo(expected, within(1e-9));
        }
    }

    /** Shared so that their resultant passes through the centre of mass, half way being even shares. */
    @Test
    void aFrequencyIsSharedAmongTheAxlesAsTheyCarryTheBody() {
        VehicleModel model = model(Fleet.symmetrical("") + SWAY + "sway frequency: 5 Hz\n");
        double[] rates = model.equations().elements().stream()
                .filter(e -> e.kind() == Element.Kind.SWAY)
                .mapToDouble(e -> e.law().rate())
                .toArray();
        double whole = 675 * Math.pow(10 * Math.PI, 2);
        assertThat(rates[0] + rates[1]).isCloseTo(whole, within(1e-9 * whole));
        assertThat(rates[1] * 1.7).isCloseTo(-model.centreOfMass().x() * whole, within(1e-9 * whole));
    }

    private static double[] named(Trial trial, String name) {
        return trial.motion(500).stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow()
                .samples();
    }
}
