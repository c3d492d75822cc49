package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Solution;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;

/** Cases in which a solver of piecewise equations is easily wrong: each must come out right, or be refused. */
class HardCaseTest {
    private static final double G = Bench.G;

    /** Rises to within a hair of leaving the ground: {@code c = w + (w + ε) cos ωt}, w = m g/k, with ε ≤ 0. */
    @ParameterizedTest
    @ValueSource(doubles = {0, -1e-16, -1e-14, -1e-12, -1e-10, -1e-8, -1e-6})
    void aMassThatJustDoesNotLeaveTheGroundSwingsOnAsIfNothingHadBeen(double epsilon) {
        double m = 40;
        double k = 4e5;
        double w = m * G / k;
        double omega = Math.sqrt(k / m);
        double t = 7.3;
        Problem problem = Bench.one(m, ForceLaw.contact(k, 0), Bench.LEVEL, -2 * w - epsilon, 0, t);
        Solution end = Bench.right(problem);
        assertThat(end.q()[0]).isCloseTo(-w - (w + epsilon) * Math.cos(omega * t), within(1e-10));
    }

    /**
     * Leaves the ground by a hair at each swing: up to touching it takes {@code t₁ = arccos(−w/(w + ε))/ω}, in flight {@code 2 v₁/g} with
     * {@code v₁ = ω √((w + ε)² − w²)}, and after n of these it is where it began.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1e-12, 1e-10, 1e-8, 1e-6, 1e-4})
    void aMassThatJustLeavesTheGroundFliesForJustSoLong(double epsilon) {
        double m = 40;
        double k = 4e5;
        double w = m * G / k;
        double omega = Math.sqrt(k / m);
        double lift = Math.acos(-w / (w + epsilon)) / omega;
        double speed = omega * Math.sqrt(epsilon * (2 * w + epsilon));
        double period = 2 * lift + 2 * speed / G;
        Problem problem = Bench.one(m, ForceLaw.contact(k, 0), Bench.LEVEL, -2 * w - epsilon, 0, 30.25 * period);
        Solution end = Bench.right(problem);
        double quarter = -w - (w + epsilon) * Math.cos(omega * 0.25 * period);
        assertThat(end.q()[0]).isCloseTo(quarter, within(1e-9));
        assertThat(end.statistics().contactSwitches()).isEqualTo(60);
    }

    /** A driven, damped contact whose least load is nothing at all: a hair more road, and the change is no greater than that hair. */
    @ParameterizedTest
    @ValueSource(doubles = {0, -1e-13, 1e-13, 1e-11, 1e-9, 1e-7})
    void aContactThatIsGrazedCarriesOn(double hair) {
        double m = 60;
        double k = 3e5;
        double d = 800;
        PiecewisePolynomial unit = Bumps.wave(1, 0.05, 0.11);
        // Without lift-off the motion is linear in the road, so the grazing height follows from one run on a contact
        // that can pull.
        ForceLaw pulls = ForceLaw.spring(k).withDamping(d);
        double rest = -m * G / k;
        double[] least = {Double.POSITIVE_INFINITY};
        RegimeSolver.solve(Bench.one(m, pulls, unit, rest, 0, 0.6), step -> {
            double[] f = new double[SampleRecorder.ROOM];
            step.addForce(0, 1, f);
            for (int i = 0; i <= 4000; i++) {
                least[0] = Math.min(least[0], LawScan.value(f, step.end() * i / 4000));
            }
        });
        double grazing = m * G / (m * G - least[0]);
        PiecewisePolynomial road = Bumps.wave(grazing * (1 + hair), 0.05, 0.11);
        Solution grazed = Bench.right(Bench.one(m, ForceLaw.contact(k, d), road, rest, 0, 0.6));
        Solution linear = RegimeSolver.solve(Bench.one(m, pulls, road, rest, 0, 0.6), step -> {});
        assertThat(grazed.q()[0]).isCloseTo(linear.q()[0], within(1e-9 * (1 + Math.max(0, hair) * 1e9)));
        assertThat(grazed.v()[0]).isCloseTo(linear.v()[0], within(1e-7 * (1 + Math.max(0, hair) * 1e9)));
    }

    /**
     * Two masses fall together while the spring between them stretches with its friction sliding, {@code c = S/k + (c₀ − S/k) cos ωt}; its
     * friction reverses at {@code π/ω}. The height is such that the lower one touches down at that very instant, or a hair off it.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-16, -1e-16, 1e-13, -1e-13, 1e-10, -1e-10, 1e-7, -1e-7})
    void frictionThatReversesAtTheInstantOfTouchDown(double hair) {
        for (double damping : new double[] {0, 900}) {
            Solution exact = Bench.right(falling(0, damping));
            Problem problem = falling(hair, damping);
            Solution end = Bench.right(problem);
            for (int i = 0; i < 2; i++) {
                assertThat(end.q()[i]).isCloseTo(exact.q()[i], within(1e-9 + 10 * Math.abs(hair)));
                assertThat(end.v()[i]).isCloseTo(exact.v()[i], within(1e-7 + 1e3 * Math.abs(hair)));
            }
            assertThat(Bench.apartFromReference(problem)).isLessThan(1e-9);
        }
    }

    private static Problem falling(double hair, double damping) {
        double body = 200;
        double axle = 50;
        double k = 30_000;
        double limit = 150;
        double stretched = 0.03;
        double omega = Math.sqrt(k * (1 / body + 1 / axle));
        double turn = Math.PI / omega;
        double share = body / (body + axle);
        double atTurn = 2 * limit / k - stretched;
        double height = G * turn * turn / 2 - share * atTurn + hair;
        ForceLaw spring = ForceLaw.spring(k).withFriction(FrictionLaw.single(0, limit, 4 * k));
        double lower = height + share * stretched;
        return Bench.two(
                body,
                axle,
                spring,
                ForceLaw.contact(1e6, damping),
                Bench.LEVEL,
                new double[] {lower - stretched, lower},
                new double[2],
                -limit,
                1.2);
    }

    /** A pulse on an undamped mass that is over in a microsecond: {@code x = h (cos ω(t − b) − cos ω(t − a))}, exactly. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 1e-6, 1e-9, 1e-12})
    void anObstacleMuchShorterThanAStepIsFelt(double width) {
        double m = 100;
        double k = 1e5;
        double h = 1e-3;
        double omega = Math.sqrt(k / m);
        double a = 0.5123;
        double b = a + width;
        PiecewisePolynomial pulse = new PiecewisePolynomial(new double[] {0, a, b}, new double[][] {{0}, {h}}, 0);
        double t = 2;
        double rest = -m * G / k;
        Solution end = RegimeSolver.solve(Bench.one(m, ForceLaw.spring(k), pulse, rest, 0, t), step -> {});
        double wide = (b - a) * omega;
        double exact = 2 * h * Math.sin(wide / 2) * Math.sin(omega * (t - (a + b) / 2));
        assertThat(end.q()[0] - rest).isCloseTo(exact, within(1e-15 + 1e-9 * h * wide));
        assertThat(Math.abs(end.energy().residual())).isLessThan(1e-12);
    }

    /** Ground that jumps under an undamped contact does work at once: the books balance, touching, lifting and landing. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, -0.01, -0.0004})
    void theWorkOfAJumpIsBooked(double rise) {
        double m = 100;
        double k = 1e6;
        PiecewisePolynomial ground =
                new PiecewisePolynomial(new double[] {0, 0.3, 0.8}, new double[][] {{0}, {rise}}, 0);
        Problem problem = Bench.one(m, ForceLaw.contact(k, 0), ground, -m * G / k, 0, 2);
        Solution end = RegimeSolver.solve(problem, step -> {});
        assertThat(end.energy().work()).isNotZero();
        assertThat(Math.abs(end.energy().residual())).isLessThan(1e-9);
    }

    /** In flight the mass knows nothing of the ground, and yet must meet it where it is. */
    @Test
    void aMassInFlightMeetsAMovingGroundWhereItIs() {
        double m = 50;
        double h = 0.02;
        PiecewisePolynomial ground = Bumps.wave(h, 0.02, 0.3);
        Problem problem = Bench.one(m, ForceLaw.contact(2e5, 500), ground, 0.08, 0, 1);
        double[] landed = {Double.NaN};
        RegimeSolver.solve(problem, step -> {
            if (Double.isNaN(landed[0]) && !step.isOff(0)) {
                landed[0] = step.start();
            }
        });
        double t = 0;
        while (0.08 - G * t * t / 2 > ground.value(t)) {
            t += 1e-6;
        }
        assertThat(landed[0]).isCloseTo(t, within(2e-6));
        Bench.right(problem);
    }

    /** {@code m ẍ = k (A t⁵ − x)} from rest, t from 2 s on: the road's first powers are nil, which is not the end of its series. */
    @Test
    void aRoadThatBeginsWithAHighPowerIsFollowed() {
        double m = 10;
        double k = 1000;
        double amplitude = 2;
        double t = 0.8;
        PiecewisePolynomial road =
                new PiecewisePolynomial(new double[] {2, 3}, new double[][] {{0, 0, 0, 0, 0, amplitude}}, amplitude);
        double rest = -m * G / k;
        Solution end = RegimeSolver.solve(Bench.one(m, ForceLaw.spring(k), road, rest, 0, 2 + t), step -> {});
        double w2 = k / m;
        double w = Math.sqrt(w2);
        // Particular solution t⁵ − 20 t³/ω² + 120 t/ω⁴, and the sine that starts it at rest.
        double exact = amplitude
                * (Math.pow(t, 5)
                        - 20 * Math.pow(t, 3) / w2
                        + 120 * t / (w2 * w2)
                        - 120 * Math.sin(w * t) / (w2 * w2 * w));
        assertThat(end.q()[0] - rest).isCloseTo(exact, within(1e-10));
    }

    /** Three sliders alike begin to slide at one instant, and so does every spring of a vehicle that is the same all round. */
    @Test
    void slidersThatBeginToSlideAtOneInstantDoSoForTheReferenceSolverToo() {
        double locked = 2e5;
        FrictionLaw friction = new FrictionLaw(
                0, 100, new double[] {0.5, 0.25, 0.25}, new double[] {0.5 * locked, 0.25 * locked, 0.25 * locked}, 0);
        FrictionLaw one = FrictionLaw.single(0, 100, locked);
        Problem three = Bench.one(100, ForceLaw.spring(2e4).withFriction(friction), Bench.LEVEL, 0.01, 0.2, 1);
        Problem single = Bench.one(100, ForceLaw.spring(2e4).withFriction(one), Bench.LEVEL, 0.01, 0.2, 1);
        double expected = Bench.right(single).q()[0];
        assertThat(Bench.right(three).q()[0]).isCloseTo(expected, within(1e-12));
        assertThat(Bench.apartFromReference(three)).isLessThan(1e-9);
    }
}
