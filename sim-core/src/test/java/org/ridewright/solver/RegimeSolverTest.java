package org.ridewright.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.RideException;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;
import org.ridewright.suspension.GasLaw;
import org.ridewright.suspension.Pieces;
import org.ridewright.suspension.SpringLaws;

class RegimeSolverTest {
    private static final StepListener NOTHING = step -> {};

    /** x(t) = x₀ e^{−ζωt}(cos ω_d t + ζω/ω_d sin ω_d t). */
    @Test
    void aDampedOscillatorFollowsItsClosedForm() {
        double m = 100;
        double k = 10_000;
        double zeta = 0.1;
        double omega = 10;
        double damped = omega * Math.sqrt(1 - zeta * zeta);
        double t = 3;
        Solution end = RegimeSolver.solve(
                Oscillator.free(m, ForceLaw.spring(k).withDamping(2 * zeta * omega * m), 0.05, 0, t), NOTHING);
        double exact = 0.05
                * Math.exp(-zeta * omega * t)
                * (Math.cos(damped * t) + zeta * omega / damped * Math.sin(damped * t));
        assertThat(end.q()[0]).isCloseTo(exact, within(1e-12));
        assertThat(end.energy().relativeResidual()).isLessThan(1e-10);
    }

    /** Peaks fall by 2F/k each half cycle. Source: Den Hartog, Mechanical Vibrations (from memory); file of closed forms. */
    @Test
    void stiffDryFrictionRingsDownByTheSameAmountEachHalfCycle() {
        double k = 10_000;
        double f = 50;
        ForceLaw law = ForceLaw.spring(k).withFriction(FrictionLaw.single(0, f, 1e6 * k));
        List<Double> turns = new ArrayList<>();
        StepListener peaks = step -> {
            double[] v = new double[30];
            step.addVelocity(0, 1, v);
            double before = v[0];
            double after = 0;
            for (int i = step.degree(); i >= 0; i--) {
                after = after * step.end() + v[i];
            }
            if (before * after < 0 || Math.abs(after) < 1e-9 && Math.abs(before) > 1e-6) {
                double[] q = new double[30];
                step.addDisplacement(0, 1, q);
                double x = 0;
                for (int i = step.degree(); i >= 0; i--) {
                    x = x * step.end() + q[i];
                }
                turns.add(x);
            }
        };
        Solution end = RegimeSolver.solve(Oscillator.free(100, law, 0.0525, 0, 3), peaks);
        assertThat(end.q()[0]).isCloseTo(-0.0025, within(1e-5));
        assertThat(turns.get(0)).isCloseTo(-0.0425, within(2e-5));
        assertThat(turns.stream().anyMatch(x -> Math.abs(x - 0.0325) < 2e-5)).isTrue();
        assertThat(end.energy().relativeResidual()).isLessThan(1e-9);
    }

    /** Flight of a dropped mass: it rests on the ground with the static compression, having lost the energy of the drop. */
    @Test
    void aDroppedMassComesToRestOnTheGround() {
        double m = 50;
        double k = 1e6;
        double zeta = 0.3;
        ForceLaw law = ForceLaw.contact(k, 2 * zeta * Math.sqrt(k * m));
        Problem problem = Oscillator.problem(
                m,
                m * 9.80665,
                List.of(new Element("ground", Element.Kind.CONTACT, new double[] {-1}, 0, law)),
                List.of(PiecewisePolynomial.constant(0)),
                0.1,
                0,
                6);
        Solution end = RegimeSolver.solve(problem, NOTHING);
        assertThat(end.q()[0]).isCloseTo(-m * 9.80665 / k, within(1e-9));
        assertThat(end.energy().dissipated()).isCloseTo(m * 9.80665 * 0.1, within(0.3));
        assertThat(end.energy().relativeResidual()).isLessThan(1e-9);
        assertThat(end.statistics().contactSwitches()).isGreaterThan(3);
    }

    /** A cycle between ±X with the slider S behind k_p dissipates 4 S (X − S/k_p). Source: Jenkins element, closed form. */
    @Test
    void theFrictionLoopEnclosesFourTimesLimitTimesSlip() {
        double limit = 200;
        double kp = 80_000;
        double amplitude = 0.02;
        ForceLaw law = ForceLaw.spring(40_000).withFriction(FrictionLaw.single(0, limit, kp));
        double omega = 2;
        PiecewisePolynomial drive = sine(amplitude, omega, 4);
        double immovable = 1e12;
        Problem problem = new Problem(
                new Equations(
                        new double[] {immovable},
                        new double[] {0},
                        new double[] {0},
                        List.of(new Element("spring", Element.Kind.SPRING, new double[] {-1}, 0, law)),
                        1),
                List.of(drive),
                new double[] {0},
                new double[] {0},
                new double[] {0},
                3 * Math.PI / omega + 2 * Math.PI / omega);
        Solution five = RegimeSolver.solve(problem, NOTHING);
        Problem shorter = new Problem(
                problem.equations(),
                problem.heights(),
                problem.q(),
                problem.v(),
                problem.friction(),
                3 * Math.PI / omega);
        Solution three = RegimeSolver.solve(shorter, NOTHING);
        double loop = five.energy().dissipatedByElement()[0] - three.energy().dissipatedByElement()[0];
        assertThat(loop).isCloseTo(4 * limit * (amplitude - limit / kp), within(1e-4));
    }

    /**
     * The steady loop of {@code ṡ = |ċ| (sgn ċ F − s)/β} between ±X encloses 4 F (X − β tanh(X/β)). Source: Fancher, Ervin, MacAdam and
     * Winkler, SAE 800905 (from memory), the envelope rule on the friction part alone.
     */
    @Test
    void theExponentialEnvelopeEnclosesItsClosedFormArea() {
        double limit = 400;
        double beta = 1e-3;
        double amplitude = 0.02;
        double omega = 2;
        ForceLaw law = ForceLaw.spring(100_000).withFriction(FrictionLaw.envelope(0, limit, beta));
        double cycle = 2 * Math.PI / omega;
        Problem three = Oscillator.driven(1e12, law, sine(amplitude, omega, 5), 0, 2.25 * cycle);
        Problem four = Oscillator.driven(1e12, law, sine(amplitude, omega, 5), 0, 3.25 * cycle);
        double loop = RegimeSolver.solve(four, NOTHING).energy().dissipated()
                - RegimeSolver.solve(three, NOTHING).energy().dissipated();
        assertThat(loop).isCloseTo(4 * limit * (amplitude - beta * Math.tanh(amplitude / beta)), within(1e-5));
    }

    /** An envelope gives at every travel, so it is at no time locked. */
    @Test
    void anExponentialEnvelopeIsNeverLocked() {
        ForceLaw law = ForceLaw.spring(100_000).withFriction(FrictionLaw.envelope(0, 400, 1e-3));
        Problem problem = Oscillator.driven(1e12, law, sine(0.02, 2, 5), 0, 3);
        long[] steps = {0};
        RegimeSolver.solve(problem, step -> {
            assertThat(step.isLocked(0)).isFalse();
            steps[0]++;
        });
        assertThat(steps[0]).isPositive();
    }

    /** A mass thrown off the ground at speed v is in flight for 2 v/g. */
    @Test
    void flightLastsTwiceSpeedOverGravity() {
        double m = 50;
        double g = 9.80665;
        double v = 1.2;
        ForceLaw law = ForceLaw.contact(1e6, 0);
        Problem thrown = Oscillator.problem(
                m,
                m * g,
                List.of(new Element("ground", Element.Kind.CONTACT, new double[] {-1}, 0, law)),
                List.of(PiecewisePolynomial.constant(0)),
                0,
                v,
                0.26);
        double[] landed = {Double.NaN};
        RegimeSolver.solve(thrown, step -> {
            if (Double.isNaN(landed[0]) && !step.isOff(0) && step.start() > 0.01) {
                landed[0] = step.start();
            }
        });
        assertThat(landed[0]).isCloseTo(2 * v / g, within(1e-10));
    }

    @Test
    void aGasSpringConservesEnergy() {
        ForceLaw gas = new ForceLaw(
                0, 0, Pieces.NONE, 0, Pieces.NONE, Optional.of(new GasLaw(2000, 0.3, 1.3)), FrictionLaw.NONE, false);
        Solution end = RegimeSolver.solve(Oscillator.free(50, gas, -0.1, 0, 5), NOTHING);
        double stored = EnergyAudit.stored(
                Oscillator.free(50, gas, -0.1, 0, 5).equations(), end.q(), end.v(), new double[0], new double[0]);
        assertThat(stored).isCloseTo(gas.elasticEnergy(0.1), within(1e-9));
    }

    /** Each half of the motion has its own decrement: x_{j+1} = −x_j e^{−πζ/√(1−ζ²)} with that half's ζ. */
    @Test
    void aBumpAndReboundDamperLosesDifferentlyOnEitherHalf() {
        Solution half = RegimeSolver.solve(
                Oscillator.free(100, SpringLaws.bilinear(200, 600).withStages(Pieces.NONE), 0, 0.4, 0.5), NOTHING);
        assertThat(half.v()[0]).isCloseTo(0.4 * Math.exp(-600 * 0.5 / 100), within(1e-12));
        Solution other = RegimeSolver.solve(Oscillator.free(100, SpringLaws.bilinear(200, 600), 0, -0.4, 0.5), NOTHING);
        assertThat(other.v()[0]).isCloseTo(-0.4 * Math.exp(-200 * 0.5 / 100), within(1e-12));
    }

    /** A spring of negative rate throws its mass away exponentially, and the run ends with a message. */
    @Test
    void aMotionThatGrowsWithoutBoundIsStopped() {
        Problem runaway = Oscillator.free(1, ForceLaw.spring(-1e6), 0.01, 0, 5);
        assertThatThrownBy(() -> RegimeSolver.solve(runaway, NOTHING))
                .isInstanceOf(RideException.class)
                .hasMessageContaining("steps");
    }

    static PiecewisePolynomial sine(double amplitude, double omega, int cycles) {
        int pieces = 200 * cycles;
        double dt = 2 * Math.PI * cycles / omega / pieces;
        double[] joints = new double[pieces + 1];
        double[][] a = new double[pieces][];
        for (int i = 0; i <= pieces; i++) {
            joints[i] = i * dt;
        }
        for (int i = 0; i < pieces; i++) {
            double s = Math.sin(omega * joints[i]) * amplitude;
            double c = Math.cos(omega * joints[i]) * amplitude * omega;
            double w2 = omega * omega;
            a[i] = new double[] {s, c, -s * w2 / 2, -c * w2 / 6, s * w2 * w2 / 24, c * w2 * w2 / 120};
        }
        return new PiecewisePolynomial(joints, a, 0);
    }
}
