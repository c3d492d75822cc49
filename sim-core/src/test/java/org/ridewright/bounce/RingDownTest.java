package org.ridewright.bounce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ridewright.solver.Oscillator;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;

/**
 * 100 kg on 10 kN/m with 50 N of friction, F/k = 5 mm, let go at 52.5 mm; turning points by the closed forms {@code |x_{j+1}| = |x_j| − 2 F/k} and, with
 * dampers, {@code |x_{j+1}| = |x_j| e − (1 + e) F/k}, e = exp(−πζ/√(1 − ζ²)). Source: Den Hartog, Mechanical Vibrations (from memory), recomputed.
 * Friction is as good as rigid, k_p = 10⁵ k, which makes each half cycle shorter by up to (m/k_p)^½, 0.3 ms.
 */
class RingDownTest {
    private static final double MASS = 100;
    private static final double RATE = 10_000;
    private static final double LIMIT = 50;
    private static final double START = 0.0525;
    private static final double VISIBLE = 2e-4;

    private static Count count(double limit, double zeta, double visible) {
        ForceLaw law = ForceLaw.spring(RATE).withDamping(2 * zeta * Math.sqrt(RATE * MASS));
        if (limit > 0) {
            law = law.withFriction(FrictionLaw.single(0, limit, 1e5 * RATE));
        }
        Problem problem = Oscillator.free(MASS, law, START, 0, 1);
        BodyReading reading = BodyReading.from(Motion.FRONT, new double[] {1}, new double[] {0}, visible);
        return new RingDown(
                        problem.equations(),
                        List.of(),
                        RegimeSolver.TOLERANCE,
                        List.of(reading),
                        new RingDown.State(problem.q(), problem.v(), problem.friction()),
                        Optional.empty())
                .run()
                .counts()
                .get(Motion.FRONT);
    }

    @Test
    void dryFrictionTakesTheSameHeightEachHalfCycle() {
        Count count = count(LIMIT, 0, VISIBLE);
        double[] peaks = {52.5, -42.5, 32.5, -22.5, 12.5, -2.5};
        assertThat(count.turningPoints()).hasSize(peaks.length);
        for (int j = 0; j < peaks.length; j++) {
            TurningPoint turn = count.turningPoints().get(j);
            assertThat(1000 * turn.value()).isCloseTo(peaks[j], within(5e-3));
            assertThat(turn.time()).isCloseTo(0.31415927 * j, within(4e-4 * Math.max(1, j)));
        }
    }

    @Test
    void dryFrictionAloneLosesFourTimesItsTravelPerCycleAlongAStraightLine() {
        Decay decay = count(LIMIT, 0, VISIBLE).decay().orElseThrow();
        assertThat(decay.shape()).isEqualTo(Decay.Shape.STRAIGHT);
        assertThat(decay.straightLoss()).isCloseTo(4 * LIMIT / RATE, within(1e-5));
    }

    @Test
    void dryFrictionDoesNotChangeTheFrequency() {
        double natural = Math.sqrt(RATE / MASS) / (2 * Math.PI);
        assertThat(count(LIMIT, 0, VISIBLE).frequency().orElseThrow()).isCloseTo(natural, within(2e-3 * natural));
    }

    @Test
    void dryFrictionLeavesTheMassBesideItsPlaceOfRest() {
        assertThat(count(LIMIT, 0, VISIBLE).offset()).isCloseTo(-0.0025, within(0.01 * LIMIT / RATE));
    }

    @Test
    void dampersBesideFrictionGiveTheClosedForm() {
        double[] peaks = {52.5, -29.6392617, 12.9681228, -0.8107345};
        Count count = count(LIMIT, 0.1, VISIBLE);
        assertThat(count.turningPoints()).hasSize(peaks.length);
        for (int j = 0; j < peaks.length; j++) {
            assertThat(1000 * count.turningPoints().get(j).value()).isCloseTo(peaks[j], within(2e-2));
        }
    }

    @Test
    void dampersAloneTakeTheSameShareEachCycle() {
        Decay decay = count(0, 0.05, VISIBLE).decay().orElseThrow();
        assertThat(decay.shape()).isEqualTo(Decay.Shape.EXPONENTIAL);
        assertThat(decay.dampingRatio()).isCloseTo(0.05, within(1e-9));
    }

    /** A swing runs from +x to −x e: it is seen while (x_j + x_{j+1})/2 is at least the least visible motion. */
    @Test
    void theCountEndsWhereNothingIsSeen() {
        double visible = 1e-3;
        double e = Math.exp(-Math.PI * 0.05 / Math.sqrt(1 - 0.05 * 0.05));
        int n = (int) Math.floor(Math.log(2 * visible / (START * (1 + e))) / Math.log(e)) + 1;
        assertThat(count(0, 0.05, visible).halfCycles()).isEqualTo(n);
    }

    @Test
    void smoothCyclesGoOnSmoothlyWhereOneMoreHalfCycleIsSeen() {
        double e = Math.exp(-Math.PI * 0.05 / Math.sqrt(1 - 0.05 * 0.05));
        double edge = START * Math.pow(e, 6) * (1 + e) / 2;
        Count more = count(0, 0.05, edge * (1 - 1e-7));
        Count less = count(0, 0.05, edge * (1 + 1e-7));
        assertThat(more.halfCycles()).isEqualTo(less.halfCycles() + 1);
        assertThat(more.smoothCycles()).isCloseTo(less.smoothCycles(), within(1e-5));
        assertThat(more.smoothFrequency().orElseThrow())
                .isCloseTo(less.smoothFrequency().orElseThrow(), within(1e-5));
    }

    @Test
    void aMassWithinTheBandOfItsFrictionStaysWhereItIsLetGo() {
        Count count = count(1.01 * RATE * START, 0, VISIBLE);
        assertThat(count.isHeld()).isTrue();
        assertThat(count.frequency()).isEmpty();
        assertThat(count.offset()).isCloseTo(START, within(5e-5));
    }
}
