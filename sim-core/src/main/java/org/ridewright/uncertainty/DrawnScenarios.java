package org.ridewright.uncertainty;

import org.ridewright.ride.Scenario;

/** A scenario with what is known of its values. */
public interface DrawnScenarios {
    /** Number d of values that have a tolerance. */
    int uncertainValues();

    /**
     * The scenario with every uncertain value as far from its own as its tolerance and {@code w} say.
     *
     * @param w independent standard normal numbers, d of them; not modified
     * @throws org.ridewright.quantity.UnfitValueException if such a scenario cannot be
     */
    Scenario drawn(double[] w);
}
