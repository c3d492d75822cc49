package org.ridewright.friction;

import java.util.Optional;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.ridewright.bounce.BounceResult;
import org.ridewright.bounce.BounceTest;
import org.ridewright.bounce.Count;
import org.ridewright.dynamics.VehicleModel;

/**
 * The viscous dampers that lose as much as dry friction does in the first cycle after letting go from one depth: the next turn on the same side lies as
 * far from rest, {@code x_2/x_0}, so that height and stored energy lost are the same. In place of the friction of each spring stands {@code d =
 * scale · S}, so that springs share the loss as they did.
 */
final class EqualDamper {
    /** From next to nothing to a body that creeps back (s/m). */
    private static final double LEAST = 1e-3;

    private static final double GREATEST = 100;
    private static final double ACCURACY = 1e-6;
    private static final int MOST = 60;

    private EqualDamper() {}

    /** Share {@code 1 − x_2/x_0} of the height from which it was let go that the first cycle takes; the whole where nothing swings back. */
    static double loss(BounceResult result) {
        Count count = result.count();
        if (count.halfCycles() == 0) {
            return 1;
        }
        double back = count.halfCycles() > 1
                ? count.turningPoints().get(2).value()
                : count.next().value();
        return 1 - back / count.turningPoints().get(0).value();
    }

    /** The scale (s/m); empty where the body does not swing twice, so that there is no cycle to compare. */
    static Optional<Double> find(VehicleModel model, BounceTest test, BounceResult dry) {
        if (dry.count().halfCycles() < 2) {
            return Optional.empty();
        }
        double wanted = loss(dry);
        double low = LEAST;
        double high = LEAST;
        double atHigh = miss(model, test, high, wanted);
        while (atHigh < 0 && high < GREATEST) {
            low = high;
            high *= 2;
            atHigh = miss(model, test, high, wanted);
        }
        if (atHigh < 0 || low == high) {
            return Optional.empty();
        }
        double scale = new BracketingNthOrderBrentSolver(ACCURACY * low, ACCURACY, 5)
                .solve(MOST, s -> miss(model, test, s, wanted), low, high);
        return Optional.of(scale);
    }

    private static double miss(VehicleModel model, BounceTest test, double scale, double wanted) {
        return loss(test.run(Leaves.damped(model, scale))) - wanted;
    }
}
