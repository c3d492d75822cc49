package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.ridewright.dynamics.Element;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.signal.Channel;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Solution;
import org.ridewright.vehicle.Vehicle;

/** What must hold of every ride, whatever the vehicle and the road. The seeds are fixed so that a build is the same each time. */
class RidePropertyTest {
    private static final double RATE = 500;
    /** Two runs of one motion that differ by round-off alone: by this share of the r.m.s. of each coordinate and its rates. */
    private static final double SAME = 1e-7;

    @Provide
    Arbitrary<GeneratedVehicle> vehicles() {
        return GeneratedVehicle.any();
    }

    @Provide
    Arbitrary<GeneratedRoad> roads() {
        return GeneratedRoad.any();
    }

    private static Trial trial(GeneratedVehicle vehicle, GeneratedRoad road) {
        return Trial.of(vehicle.vehicle(), road.road(), road.speed(), 1);
    }

    private static double difference(Trial first, Trial second) {
        return Likeness.difference(first.motion(RATE), second.motion(RATE));
    }

    /** Invariants 1 to 3: no guard ends a step on its wrong side, no switch is missed, nothing jumps; the books close, and nothing gives energy away. */
    @Property(tries = 60, seed = "1", shrinking = ShrinkingMode.OFF)
    void everyForceIsThatOfItsLawAtEveryInstant(
            @ForAll("vehicles") GeneratedVehicle vehicle, @ForAll("roads") GeneratedRoad road) {
        Trial trial = trial(vehicle, road);
        LawScan scan = new LawScan(trial.problem(), 24);
        Solution solution = trial.solve(scan);
        scan.assertNothingMissed();
        assertThat(solution.energy().relativeResidual()).isLessThan(1e-8);
        for (double heat : solution.energy().dissipatedByElement()) {
            assertThat(heat).isGreaterThan(-1e-9 * (1 + solution.energy().dissipated()));
        }
    }

    /** Heave, pitch and the like of the one are those of the other; rolls and left and right change places. */
    @Property(tries = 25, seed = "2", shrinking = ShrinkingMode.OFF)
    void aMirroredVehicleOnAMirroredRoadGivesAMirroredRide(
            @ForAll("vehicles") GeneratedVehicle vehicle, @ForAll("roads") GeneratedRoad road) {
        List<Channel> one = trial(vehicle, road).motion(RATE);
        List<Channel> other =
                new ArrayList<>(trial(vehicle.mirrored(), road.mirrored()).motion(RATE));
        double[] signs = new double[one.size()];
        Arrays.fill(signs, 1);
        for (int i = 0; i < signs.length; i++) {
            String name = one.get(i).name();
            if (name.contains("roll") || name.contains("twist")) {
                signs[i] = -1;
            } else if (name.contains("wheel left")) {
                Collections.swap(other, i, i + 3);
            }
        }
        assertThat(Likeness.difference(one, other, signs)).isLessThan(SAME);
    }

    @Property(tries = 25, seed = "3", shrinking = ShrinkingMode.OFF)
    void theOrderOfTheElementsDoesNotMatter(
            @ForAll("vehicles") GeneratedVehicle vehicle, @ForAll("roads") GeneratedRoad road, @ForAll Random random) {
        Trial trial = trial(vehicle, road);
        assertThat(difference(trial, shuffled(trial, random))).isLessThan(SAME);
    }

    private static Trial shuffled(Trial trial, Random random) {
        Problem problem = trial.problem();
        List<Element> before = problem.equations().elements();
        List<Element> after = new ArrayList<>(before);
        Collections.shuffle(after, random);
        double[] friction = new double[problem.friction().length];
        int next = 0;
        for (Element element : after) {
            int from = 0;
            for (int e = 0; e < before.indexOf(element); e++) {
                from += before.get(e).law().friction().states();
            }
            for (int j = 0; j < element.law().friction().states(); j++) {
                friction[next++] = problem.friction()[from + j];
            }
        }
        return new Trial(
                trial.model(),
                new Problem(
                        problem.equations().withElements(after),
                        problem.heights(),
                        problem.q(),
                        problem.v(),
                        friction,
                        problem.duration()));
    }

    @Property(tries = 25, seed = "4", shrinking = ShrinkingMode.OFF)
    void aSpringInTwoOrThreeLikePartsIsTheSpring(
            @ForAll("vehicles") GeneratedVehicle vehicle, @ForAll("roads") GeneratedRoad road) {
        int parts = vehicle.seatMass() > 0 ? 2 : 3;
        Trial split = Trial.of(vehicle.vehicle(parts), road.road(), road.speed(), 1);
        assertThat(difference(trial(vehicle, road), split)).isLessThan(SAME);
    }

    @Property(tries = 25, seed = "5", shrinking = ShrinkingMode.OFF)
    void aHelperThatIsNeverTouchedIsAbsent(
            @ForAll("vehicles") GeneratedVehicle vehicle, @ForAll("roads") GeneratedRoad road) {
        SpringPlan front = vehicle.front().spring().steel();
        SpringPlan rear = vehicle.rear().spring().steel();
        Trial without = trial(vehicle.with(front.withHelper(Double.NaN), rear.withHelper(Double.NaN)), road);
        Trial with = trial(vehicle.with(front.withHelper(0.5), rear.withHelper(0.6)), road);
        assertThat(difference(without, with)).isLessThan(SAME);
    }

    /** Joints that say nothing new only make the solver stop more often. */
    @Property(tries = 20, seed = "6", shrinking = ShrinkingMode.OFF)
    void theLengthOfTheStepsDoesNotMatter(
            @ForAll("vehicles") GeneratedVehicle vehicle, @ForAll("roads") GeneratedRoad road) {
        Trial trial = trial(vehicle, road);
        assertThat(difference(trial, trial.cut(1.37e-3))).isLessThan(SAME);
    }

    @Property(tries = 10, seed = "7", shrinking = ShrinkingMode.OFF)
    void theRateOfSamplingDoesNotMatter(
            @ForAll("vehicles") GeneratedVehicle vehicle, @ForAll("roads") GeneratedRoad road) {
        Trial trial = trial(vehicle, road);
        List<Channel> coarse = trial.motion(100);
        List<Channel> fine = trial.motion(1000);
        for (int c = 0; c < coarse.size(); c++) {
            for (int i = 0; i < coarse.get(c).size(); i++) {
                assertThat(fine.get(c).sample(10 * i)).isEqualTo(coarse.get(c).sample(i));
            }
        }
    }

    /** Stopped anywhere and taken up again from coordinates, speeds and friction alone, a run goes on as if nothing had been. */
    @Property(tries = 25, seed = "8", shrinking = ShrinkingMode.OFF)
    void aRunInTwoPartsIsTheRun(
            @ForAll("vehicles") GeneratedVehicle vehicle, @ForAll("roads") GeneratedRoad road, @ForAll Random random) {
        Trial trial = trial(vehicle, road);
        Problem whole = trial.problem();
        double at = whole.duration() * (0.2 + 0.6 * random.nextDouble());
        Solution end = RegimeSolver.solve(whole, step -> {});
        Solution first = RegimeSolver.solve(
                new Problem(whole.equations(), whole.heights(), whole.q(), whole.v(), whole.friction(), at),
                step -> {});
        List<PiecewisePolynomial> later =
                whole.heights().stream().map(h -> shifted(h.block(0), at)).toList();
        Solution second = RegimeSolver.solve(
                new Problem(whole.equations(), later, first.q(), first.v(), first.friction(), whole.duration() - at),
                step -> {});
        for (int i = 0; i < end.q().length; i++) {
            assertThat(Math.abs(second.q()[i] - end.q()[i])).isLessThan(1e-9);
            assertThat(Math.abs(second.v()[i] - end.v()[i])).isLessThan(1e-7);
        }
    }

    private static PiecewisePolynomial shifted(PiecewisePolynomial height, double by) {
        double[] joints = new double[height.pieces() + 1];
        double[][] a = new double[height.pieces()][];
        for (int i = 0; i <= height.pieces(); i++) {
            joints[i] = height.joint(i) - by;
        }
        Arrays.setAll(a, height::coefficients);
        return new PiecewisePolynomial(joints, a, height.valueAfter());
    }

    /** Without friction and gaps, dampers alike both ways, wheels on the ground: the motion over two roads at once is the sum. */
    @Property(tries = 30, seed = "9", shrinking = ShrinkingMode.OFF)
    void whileNothingSwitchesMotionsAddUp(@ForAll("vehicles") GeneratedVehicle vehicle, @ForAll Random random) {
        GeneratedVehicle straight = vehicle.with(straight(vehicle.front()), straight(vehicle.rear()));
        Trial standing = Trial.of(withoutTwistFriction(straight), Trial.road(), 1, 3);
        int wheels = standing.problem().heights().size();
        double[] first = random.doubles(3L * wheels).toArray();
        double[] second = random.doubles(3L * wheels).toArray();
        List<List<Channel>> motions = new ArrayList<>();
        for (double[] factors : new double[][] {{1, 0}, {0, -1.7}, {1, -1.7}}) {
            List<PiecewisePolynomial> heights = new ArrayList<>();
            for (int w = 0; w < wheels; w++) {
                heights.add(waves(factors[0], first, factors[1], second, w));
            }
            Trial trial = standing.withHeights(heights);
            motions.add(trial.motion(RATE));
            assertThat(trial.solve(step -> {}).statistics().switches()).isZero();
        }
        List<Channel> sum = new ArrayList<>();
        for (int c = 0; c < motions.get(0).size(); c++) {
            Channel one = motions.get(0).get(c);
            double[] samples = new double[one.size()];
            for (int i = 0; i < samples.length; i++) {
                samples[i] = one.sample(i) + motions.get(1).get(c).sample(i);
            }
            sum.add(new Channel(one.name(), one.unit(), one.sampleRate(), 0, samples));
        }
        assertThat(Likeness.difference(sum, motions.get(2))).isLessThan(1e-9);
    }

    private static AxlePlan straight(AxlePlan axle) {
        return axle.with(axle.spring().without(false, false).steel()).evenlyDamped();
    }

    private static Vehicle withoutTwistFriction(GeneratedVehicle vehicle) {
        return Fleet.described(vehicle.yaml(1).replaceFirst(", friction: \\{constant: [^}]*\\}", ""));
    }

    /** Two slow waves {@code 64 h s³(1 − s)³} of at most a few tenths of a millimetre, one from each set of seeds. */
    private static PiecewisePolynomial waves(double a, double[] first, double b, double[] second, int wheel) {
        PiecewisePolynomial one = wave(a, first, wheel);
        PiecewisePolynomial two = wave(b, second, wheel);
        double[] joints = {one.joint(0), one.joint(1), two.joint(0), two.joint(1)};
        Arrays.sort(joints);
        double[][] coefficients = new double[3][];
        for (int i = 0; i < 3; i++) {
            double middle = (joints[i] + joints[i + 1]) / 2;
            double[] x = new double[8];
            double[] y = new double[8];
            one.expand(one.pieceAt(middle), joints[i], x);
            two.expand(two.pieceAt(middle), joints[i], y);
            Arrays.setAll(x, k -> x[k] + y[k]);
            coefficients[i] = x;
        }
        return new PiecewisePolynomial(joints, coefficients, 0);
    }

    private static PiecewisePolynomial wave(double factor, double[] seeds, int wheel) {
        double start = 0.2 + 0.5 * seeds[3 * wheel];
        double length = 0.3 + 0.7 * seeds[3 * wheel + 1];
        double height = factor * 2e-4 * (seeds[3 * wheel + 2] - 0.5);
        double[] a = {0, 0, 0, 1, -3, 3, -1};
        for (int k = 0; k < a.length; k++) {
            a[k] *= 64 * height / Math.pow(length, k);
        }
        return new PiecewisePolynomial(new double[] {start, start + length}, new double[][] {a}, 0);
    }
}
