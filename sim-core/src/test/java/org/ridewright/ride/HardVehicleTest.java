package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.RideException;
import org.ridewright.io.InputException;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Obstacle.Side;
import org.ridewright.road.Road;
import org.ridewright.signal.Channel;
import org.ridewright.solver.Problem;
import org.ridewright.solver.Solution;

/** Whole vehicles with figures or on roads that strain the solver: each ride must come out right, or be refused. */
class HardVehicleTest {
    private static final String FRICTION = ", friction: {share of load: 6 %, constant: 40 N}";

    private static Obstacle plank(double height, double length, Side side) {
        return new Obstacle.Plank(
                GeneratedRoad.lie(2, side, 0),
                GeneratedRoad.length(height),
                GeneratedRoad.length(length),
                new Obstacle.Shape.Rectangular());
    }

    private static Solution right(Trial trial) {
        LawScan scan = new LawScan(trial.problem(), 20);
        Solution solution = trial.solve(scan);
        scan.assertNothingMissed();
        assertThat(solution.energy().relativeResidual()).isLessThan(1e-8);
        return solution;
    }

    private static Trial trial(String yaml, double speed) {
        return Trial.of(Fleet.described(yaml), Trial.road(plank(0.03, 0.15, Side.LEFT)), speed, 0.7);
    }

    /** From a creep to motorway speed. */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.3, 1, 3, 10, 30, 60})
    void everySpeed(double speed) {
        right(trial(Fleet.symmetrical(FRICTION), speed));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e4, 1e5, 1e6, 1e7, 1e8, 1e9})
    void everyStiffnessOfContact(double rate) {
        String yaml = Fleet.symmetrical(FRICTION).replace("2 MN/m", rate + " N/m");
        Trial trial = trial(yaml, 3);
        right(trial);
        assertThat(trial.problem().equations().elements()).anyMatch(e -> e.law().rate() == rate);
    }

    /** Friction that locks with up to a million times the spring's rate. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 1e2, 1e4, 1e6})
    void everyLockedRate(double multiple) {
        String friction = FRICTION.replace("40 N}", "40 N, locked rate: " + multiple + " times}");
        right(trial(Fleet.symmetrical(friction), 3));
    }

    /** The stiffer the locked leaves, the nearer to rigid ones: body and axles move together to the inverse root of the rate. */
    @Test
    void everStifferLeavesComeToTheSameRide() {
        List<List<Channel>> rides = new ArrayList<>();
        for (double multiple : new double[] {1e3, 1e4, 1e5, 1e6}) {
            String friction = FRICTION.replace("40 N}", "40 N, locked rate: " + multiple + " times}");
            Trial trial = Trial.of(
                    Fleet.described(Fleet.symmetrical(friction)),
                    Trial.road(new Obstacle.Hump(
                            GeneratedRoad.lie(2, Side.BOTH, 0), GeneratedRoad.length(0.04), GeneratedRoad.length(3))),
                    3,
                    0.7);
            rides.add(List.of(trial.motion(500).get(0), trial.motion(500).get(6)));
        }
        double first = Likeness.difference(rides.get(1), rides.get(0));
        double second = Likeness.difference(rides.get(2), rides.get(1));
        double third = Likeness.difference(rides.get(3), rides.get(2));
        assertThat(second).isLessThan(0.5 * first);
        assertThat(third).isLessThan(0.5 * second);
        assertThat(third).isPositive().isLessThan(1e-3);
    }

    /** Nothing rubs and nothing is damped: what the road gave is all there. */
    @Test
    void withoutDampingAndFrictionNothingIsLost() {
        String yaml = Fleet.symmetrical("").replace("contact damping ratio: 0.2", "contact damping: 0 N s/m");
        Trial trial = trial(yaml, 3);
        Solution solution = right(trial);
        assertThat(solution.energy().dissipated()).isZero();
        assertThat(solution.energy().stored()).isGreaterThan(1);
        assertThat(solution.statistics().contactSwitches()).isPositive();
    }

    /** Axles of next to no mass: body and tyres in series. The mass makes no difference to the body in proportion to itself. */
    @Test
    void axlesOfNextToNoMass() {
        List<Channel> gram = null;
        List<Channel> centigram = null;
        for (double mass : new double[] {1e-3, 1e-4}) {
            String yaml = Fleet.quarter(50).replace("45.4 kg", mass + " kg");
            Trial trial = Trial.of(
                    Fleet.described(yaml),
                    Trial.road(new Obstacle.Hump(
                            GeneratedRoad.lie(2, Side.BOTH, 0), GeneratedRoad.length(0.04), GeneratedRoad.length(3))),
                    5,
                    0.2);
            right(trial);
            centigram = gram;
            gram = trial.motion(500).subList(0, 3);
        }
        assertThat(Likeness.difference(gram, centigram)).isLessThan(1e-5);
    }

    /** Dropped level, a vehicle that is the same all round is four quarter vehicles, and never leans. */
    @Test
    void allSpringsSwitchTogether() {
        String axle = """
                  - name: %s
                    kind: beam
                    behind front axle: %s m
                    track: 1.4 m
                    unsprung mass: 90 kg
                    roll inertia: 30 kg m2
                    wheels: {diameter: 0.9 m, tyre: iron, path: disc, contact rate: 2 MN/m, contact damping: 4000 N s/m}
                    springs:
                      - {name: leaves, kind: full-elliptic leaf, apart: 0.9 m, rate: 30 kN/m, friction: {share of load: 6 %%, constant: 40 N,
                         sliders: [{of limit: 60 %%, of locked rate: 70 %%}, {of limit: 40 %%, of locked rate: 30 %%}]},
                         helper: {gap: 60 mm, rate: 20 kN/m}, bump stop: {clearance: 80 mm, rate: 300 kN/m}}
                """;
        String whole = """
                vehicle: whole
                body:
                  mass: 600 kg
                  centre of mass: {behind front axle: 1 m, above ground: 0.9 m}
                  roll inertia: 120 kg m2
                  pitch inertia: 350 kg m2
                  roll axis: 0.6 m
                  spring mount height: 0.6 m
                axles:
                """ + axle.formatted("front", "0") + axle.formatted("rear", "2");
        String quarter = ("vehicle: quarter\nlayout: quarter\nbody: {mass: 150 kg}\naxles:\n"
                        + axle.formatted("front", "0"))
                .replaceAll(" *(kind: beam|track: .*|roll inertia: .*|behind front axle: .*)\n", "")
                .replace("apart: 0.9 m, ", "")
                .replace("90 kg", "45 kg");
        Trial four = dropped(whole, 0.05);
        Trial one = dropped(quarter, 0.05);
        right(four);
        right(one);
        List<Channel> all = four.motion(1000);
        List<Channel> single = one.motion(1000);
        for (int k = 0; k < 3; k++) {
            for (int i = 0; i < single.get(k).size(); i++) {
                double size = Math.max(1, Math.abs(single.get(k).sample(i)));
                assertThat(all.get(k).sample(i)).isCloseTo(single.get(k).sample(i), within(1e-8 * size));
            }
            assertThat(Likeness.rms(all.get(3 + k))).isLessThan(1e-9);
            assertThat(Likeness.rms(all.get(6 + k))).isLessThan(1e-9);
        }
    }

    /** Every coordinate that is a height starts that much above its place at rest. */
    private static Trial dropped(String yaml, double height) {
        Trial standing = Trial.of(Fleet.described(yaml), Trial.road(), 1, 1.5);
        Problem p = standing.problem();
        double[] q = p.q().clone();
        for (int i = 0; i < q.length; i++) {
            if (standing.model().coordinates().units().get(i).equals("m")) {
                q[i] += height;
            }
        }
        return new Trial(
                standing.model(), new Problem(p.equations(), p.heights(), q, p.v(), p.friction(), p.duration()));
    }

    /** Standing so that its helper just touches: on neither side of the switch, and yet at rest. */
    @Test
    void aHelperThatJustTouchesAtRest() {
        String yaml = Fleet.symmetrical(FRICTION + ", helper: {gap: 0 mm, rate: 20 kN/m, measured with: driver}");
        Trial rest = Trial.of(Fleet.described(yaml), Trial.road(), 1, 20);
        Solution solution = right(rest);
        for (int i = 0; i < solution.q().length; i++) {
            assertThat(solution.q()[i]).isCloseTo(rest.problem().q()[i], within(1e-12));
        }
        right(trial(yaml, 3));
    }

    /** A load that rubs without a constant part: where the spring pulls, there is nothing to rub but round-off of the limit. */
    @Test
    void aSpringThatIsPulledDoesNotRub() {
        Trial trial = dropped(Fleet.symmetrical(", friction: {share of load: 8 %}"), 0.4);
        Solution solution = right(trial);
        assertThat(solution.statistics().frictionSwitches()).isPositive();
        List<Element> elements = trial.problem().equations().elements();
        int[] pulled = {0};
        int[] rubbed = {0};
        trial.solve(step -> {
            for (int e = 0; e < elements.size(); e++) {
                if (elements.get(e).law().friction().states() > 0) {
                    double[] c = new double[SampleRecorder.ROOM];
                    double[] s = new double[SampleRecorder.ROOM];
                    step.addCompression(e, 1, c);
                    step.addFriction(e, 1, s);
                    double middle = step.end() / 2;
                    boolean pulls = elements.get(e).law().elasticForce(LawScan.value(c, middle)) < 0;
                    double rubbing = LawScan.value(s, middle);
                    pulled[0] += pulls ? 1 : 0;
                    rubbed[0] += !pulls && rubbing != 0 ? 1 : 0;
                    if (pulls) {
                        assertThat(rubbing).isCloseTo(0, within(1e-7));
                    }
                }
            }
        });
        assertThat(pulled[0]).isPositive();
        assertThat(rubbed[0]).isPositive();
    }

    /** Together stiff enough, but the one that bears most of the limit alone is not: it could not let go as the load falls. */
    @Test
    void aSliderTooSoftForItsShareOfTheLimitIsRefused() {
        String soft = FRICTION.replace(
                "40 N}",
                "40 N, locked rate: 0.1 times, sliders: [{of limit: 90 %, of locked rate: 25 %}, {of limit: 10 %, of locked rate: 75 %}]}");
        assertThatThrownBy(() -> trial(Fleet.symmetrical(soft), 3))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("locked rate")
                .hasMessageContaining("slider");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 5})
    void aBodyThatTiltsTooFarIsStopped(double speed) {
        String top = Fleet.symmetrical(FRICTION)
                .replace("above ground: 0.9 m}", "above ground: 1.4 m}")
                .replace("apart: 0.9 m, rate: 30", "apart: 0.9 m, rate: 60")
                .replace("apart: 0.9 m, rate: 34", "apart: 0.9 m, rate: 60");
        Scenario scenario = new Scenario(
                "tilt",
                "",
                List.of(new Scenario.Entrant(
                        Fleet.described(top),
                        "top.yaml",
                        List.of(),
                        List.of(SpeedPlan.steady(Measure.of(speed, QuantityKind.SPEED))))),
                List.of(new Road(
                        "kerb",
                        List.of(new Obstacle.Step(
                                GeneratedRoad.lie(2, Side.LEFT, 0),
                                GeneratedRoad.length(0.35),
                                Optional.of(GeneratedRoad.length(1)))),
                        Optional.empty())),
                Optional.empty(),
                Optional.empty(),
                Measure.of(100, QuantityKind.FREQUENCY),
                Scenario.Start.UNSTRESSED,
                false,
                List.of(),
                Optional.empty());
        assertThatThrownBy(() -> RideRunner.run(scenario, r -> {}))
                .isInstanceOf(RideException.class)
                .hasMessageContaining("rad")
                .hasMessageContaining("body");
    }
}
