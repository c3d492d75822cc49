package org.ridewright.figure;

/**
 * A horizontal reference line, as in "lift-off".
 *
 * @param y place on the y axis (its unit); the axis is stretched to hold it
 * @param label a few words, drawn to the right of the plot; may be blank
 */
public record Level(double y, String label) {}
