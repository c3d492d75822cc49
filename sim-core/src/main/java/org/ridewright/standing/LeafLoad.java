package org.ridewright.standing;

import java.util.Optional;

/**
 * Bending stress of a pack of leaves.
 *
 * @param stress by the load that stands on it (Pa)
 * @param atBumpStop the same with the spring on its bump stop (Pa); absent without one
 * @param allowable as the file gives it (Pa); absent where it gives none
 */
public record LeafLoad(double stress, Optional<Double> atBumpStop, Optional<Double> allowable) {
    /** Stress standing still over the allowable. */
    public Optional<Double> share() {
        return allowable.map(limit -> stress / limit);
    }

    /** Stress on the bump stop over the allowable. */
    public Optional<Double> shareAtBumpStop() {
        return allowable.flatMap(limit -> atBumpStop.map(s -> s / limit));
    }
}
