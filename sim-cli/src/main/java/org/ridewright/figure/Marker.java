package org.ridewright.figure;

/**
 * A vertical line where something happens, as in "front axle meets the kerb".
 *
 * @param x place on the x axis (its unit)
 * @param label a few words, drawn above the plot
 */
public record Marker(double x, String label) {}
