package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.ride.LinearReadOff.Source;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Obstacle.Lie;
import org.ridewright.road.Obstacle.Side;
import org.ridewright.road.Road;
import org.ridewright.signal.Channel;
import org.ridewright.solver.Problem;
import org.ridewright.solver.Solution;
import org.ridewright.solver.StepListener;
import org.ridewright.vehicle.FurtherMotions.Motion;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Bounce;

/** Fore-and-aft motion of the undercarriage, and what wheels push along their contact normals. */
class SurgeTest {
    private static final String FRICTION = ", friction: {share of load: 6 %, constant: 40 N}";
    private static final String SURGE = "coordinates: surge\n";

    static Stream<Vehicle> fleet() {
        return Fleet.all().stream().map(v -> v.with(v.further().with(Motion.SURGE, Motion.SWAY)));
    }

    private static Lie lie(Side side) {
        return new Lie(
                Measure.of(4, QuantityKind.LENGTH), side, Measure.of(0, QuantityKind.ANGLE), 1, Optional.empty());
    }

    private static Measure length(double metres) {
        return Measure.of(metres, QuantityKind.LENGTH);
    }

    private static Travel steady(double speed) {
        return new Travel(SpeedPlan.steady(Measure.of(speed, QuantityKind.SPEED)));
    }

    private static Road plank(double height, Side side) {
        return Trial.road(
                new Obstacle.Plank(lie(side), length(height), length(0.15), new Obstacle.Shape.Rectangular()));
    }

    private static Road hump(double height) {
        return Trial.road(new Obstacle.Hump(lie(Side.BOTH), length(height), length(3)));
    }

    /** Road work less the push, stored and lost energy: what is left over is round-off. */
    @ParameterizedTest
    @MethodSource("fleet")
    void theEnergyBooksCloseWithThePushOfTheWheels(Vehicle vehicle) {
        for (Road road : List.of(plank(0.025, Side.BOTH), plank(0.025, Side.LEFT), hump(0.04))) {
            for (double speed : new double[] {1.5, 6}) {
                Solution solution = Trial.of(vehicle, road, speed, 1).solve(step -> {});
                assertThat(solution.energy().relativeResidual())
                        .as(road + " at " + speed)
                        .isLessThan(1e-9);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("fleet")
    void bothSolversAgreeWithSurgeAndSwayOverEveryObstacle(Vehicle vehicle) {
        double speed = 1.01 * Math.sqrt(vehicle.topSpeed().orElseThrow().value());
        for (Obstacle obstacle : Obstacles.everyKind(1)) {
            Agreement agreement = Agreement.of(Trial.of(vehicle, Trial.road(obstacle), speed, 1));
            assertThat(agreement.worst())
                    .as(Obstacles.name(obstacle) + ": " + agreement.readOff())
                    .isLessThan(FleetAgreementTest.AGREED);
        }
    }

    /** Nothing holds a free-rolling vehicle: what its wheels push is all that changes {@code (m + m_u) ξ̇ + S θ̇}. */
    @ParameterizedTest
    @MethodSource("fleet")
    void theImpulseOfTheDraughtIsTheChangeOfMomentum(Vehicle vehicle) {
        double speed = 2;
        Trial trial = Trial.of(vehicle, plank(0.025, Side.LEFT), speed, 1);
        VehicleModel model = trial.model();
        Impulse impulse = new Impulse(new Draught(model.wheels(), steady(speed)));
        Solution solution = trial.solve(impulse);
        int surge = model.coordinates().surge();
        double momentum = 0;
        double size = 0;
        for (int i = 0; i < solution.v().length; i++) {
            double part = model.equations().mass(surge, i) * solution.v()[i];
            momentum += part;
            size += Math.abs(part);
        }
        assertThat(momentum + impulse.sum).isCloseTo(0, within(1e-9 * Math.max(size, impulse.size)));
        assertThat(impulse.size).isGreaterThan(1);
    }

    /** {@code ∫ draught dt}. */
    private static final class Impulse implements StepListener {
        private final Draught draught;
        private final double[] work = new double[SampleRecorder.ROOM];
        private double sum;
        private double size;

        Impulse(Draught draught) {
            this.draught = draught;
        }

        @Override
        public void step(org.ridewright.solver.Step step) {
            Arrays.fill(work, 0);
            int degree = draught.polynomial(step, work);
            double whole = 0;
            for (int k = degree; k >= 0; k--) {
                whole = whole * step.end() + work[k] / (k + 1);
            }
            sum += whole * step.end() * step.h();
            size = Math.max(size, Math.abs(sum));
        }
    }

    /** While the vehicle gains speed the slope is that of the path, not of the height against time: books and reference agree. */
    @Test
    void theBooksCloseWhileTheSpeedChanges() {
        Vehicle vehicle = Fleet.described(Fleet.symmetrical(FRICTION) + "coordinates: [surge, sway]\n");
        Measure slow = Measure.of(2, QuantityKind.SPEED);
        Measure fast = Measure.of(5, QuantityKind.SPEED);
        SpeedPlan plan = new SpeedPlan(
                Optional.of("faster"),
                List.of(new SpeedPlan.Leg(length(0), slow), new SpeedPlan.Leg(length(3), fast)),
                length(5));
        VehicleModel model = VehicleModel.assemble(vehicle, vehicle.loadCases().get(0), Optional.empty(), false);
        Trial trial = new Trial(
                model,
                new Problem(
                        model.equations(),
                        new Heights(model, hump(0.04), new Travel(plan)).all(4),
                        model.rest().q(),
                        new double[model.equations().size()],
                        model.rest().friction(),
                        4));
        Impulse impulse = new Impulse(new Draught(model.wheels(), new Travel(plan)));
        Solution solution = trial.solve(impulse);
        assertThat(solution.energy().relativeResidual()).isLessThan(1e-9);
        int surge = model.coordinates().surge();
        double momentum = 0;
        for (int i = 0; i < solution.v().length; i++) {
            momentum += model.equations().mass(surge, i) * solution.v()[i];
        }
        assertThat(momentum).isCloseTo(-impulse.sum, within(1e-7 * impulse.size));
        assertThat(Agreement.of(trial).worst()).isLessThan(1e-7);
    }

    /** On the level nothing pushes, and surge only does what the eliminated form has put into the pitch inertia. */
    @Test
    void onTheLevelFreeSurgeGivesThePitchingOfTheEliminatedForm() {
        Vehicle eliminated = Fleet.described(Fleet.symmetrical(FRICTION));
        Vehicle free = Fleet.described(Fleet.symmetrical(FRICTION) + SURGE);
        Trial without = leaning(Trial.of(eliminated, Trial.road(), 3, 2));
        Trial with = leaning(Trial.of(free, Trial.road(), 3, 2));
        for (String name : List.of("body heave", "body pitch", "front axle heave")) {
            assertThat(difference(without, with, name)).as(name).isLessThan(1e-10);
        }
        List<ReadOff> seat =
                new ReadOffs(with.model()).seat(with.model().seats().get(0));
        List<ReadOff> other =
                new ReadOffs(without.model()).seat(without.model().seats().get(0));
        double[] a = record(with, seat.get(0)).samples();
        double[] b = record(without, other.get(0)).samples();
        for (int i = 0; i < a.length; i++) {
            assertThat(a[i]).as("a_x at sample " + i).isCloseTo(b[i], within(1e-8));
        }
        assertThat(Arrays.stream(a).map(Math::abs).max().orElseThrow()).isGreaterThan(0.3);
    }

    /** Pushed down at the front, then let go. */
    private static Trial leaning(Trial trial) {
        double[] q = trial.problem().q().clone();
        q[trial.model().coordinates().pitch()] += 0.02;
        Problem p = trial.problem();
        return new Trial(trial.model(), new Problem(p.equations(), p.heights(), q, p.v(), p.friction(), p.duration()));
    }

    private static Channel record(Trial trial, ReadOff readOff) {
        SampleRecorder recorder =
                new SampleRecorder(List.of(readOff), 200, trial.problem().duration());
        trial.solve(recorder);
        return recorder.channels().get(0);
    }

    private static double difference(Trial a, Trial b, String name) {
        double[] x = named(a, name);
        double[] y = named(b, name);
        double worst = 0;
        for (int i = 0; i < x.length; i++) {
            worst = Math.max(worst, Math.abs(x[i] - y[i]));
        }
        return worst;
    }

    private static double[] named(Trial trial, String name) {
        return trial.motion(200).stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow()
                .samples();
    }

    /** An unyielding drawbar holds the undercarriage as the brake does; what is left falls as its rate rises. */
    @Test
    void aVeryStiffDrawbarGivesTheBrakedForm() {
        String plain = Fleet.symmetrical("");
        Vehicle vehicle = Fleet.described(plain);
        VehicleModel braked = VehicleModel.assemble(vehicle, vehicle.loadCases().get(0), Optional.empty(), true);
        Heights heights = new Heights(braked, hump(0.03), steady(3));
        Trial held = new Trial(
                braked,
                new Problem(
                        braked.equations(),
                        heights.all(3),
                        braked.rest().q(),
                        new double[braked.equations().size()],
                        braked.rest().friction(),
                        3));
        double before = Double.POSITIVE_INFINITY;
        for (String rate : List.of("1 MN/m", "10 MN/m", "100 MN/m", "1000 MN/m")) {
            Vehicle towed = Fleet.described(plain + SURGE + "held fore and aft: [{rate: " + rate + "}]\n");
            Trial with = Trial.of(towed, hump(0.03), 3, 1.2);
            double apart = difference(truncated(held, with.problem().duration()), with, "body pitch");
            assertThat(apart).as(rate).isLessThan(before / 5);
            before = apart;
        }
        assertThat(before).isLessThan(1e-6);
    }

    private static Trial truncated(Trial trial, double duration) {
        Problem p = trial.problem();
        return new Trial(trial.model(), new Problem(p.equations(), p.heights(), p.q(), p.v(), p.friction(), duration));
    }

    /**
     * A hard wheel of mass m_u that meets a plank's edge, where its path sets out with slope s, is thrown up with {@code (1 + e) v s}
     * within no time, so its contact gives the impulse {@code P = (1 + e) m_u v s} upward and {@code s P} backward: the whole vehicle
     * loses {@code s P/(m + m_u)} of its speed. A rate 100 times as high comes ten times as near.
     */
    @Test
    void aHardWheelLosesTheSpeedThatTheImpulseAtThePlankTakes() {
        double speed = 2;
        double h = 0.01;
        double r = 0.45;
        double s = Math.sqrt(2 * r * h - h * h) / (r - h);
        double zeta = 0.2;
        double e = Bounce.restitution(zeta);
        double lost = s * (1 + e) * 40 * speed * s / (20 + 40);
        double[] errors = new double[3];
        String[] rates = {"10 MN/m", "1000 MN/m", "100000 MN/m"};
        for (int i = 0; i < 3; i++) {
            Vehicle vehicle = Fleet.described("""
                    vehicle: one wheel
                    layout: quarter
                    body: {mass: 20 kg}
                    axles:
                      - unsprung mass: 40 kg
                        wheel: {diameter: 0.9 m, tyre: iron, contact rate: %s, contact damping ratio: 0.2}
                        springs: [{kind: coil, rate: 1 kN/m}]
                    coordinates: [surge]
                    """.formatted(rates[i]));
            Trial trial = Trial.of(vehicle, plank(h, Side.BOTH), speed, 0.5);
            double meets = Heights.firstContact(
                            new Heights(trial.model(), plank(h, Side.BOTH), steady(speed)).axleTimes())
                    .orElseThrow();
            Trial struck = truncated(trial, meets + 0.008);
            int surge = struck.model().coordinates().surge();
            double change = struck.solve(step -> {}).v()[surge];
            errors[i] = Math.abs(change / -lost - 1);
        }
        assertThat(errors[1]).isCloseTo(errors[0] / 10, within(errors[0] / 20));
        assertThat(errors[2]).isCloseTo(errors[1] / 10, within(errors[1] / 20));
        assertThat(errors[2]).isLessThan(2e-3);
    }

    /** {@code F = A sin ωt} on a mass that nothing holds: the speed swings by {@code A/(m ω)} about what it was. */
    @Test
    void aHorsesStepSwingsTheSpeedOfAFreeVehicle() {
        String yaml = Fleet.symmetrical("").replace("spring mount height: 0.6 m", "pitch axis: centre of mass")
                + SURGE
                + "pull: {frequency: 2 Hz, amplitude: 150 N}\n";
        Trial trial = Trial.of(Fleet.described(yaml), Trial.road(), 2, 3);
        VehicleModel model = trial.model();
        int surge = model.coordinates().surge();
        double omega = 4 * Math.PI;
        double swing = 150 / (omega * model.totalMass());
        double[] speed = record(
                        trial,
                        LinearReadOff.named("speed", "m/s")
                                .plus(Source.VELOCITY, surge, 1)
                                .build())
                .samples();
        for (int i = 100; i < speed.length; i++) {
            assertThat(speed[i]).isCloseTo(-swing * Math.cos(omega * i / 200.0), within(1e-9 * swing));
        }
        assertThat(trial.solve(step -> {}).energy().relativeResidual()).isLessThan(1e-9);
    }

    /** At the height z of the body the same pull turns it with the arm {@code z − z_m}, steadily by {@code F (z − z_m)} over the pitch rate. */
    @Test
    void aPullHighOnTheBodyPitchesItMoreThanOneAtTheUndercarriage() {
        String low =
                Fleet.symmetrical("") + SURGE + "pull: {frequency: 0.02 Hz, amplitude: 400 N, above ground: 0.6 m}\n";
        String high = low.replace("above ground: 0.6 m", "above ground: 1.1 m");
        String none = low.replace(", above ground: 0.6 m", "");
        String held = "held fore and aft: [{rate: 50 kN/m, damping: 40 kN s/m}]\n";
        double[] pitches = new double[3];
        int next = 0;
        for (String yaml : List.of(none, low, high)) {
            Trial trial = Trial.of(Fleet.described(yaml + held), Trial.road(), 2, 62.5);
            double[] pitch = named(trial, "body pitch");
            pitches[next++] = pitch[pitch.length - 1];
        }
        assertThat(pitches[1]).isCloseTo(pitches[0], within(1e-12));
        // 62.5 s is a quarter past a whole number of periods of 50 s: the full amplitude, hardly moving
        Trial stood = Trial.of(Fleet.described(high + held), Trial.road(), 2, 1);
        assertThat(pitches[2] - pitches[1]).isCloseTo(turned(stood.model(), 400 * 0.5), within(2e-6));
        assertThat(pitches[2]).isGreaterThan(1e-4);
    }

    /** Static pitch under a couple: the stiffness of springs and contacts alone, solved by pitching heave and both axles. */
    private static double turned(VehicleModel model, double couple) {
        double k1 = 2 / (1 / 30e3 + 1 / 2e6);
        double k2 = 2 / (1 / 34e3 + 1 / 2e6);
        double x = -model.centreOfMass().x();
        double k = k1 + k2;
        double coupling = -k1 * x + k2 * (1.7 - x);
        double rotation = k1 * x * x
                + k2 * (1.7 - x) * (1.7 - x)
                + model.equations()
                        .gravityStiffness(
                                model.coordinates().pitch(), model.coordinates().pitch());
        return couple / (rotation - coupling * coupling / k);
    }
}
