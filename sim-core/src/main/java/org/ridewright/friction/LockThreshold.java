package org.ridewright.friction;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.complex.Complex;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.modal.Condition;
import org.ridewright.modal.FrequencyResponse;
import org.ridewright.modal.LinearModel;
import org.ridewright.modal.RoadInput;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;

/**
 * The amplitude of a sinusoidal road below which no leaf slides. Until then everything is linear at the locked rates: the spring travels
 * {@code Y |H(ω)|}, a slider with the share {@code a} of S and the locked rate {@code k_pj} holds {@code k_pj Y |H|} at most, and lets go first
 * where the spring is longest and its limit least, {@code a (S − μ f_l' Y |H|)}:
 *
 * <pre>
 *   Y = min over springs and sliders of  a S / ((k_pj + a μ f_l') |H(ω)|)
 * </pre>
 *
 * <p>Exact while wheels touch and no gapped stage begins or ends. An exponential envelope slides at every travel: its threshold is nought.
 */
public final class LockThreshold {
    private record Spring(double[] row, double travel) {}

    private final FrequencyResponse response;
    private final List<Spring> springs = new ArrayList<>();

    /** For wheels that all move at once. */
    public LockThreshold(VehicleModel model) {
        response = new FrequencyResponse(
                model, LinearModel.of(model, Condition.LOCKED), RoadInput.both(Double.POSITIVE_INFINITY));
        for (int e : Leaves.of(model)) {
            Element element = model.equations().elements().get(e);
            springs.add(
                    new Spring(element.row(), yields(element.law(), model.rest().compression()[e])));
        }
    }

    /** Travel from rest at which the first slider lets go (m). */
    private static double yields(ForceLaw law, double c) {
        FrictionLaw friction = law.friction();
        double limit = law.frictionLimit(c);
        double least = Double.POSITIVE_INFINITY;
        for (int j = 0; j < friction.states(); j++) {
            double share = friction.limitShares()[j];
            double yields = friction.isEnvelope()
                    ? 0
                    : share * limit / (friction.lockedRates()[j] + share * friction.share() * law.leafRate(c));
            least = Math.min(least, yields);
        }
        return least;
    }

    /** Amplitude of the road at a frequency (m). */
    public double at(double frequency) {
        Complex[] q = response.at(frequency);
        double least = Double.POSITIVE_INFINITY;
        for (Spring spring : springs) {
            least = Math.min(
                    least,
                    spring.travel() / FrequencyResponse.of(spring.row(), q).norm());
        }
        return least;
    }
}
