package org.ridewright.standing;

import org.ridewright.vehicle.GappedStage;

/**
 * How far a spring is from a helper or stop.
 *
 * @param kind of the helper or stop
 * @param left travel of the spring until it acts (m); not above 0 while it acts
 */
public record StageTravel(GappedStage.Kind kind, double left) {
    /** Whether it bears. */
    public boolean acts() {
        return left <= 0;
    }
}
