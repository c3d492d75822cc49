/**
 * Bounce tests as a yard does them: press the standing vehicle down at one place or lift it, let go, and count until it is at rest.
 *
 * <p>{@code new BounceTest(BounceKind.FRONT, Handling.person()).run(model)} gives a {@link org.ridewright.bounce.BounceResult}, which holds
 * a {@link org.ridewright.bounce.Count} of each motion. A ride frequency is what the count gives; a natural frequency is an eigenvalue and
 * is not found here.
 *
 * <p>Times are counted from the moment of letting go; while the vehicle is being pressed they are negative.
 */
package org.ridewright.bounce;
