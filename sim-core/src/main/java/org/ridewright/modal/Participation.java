package org.ridewright.modal;

/**
 * What part of a mode's kinetic energy lies in one motion.
 *
 * @param name such as {@code front axle hop}
 * @param share of the energy; the shares of a mode add up to 1, and one may be a little below nothing where two motions share a mass
 * @param amplitude in the mode's shape (m or rad, as the shape is normalised); of an occupant, against what is below
 */
public record Participation(String name, Motion motion, double share, double amplitude) {}
