package org.ridewright.comfort;

/**
 * How strong a motion is over a window, in the unit of its samples.
 *
 * @param rms root mean square
 * @param peak largest size of a sample
 */
public record Level(double rms, double peak) {
    /** Where nothing was asked for: not numbers. */
    static final Level NOT_MEASURED = new Level(Double.NaN, Double.NaN);
}
