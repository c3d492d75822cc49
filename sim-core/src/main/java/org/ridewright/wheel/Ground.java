package org.ridewright.wheel;

import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * The give of the ground under one wheel.
 *
 * @param rate (N/m), > 0; absent: unyielding
 * @param damping (N·s/m), ≥ 0; absent: what is given of the wheel is the damping of wheel and ground together
 */
public record Ground(Optional<Measure> rate, Optional<Measure> damping) {
    /** Ground that does not give. */
    public static final Ground UNYIELDING = new Ground(Optional.empty(), Optional.empty());

    public Ground {
        if (rate.isEmpty() && damping.isPresent()) {
            throw new IllegalArgumentException("ground that does not yield has no damping");
        }
    }
}
