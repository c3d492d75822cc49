package org.ridewright.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ridewright.dynamics.Element;
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
