package org.ridewright.narrowing;

import java.util.Comparator;
import java.util.List;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.modal.Condition;
import org.ridewright.modal.Mode;
import org.ridewright.modal.Modes;
import org.ridewright.modal.Motion;

/** Natural frequency (Hz) of the slowest mode in which bouncing comes first, or else of that which bounces most; springs sliding. */
final class BounceFrequency {
    private BounceFrequency() {}

    static double of(VehicleModel model) {
        List<Mode> modes = Modes.of(model, Condition.SLIDING).modes();
        Mode most = modes.stream()
                .max(Comparator.comparingDouble(mode -> mode.share(Motion.BOUNCE)))
                .orElseThrow();
        return modes.stream()
                .filter(mode -> mode.motion() == Motion.BOUNCE)
                .findFirst()
                .orElse(most)
                .frequency();
    }
}
