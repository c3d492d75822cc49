package org.ridewright.calibration;

/**
 * A value with a tolerance that was not sought: what it does to the data is not in the intervals.
 *
 * @param path in the vehicle file
 * @param effect by how many of its uncertainties the datum that feels it most would move with one tolerance
 * @param datum that feels it most
 */
public record Held(String path, double effect, String datum) {
    /** Below this a value does nothing to any datum. */
    static final double NOTHING = 0.02;
}
