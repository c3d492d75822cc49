package org.ridewright.bounce;

/**
 * Where a motion turns, or is let go, or stops.
 *
 * @param time from letting go (s)
 * @param value from the position of rest before the test, friction unstressed (m or rad)
 */
public record TurningPoint(double time, double value) {}
