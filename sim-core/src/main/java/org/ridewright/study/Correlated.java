package org.ridewright.study;

/**
 * Two values that are known together, such as those calibrated together.
 *
 * @param one name or path
 * @param other name or path
 * @param correlation of their standardised departures, −1 to 1
 */
public record Correlated(String one, String other, double correlation) {
    /** Least size of a correlation that is worth a word: a twenty-fifth of the variance in common, or more. */
    public static final double LEAST = 0.2;
}
