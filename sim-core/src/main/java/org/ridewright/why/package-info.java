/**
 * What each ingredient of a vehicle contributes to its ride: ingredients exchanged one at a time, in pairs and all together, the same draws of
 * all uncertain values on both sides of every difference.
 *
 * <p>A <em>choice</em> of k swaps is a number of k bits: bit i is set where swap i is made. {@code y(S)} is a number of the ride with the
 * swaps of S made.
 */
package org.ridewright.why;
