package org.ridewright.bounce;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.signal.Channel;

/**
 * A bounce test as it went.
 *
 * @param force with which the place was pressed, or lifted (N)
 * @param depth by which the place had moved when it was let go (m); of a rocked body half of what front and rear moved against each other
 * @param counts of every motion that the vehicle has
 * @param lockedSince time from letting go since which the friction of every spring has held (s), but for at most a twentieth of the
 *     time; none where there is no friction, or a spring still slides
 * @param wheelOff time after letting go during which some wheel is off the ground (s)
 * @param traces every motion from the beginning of the push on; none unless asked for
 * @param duration of the record after letting go (s)
 * @param energyResidual what the books of energy do not explain, over what was turned to heat; the larger of push and ring-down
 */
public record BounceResult(
        BounceTest test,
        VehicleModel model,
        double force,
        double depth,
        Map<Motion, Count> counts,
        OptionalDouble lockedSince,
        double duration,
        double energyResidual,
        double wheelOff,
        List<Channel> traces) {
    /** Count of the motion that this kind of test is about. */
    public Count count() {
        return counts.get(test.kind().counted());
    }
}
