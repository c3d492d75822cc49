package org.ridewright.dynamics;

/**
 * What a rigid wheel pushes along its contact normal: {@code Q = row · N · u′}, N the force of its contact and {@code u′ = u̇/v} the slope
 * of its path.
 *
 * @param element index of the contact, which follows a height u
 * @param row length n: −1 at the surge; not to be modified
 */
public record WheelPush(int element, double[] row) {}
