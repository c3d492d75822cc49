package org.ridewright.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.ridewright.bounce.Count;
import org.ridewright.bounce.Decay.Shape;
import org.ridewright.bounce.TurningPoint;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.friction.RingDowns.Rung;

/** A mass on a spring with friction F, as good as rigid: of the height to one side it loses {@code 4 F/k} in each cycle. */
class RingDownsTest {
    private static final double FRICTION = 40;
    private static final double DEPTH = 0.03;
    private static RingDowns front;

    @BeforeAll
    static void letGo() {
        VehicleModel model = OneDegree.with("{constant: %s N, locked rate: 20000 N/mm}".formatted(FRICTION));
        front = RingDowns.of(model, FrictionLab.GREASINGS, DEPTH).get(0);
    }

    private static double lostInCycle(Count count, int from) {
        return Math.abs(count.turningPoints().get(from).value()
                - count.turningPoints().get(from + 2).value());
    }

    @Test
    void dryFrictionTakesFourTimesItsTravelInEachCycleWhateverItsAmount() {
        for (Rung rung : front.rungs()) {
            Count count = rung.result().count();
            for (int j = 0; j + 2 < Math.min(5, count.turningPoints().size()); j++) {
                double expected = 4 * rung.scale() * FRICTION / OneDegree.RATE;
                assertThat(lostInCycle(count, j)).isCloseTo(expected, within(0.02 * expected));
            }
        }
    }

    @Test
    void theDamperOfEqualLossLosesAsMuchInTheFirstCycle() {
        Rung dry = front.rungs().get(1);
        Rung damper = front.damper().orElseThrow();
        assertThat(dry.scale()).isEqualTo(1);
        assertThat(lostInCycle(damper.result().count(), 0))
                .isCloseTo(lostInCycle(dry.result().count(), 0), within(1e-5 * DEPTH));
    }

    @Test
    void theDamperOfEqualLossIsTheOneOfTheClosedForm() {
        // x_2/x_0 = 1 − 4 F/(k x_0) = exp(−2 π ζ/√(1 − ζ²))
        double delta = -Math.log(1 - 4 * FRICTION / (OneDegree.RATE * DEPTH)) / (2 * Math.PI);
        double zeta = delta / Math.sqrt(1 + delta * delta);
        double damping = 2 * zeta * Math.sqrt(OneDegree.RATE * OneDegree.MASS);
        assertThat(front.damper().orElseThrow().scale() * FRICTION).isCloseTo(damping, within(0.02 * damping));
    }

    @Test
    void drySwingsShrinkAlongAStraightLineAndDampedOnesAlongAnExponential() {
        assertThat(front.rungs().get(1).result().count().decay().orElseThrow().shape())
                .isEqualTo(Shape.STRAIGHT);
        assertThat(front.damper()
                        .orElseThrow()
                        .result()
                        .count()
                        .decay()
                        .orElseThrow()
                        .shape())
                .isEqualTo(Shape.EXPONENTIAL);
    }

    @Test
    void theMoreFrictionTheFewerCycles() {
        double before = Double.POSITIVE_INFINITY;
        for (Rung rung : front.rungs()) {
            assertThat(rung.result().count().cycles()).isLessThan(before);
            before = rung.result().count().cycles();
        }
    }

    @Test
    void aBodyThatHardlySwingsHasNoDamperOfEqualLoss() {
        VehicleModel held = OneDegree.with("{constant: 700 N, locked rate: 20000 N/mm}");
        assertThat(RingDowns.of(held, FrictionLab.GREASINGS, DEPTH).get(0).damper())
                .isEmpty();
    }

    /** Friction gives 1300/70 = 19 mm before it slides: it does so for the end of the first swing alone, and the body swings on within these. */
    @Test
    void swingsOnHeldSpringsAreNoCyclesOfTheCountButAreSeen() {
        Count held = letGo(1300, 70).rungs().get(1).result().count();
        assertThat(held.isOnHeldSprings()).isTrue();
        assertThat(held.slidingCycles()).isZero();
        assertThat(held.slidingTurns()).hasSize(1);
        assertThat(held.cyclesSeen()).isGreaterThan(2);
    }

    @Test
    void whatIsSeenBeginsWithWhatIsCounted() {
        for (double limit : new double[] {FRICTION, 150, 300}) {
            for (Rung rung : letGo(limit, 70).rungs()) {
                Count count = rung.result().count();
                assertThat(count.seen()).startsWith(count.turningPoints().toArray(TurningPoint[]::new));
                assertThat(count.slidingCycles()).isLessThanOrEqualTo(count.cyclesSeen());
                assertThat(count.slidingTurns()).hasSize((int) (2 * count.slidingCycles()) + 1);
            }
        }
    }

    private static RingDowns letGo(double limit, double lockedRate) {
        return RingDowns.of(
                        OneDegree.with("{constant: %s N, locked rate: %s N/mm}".formatted(limit, lockedRate)),
                        FrictionLab.GREASINGS,
                        DEPTH)
                .get(0);
    }
}
