package org.ridewright.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.dynamics.VehicleModel;

class LockThresholdTest {
    private static final String FRICTION =
            "{share of load: 0.06, constant: 20 N, locked rate: 2 times, sliders: [{of limit: 50 %, of locked rate: 70 %}, {of limit: 50 %, of locked rate: 30 %}]}";

    private static ForcedPoint shaken(VehicleModel model, double amplitude, double frequency) {
        double[] row = model.motionAt(model.centreOfMass()).rise();
        return new ForcedRun(model.equations(), model.rest(), row, 0, amplitude, frequency).run();
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.8, 4, 6})
    void aTenthBelowTheThresholdEverySpringIsLockedAndATenthAboveALeafSlides(double frequency) {
        VehicleModel model = OneDegree.with(FRICTION);
        double threshold = new LockThreshold(model).at(frequency);
        assertThat(shaken(model, 0.9 * threshold, frequency).locked()).isCloseTo(1, within(1e-12));
        assertThat(shaken(model, 1.1 * threshold, frequency).locked()).isLessThan(1);
    }

    @Test
    void twiceTheFrictionHoldsOnTwiceTheRoadWhereTheLimitIsTheSameAtEveryLoad() {
        VehicleModel model = OneDegree.with("{constant: 100 N, locked rate: 2 times}");
        VehicleModel rusted = Leaves.greased(model, 2);
        assertThat(new LockThreshold(rusted).at(2)).isCloseTo(2 * new LockThreshold(model).at(2), within(1e-12));
    }

    @Test
    void anEnvelopeIsNeverLocked() {
        VehicleModel model = OneDegree.with("{constant: 100 N, envelope length: 2 mm}");
        assertThat(new LockThreshold(model).at(2)).isZero();
    }

    @Test
    void lockedAndSlidingByTurnsTheBodyMovesAsHarmonicBalanceSaysWithinAFewPerCent() {
        VehicleModel model = OneDegree.with(FRICTION);
        ForcedResponse forced = ForcedResponse.of(model, List.of(0.002));
        ForcedResponse.Curve curve = forced.curves().get(0);
        int compared = 0;
        for (int i = 0; i < curve.simulated().size(); i++) {
            ForcedPoint point = curve.simulated().get(i);
            if (point.settled() && !point.liftsOff() && Double.isFinite(curve.balancedAt(i))) {
                assertThat(curve.balancedAt(i) / point.harmonic()).isCloseTo(1, within(0.08));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(10);
    }
}
