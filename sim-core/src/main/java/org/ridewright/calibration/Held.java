package org.ridewright.calibration;

/**
 * A value with a tolerance that was not sought: what it may do to the data counts as an error that they have in common.
 *
 * @param path in the vehicle file
 * @param effect by how many of its uncertainties the datum that feels it most would move with one tolerance
 * @param datum that feels it most
 */
public record Held(String path, double effect, String datum) {
    /**
     * Effect of one tolerance on all data together, the root of the sum of squares in their uncertainties, below which a value does nothing worth
     * telling: its spread would shrink by at most 2 %.
     */
    static final double NOTHING = 0.2;
}
