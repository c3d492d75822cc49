package org.ridewright.calibration;

/** What a vehicle with given unknowns would have shown at each datum. Called from several threads at once. */
@FunctionalInterface
public interface ForwardModel {
    /**
     * Predictions.
     *
     * @param z unknowns in standard deviations from what was known before; not modified
     * @return one for each datum, in the datum's unit; NaN where this vehicle shows no such thing (a bounce that never turns)
     * @throws org.ridewright.quantity.UnfitValueException if no such vehicle can be
     * @throws org.ridewright.dynamics.RideException if it cannot stand, or its run had to be stopped
     */
    double[] predict(double[] z);
}
