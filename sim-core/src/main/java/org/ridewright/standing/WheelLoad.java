package org.ridewright.standing;

/**
 * What one wheel carries standing still.
 *
 * @param name of the wheel
 * @param axle index of its axle
 * @param load (N)
 */
public record WheelLoad(String name, int axle, double load) {}
