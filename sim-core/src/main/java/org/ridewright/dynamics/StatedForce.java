package org.ridewright.dynamics;

/**
 * A force stated against time: {@code Q = row · F(t)}.
 *
 * @param row length n; not to be modified
 * @param input index, among what the elements follow, of F(t) (N)
 */
public record StatedForce(String name, double[] row, int input) {}
