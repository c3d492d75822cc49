package org.ridewright.standing;

/**
 * How the body lies above an axle.
 *
 * @param axle name of the axle
 * @param left rise of the body above the left wheel, from the vehicle with nobody and nothing aboard (m), negative as it sinks
 * @param right the same on the right; equal to the left where the vehicle does not roll
 */
public record BodyLevel(String axle, double left, double right) {}
