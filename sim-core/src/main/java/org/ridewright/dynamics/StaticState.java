package org.ridewright.dynamics;

/**
 * A vehicle at rest.
 *
 * @param q coordinates, from the free state; not to be modified
 * @param compression of each element (m)
 * @param force of each element, friction included (N)
 * @param friction held by each friction state (N), in the order of elements and their sliders
 */
public record StaticState(double[] q, double[] compression, double[] force, double[] friction) {}
