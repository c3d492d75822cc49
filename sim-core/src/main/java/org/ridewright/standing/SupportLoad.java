package org.ridewright.standing;

/**
 * What a hitch carries standing still.
 *
 * @param load (N), negative where it holds the vehicle down
 */
public record SupportLoad(String name, double load) {}
