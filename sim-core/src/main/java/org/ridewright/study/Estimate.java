package org.ridewright.study;

/**
 * A number with its 90 % interval.
 *
 * @param low lower end; NaN where nothing is known of it
 * @param high upper end
 */
public record Estimate(double value, double low, double high) {}
