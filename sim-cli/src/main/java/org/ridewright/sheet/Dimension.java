package org.ridewright.sheet;

/**
 * One thing to measure.
 *
 * @param letter in the sketches; empty of what is not drawn
 * @param what it is
 * @param how to measure it, and with what
 * @param precision as good as it need be
 * @param key of the vehicle file that it fills, or fact of the measurements file
 * @param known what the vehicle file has; empty where it has nothing
 */
public record Dimension(String letter, String what, String how, String precision, String key, String known) {}
